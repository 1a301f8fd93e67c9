/** Margins of the toggles at which the finger jams, from rest and moving. */
import type { Jam } from '../forces/jam.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { type FigureSheet, line } from './figure-sheet.ts'
import { driveUnit } from './motion-figures.ts'
import type { ReturnFound } from './return-found.ts'
import { frictionLines, springLines } from './return-lines.ts'
import type { Survey } from './survey.ts'

const JAM_WORDS: Record<Exclude<Jam['kind'], 'at'>, string> = {
  turnsBack: 'the toggle turns back before it comes near enough to dead centre to jam',
  never: 'the springs open it as far as the path was followed past dead centre: it does not jam there',
  everywhere: 'the springs do not open it at any posture',
  unknown: 'no equilibrium was found on the way to dead centre',
}

interface JamFigure {
  readonly found: ReturnFound
  readonly figure: 'jamAngle' | 'runJamAngle'
}

/** Jam angles, rad, one a toggle. */
export function addJamAngles(sheet: FigureSheet, survey: Survey, { found, figure }: JamFigure): void {
  const { design, path } = survey
  design.toggles.forEach((toggle, index) => {
    const id = `closed.toggle.${toggle.id}.${figure}`
    if (!sheet.asks(id)) return
    const jam = figure === 'jamAngle' ? found.jam : found.runJam
    const inputs = [...frictionLines(survey, figure === 'jamAngle' ? 'rest' : 'moving'), ...springLines(survey)]
    if (jam.kind !== 'at') {
      sheet.add(id, {
        why: JAM_WORDS[jam.kind],
        ...((jam.kind === 'never' || jam.kind === 'turnsBack') && { beyond: 'below any' as const }),
        inputs,
      })
      return
    }
    const { posture } = jam.node
    sheet.add(id, {
      value: toggleMargin(path.toggles[index], posture),
      inputs,
      steps: [line('drive there', path.drive.value(posture), driveUnit(survey))],
    })
  })
}
