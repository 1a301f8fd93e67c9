/**
 * The range of one source that a design survives, everything else as drawn: from what is drawn outwards until a requirement falls short.
 * For friction this is the range of coefficients between slipping and jamming.
 */
import { limits } from '../../numbers/limits.ts'
import type { JudgedSet, SpreadProblem } from './spread-problem.ts'

/** One end of the range. */
export interface SurvivedEnd {
  /** Last value at which every requirement is met. */
  readonly value: number
  /** Places in the list of requirements that fall short, or cannot be decided, just beyond; empty where the search ended first. */
  readonly beyond: readonly number[]
}

/** Range of one source. */
export interface SurvivedRange {
  readonly source: number
  readonly least: SurvivedEnd
  readonly most: SurvivedEnd
}

/** How far beyond its drawn limits a source is followed, in widths of its range. */
const widths_most = 2

/** Steps out to there, before the end is closed in by halving: a requirement that fails for less than this and recovers is passed over. */
const steps_count = 16

/** @returns undefined where a requirement is not met as drawn */
export function survivedRange(problem: SpreadProblem, source: number): SurvivedRange | undefined {
  const { nominal, least, most } = problem.sources[source]
  const drawn = Float64Array.from(problem.sources, (one) => one.nominal)
  const judgedAt = (value: number): JudgedSet => {
    const values = drawn.slice()
    values[source] = value
    return problem.judge(values)
  }
  if (shortIn(judgedAt(nominal)).length > 0) return undefined
  const width = widths_most * (most - least)
  return { source, least: endTowards(judgedAt, nominal, least - width), most: endTowards(judgedAt, nominal, most + width) }
}

function endTowards(judgedAt: (value: number) => JudgedSet, from: number, to: number): SurvivedEnd {
  let met = from
  for (let step = 1; step <= steps_count; step++) {
    const next = from + ((to - from) * step) / steps_count
    const judged = judgedAt(next)
    // Beyond what can be built there is nothing to survive.
    if (judged.failure === 'cannot be built') break
    const short = shortIn(judged)
    if (short.length > 0) return closedIn(judgedAt, { met, failing: next, short })
    met = next
  }
  return { value: met, beyond: [] }
}

interface End {
  readonly met: number
  readonly failing: number
  readonly short: readonly number[]
}

function closedIn(judgedAt: (value: number) => JudgedSet, end: End): SurvivedEnd {
  let { met, failing, short } = end
  for (let halving = 0; halving < limits.rangeHalvings; halving++) {
    const middle = (met + failing) / 2
    const found = shortIn(judgedAt(middle))
    if (found.length === 0) met = middle
    else {
      failing = middle
      short = found
    }
  }
  return { value: met, beyond: short }
}

function shortIn({ verdicts }: JudgedSet): readonly number[] {
  return verdicts.flatMap((verdict, requirement) => (verdict === 'met' ? [] : [requirement]))
}
