/**
 * What each characteristic matters to: every size is put at the ends of what the drawing allows, everything else as drawn, and the requirement is
 * told that loses the largest share of its margin there. Nothing is linearised: each end is a finger that is evaluated.
 */
import type { Variation } from '../variation/sources/source.ts'
import { designProblem } from '../variation/spread/design-problem.ts'
import { type JudgedSet, marginIn, type SpreadProblem } from '../variation/spread/spread-problem.ts'
import type { Characteristic } from './inspection-plan.ts'
import { type OwnSource, respread } from './respread.ts'

/** The requirement that a characteristic touches most. */
export interface Matter {
  readonly requirement: string
  readonly figure: string
  /** Share of the requirement's margin that is lost at the worse end, 0 to 1 and more; 1 where it turns to not met without a number behind it. */
  readonly share: number
}

/** A characteristic takes at least this share of a margin to be told: less is the rounding of the calculation. */
const SHARE_LEAST = 1e-4

/** Works through the plan; yields how many are done. @returns one a characteristic, undefined where it touches no requirement */
export function* weighPlan(
  variation: Variation,
  plan: readonly Characteristic[],
): Generator<number, readonly (Matter | undefined)[]> {
  const { problem, at } = problemOf(variation, plan)
  const drawn = Float64Array.from(problem.sources, ({ nominal }) => nominal)
  const middle = problem.judge(drawn)
  const matters: (Matter | undefined)[] = []
  for (const [index, characteristic] of plan.entries()) {
    const ends = at(characteristic).flatMap((source) => {
      const { least, most } = problem.sources[source]
      return [least, most].map((value) => problem.judge(drawn.with(source, value)))
    })
    matters.push(worstOf(variation, problem, { middle, ends }))
    yield index + 1
  }
  return matters
}

/** Sources of the sets as they are, and one more for each diameter. A diameter follows the coating: it is told as before it. */
function problemOf(variation: Variation, plan: readonly Characteristic[]) {
  const { sources, diameters } = variation
  const values = Float64Array.from(sources, ({ nominal }) => nominal)
  const own = diameters.map(({ place, words, nominal_mm, finished, coated }): OwnSource => {
    const source = { id: place, words, unit: 'mm', nominal: nominal_mm, ...finished, of: 'sets' } as const
    const made = (value: number) => ({ value_mm: value - (coated?.adds_mm ?? 0), visit: 'before coating' }) as const
    return {
      source: { ...source, law: { kind: 'uniform', ...finished } },
      put: (value, standing) => void standing.diameters.set(place, made(value)),
    }
  })
  const kept = sources.flatMap(({ of }, place) => (of === 'sets' ? [place] : []))
  const problem = designProblem(respread(variation, { standing: { values, diameters: new Map() }, kept, own }))
  const at = ({ diameter, sources: places }: (typeof plan)[number]): readonly number[] =>
    diameter === undefined
      ? places.map((place) => kept.indexOf(place))
      : [kept.length + diameters.findIndex(({ place }) => place === diameter)]
  return { problem, at }
}

interface Ends {
  readonly middle: JudgedSet
  readonly ends: readonly JudgedSet[]
}

function worstOf({ design }: Variation, { requirements }: SpreadProblem, { middle, ends }: Ends): Matter | undefined {
  const matters = design.requirements.map(({ id, figure }, index): Matter => {
    const shares = ends.map((end) => shareLost(requirements[index], { index, middle, end }))
    return { requirement: id, figure, share: Math.max(...shares) }
  })
  const [worst] = matters.toSorted((one, other) => other.share - one.share)
  return worst !== undefined && worst.share >= SHARE_LEAST ? worst : undefined
}

interface Lost {
  readonly index: number
  readonly middle: JudgedSet
  readonly end: JudgedSet
}

function shareLost(requirement: SpreadProblem['requirements'][number], { index, middle, end }: Lost): number {
  const [had, has] = [marginIn(middle, requirement), marginIn(end, requirement)]
  const turns = middle.verdicts[index] === 'met' && end.verdicts[index] !== 'met' ? 1 : 0
  const lost = (had - has) / Math.abs(had)
  return Number.isFinite(lost) ? Math.max(lost, turns) : turns
}
