/** Which change helps most against breaking, as rows and as one sentence; page and command line share them. */
import type { HelpingChange, HelpingChanges } from '../../engine/index.ts'
import { say, setValue, type ValueText } from './value-text.ts'

/** One step that helps. */
export interface HelpingRow {
  readonly place: HelpingChange['input']['place']
  /** `part mount hole base: x` */
  readonly title: string
  /** What stands there, and the step: `6.47 mm`, `−0.1 mm`. */
  readonly typed: string
  readonly step: string
  /** The smallest margin after the step, and what has it. */
  readonly margin: ValueText
  readonly first: string
  /** `carryKeeper falls short`; empty where nothing does. */
  readonly costs: string
}

/** What stands over the columns of `helpingRows`. */
export const helpingHeads = {
  title: 'Value',
  typed: 'Now',
  step: 'Step',
  margin: 'Least margin',
  first: 'Then gives first',
  costs: 'What it costs',
} as const

/** The steps that help, the most helpful first. */
export function helpingRows({ changes }: HelpingChanges): readonly HelpingRow[] {
  return changes.map(({ input, way, first, costs }) => ({
    place: input.place,
    title: input.title,
    typed: input.typed,
    step: stepText(input.step, way),
    margin: setValue(first.margin, '1'),
    first: first.words,
    costs: costs.length === 0 ? '' : `${costs.join(', ')} ${costs.length === 1 ? 'falls' : 'fall'} short`,
  }))
}

const stepText = (step: string, way: HelpingChange['way']): string => `${way === 'up' ? '+' : '−'}${step}`

/** What helps most, in one sentence. */
export function helpingSentence({ first, changes, tried_count }: HelpingChanges): string {
  if (!first) return 'No load presses a part whose strength could be worked out, so nothing can be said to help.'
  const now = `The smallest margin is ${say(first.margin, '1')}: ${first.words}.`
  const [most] = changes
  const tried = `steps of ${tried_count} sizes`
  if (!most) return `${now} None of the ${tried} raises it.`
  const { input, way } = most
  const helps = `Of ${tried} ${input.title} helps most: ${stepText(input.step, way)} brings it to ${say(most.first.margin, '1')}`
  const taken = most.first.words === first.words ? '' : `, and ${most.first.words} is the first then`
  const costs = most.costs.length === 0 ? '' : `; it costs ${most.costs.join(', ')}`
  return `${now} ${helps}${taken}${costs}.`
}

/** What the numbers rest on. */
export const helpingGround =
  'Steps of 0.1 mm, 1° or 10 %, each with the whole finger worked out again; loads, friction and outlines stay as they are. A gain ends where another check comes first.'

/** For machines. */
export function helpingDocument({ first, changes, tried_count }: HelpingChanges): object {
  return {
    tried: tried_count,
    ...(first && { first: { figure: first.figure, margin: first.margin } }),
    changes: changes.map(({ input, way, gain, first: then, costs }) => ({
      place: input.place.join('.'),
      typed: input.typed,
      step: `${way === 'up' ? '+' : '-'}${input.step}`,
      gain,
      margin: then.margin,
      first: then.figure,
      costs,
    })),
  }
}
