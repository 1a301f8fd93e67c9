/**
 * Bench tests against the prediction. What the model claims for a figure is the range that it has while the friction of all pairs goes together from
 * least to most, the set being as it was drawn or measured; a test is within it where the whole of what the rig says lies inside.
 */
import type { Design } from '../design/design.ts'
import { type FigureUnit, figureNames } from '../design/figure-names.ts'
import { askedFigures, evaluateAsked } from '../evaluate-asked.ts'
import type { Ratio } from './capability.ts'
import { type Conformity, conformity, type Found, foundBy } from './guard-band.ts'
import { withFriction } from './with-friction.ts'

/** One test on the bench: a figure of the design as a rig found it, in the figure's inside unit. */
export interface BenchTest {
  readonly serial: string
  readonly figure: string
  readonly found: number
  /** Expanded (k = 2). */
  readonly uncertainty: number
}

/** A test beside its prediction. */
export interface ComparedTest {
  readonly test: BenchTest
  readonly title: string
  readonly unit: FigureUnit
  /** Absent where the figure has no value with likely friction. */
  readonly predicted?: { readonly likely: number; readonly claimed: Found }
  /** Found over predicted with likely friction; absent where that is 0 or unknown. */
  readonly ratio?: Ratio
  readonly verdict: Conformity
}

/** Friction at its least, as is likely, and at its most. */
const ENDS = ['least', 'likely', 'most'] as const

/** Compares tests with the prediction, in their order. @param tests of figures of the design */
export function compareBench(design: Design, tests: readonly BenchTest[]): readonly ComparedTest[] {
  const names = new Map(figureNames(design).map((name) => [name.id, name]))
  const ids = [...new Set(tests.map(({ figure }) => figure))]
  const ends = ENDS.map((end) =>
    numbersOf(
      withFriction(design, ({ moving, rest }) => ({ moving: moving[end], rest: rest[end] })),
      ids,
    ),
  )
  return tests.map((test) => {
    const { title = test.figure, unit = '1' as const } = names.get(test.figure) ?? {}
    const values = ends.map((end) => end.get(test.figure)).filter((value) => value !== undefined)
    const likely = ends[1].get(test.figure)
    if (likely === undefined) return { test, title, unit, verdict: 'undecided' }
    const claimed = { least: Math.min(...values), most: Math.max(...values) }
    const found = foundBy(test.found, test.uncertainty)
    const ratio = likely === 0 ? undefined : ratioOf(test, likely)
    return { test, title, unit, predicted: { likely, claimed }, ...(ratio && { ratio }), verdict: conformity(found, claimed) }
  })
}

function ratioOf({ found, uncertainty }: BenchTest, likely: number): Ratio {
  const half = Math.abs(uncertainty / likely)
  return { value: found / likely, least: found / likely - half, most: found / likely + half }
}

/** Figures of a design that are numbers. */
export function numbersOf(design: Design, ids: readonly string[]): ReadonlyMap<string, number> {
  const { figures } = evaluateAsked(design, askedFigures(design, ids))
  return new Map(
    figures.flatMap(({ id, value }) => (typeof value === 'number' && ids.includes(id) ? [[id, value] as const] : [])),
  )
}
