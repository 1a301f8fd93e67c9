/** Trials that stand ready: what happens to the finger in use, each one edit away and undone by another. */
import { deskOf } from '../../design/edit/desk.ts'
import type { Evaluation } from '../../figures/evaluation.ts'
import { dryPins } from './dry-pins.ts'
import { gloved, greaseInTheCold } from './pin-drag.ts'
import { returnSpringAtHalf } from './return-spring-at-half.ts'
import { stopAtTheMcp } from './stop-at-the-mcp.ts'
import { gritAtTheStop, wornStop } from './stop-surface.ts'
import type { Trial } from './trial.ts'

const ready = [
  { id: 'grit', title: '0.2 mm of grit at the stop', tried: gritAtTheStop },
  { id: 'wornStop', title: 'A worn stop', tried: wornStop },
  { id: 'dryPins', title: 'Dry pins', tried: dryPins },
  { id: 'cold', title: 'Thick grease in the cold', tried: greaseInTheCold },
  { id: 'halfSpring', title: 'The return spring at half', tried: returnSpringAtHalf },
  { id: 'gloved', title: 'Gloved', tried: gloved },
  { id: 'stopAtMcp', title: 'The stop moved to the MCP', tried: stopAtTheMcp },
] as const

/**
 * All trials for a document. Each changes it as it stands now: one made twice counts twice.
 *
 * @param evaluation of this very text
 */
export function trials(text: string, evaluation: Evaluation): readonly Trial[] {
  const ground = { desk: deskOf(text), evaluation }
  return ready.map(({ id, title, tried }) => ({ id, title, ...tried(ground) }))
}
