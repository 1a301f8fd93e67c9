import { gainOf, type YieldGain } from './advice.ts'
import type { Offer, OfferedSize } from './offer.ts'
import type { Spread } from './spread.ts'
import type { SpreadProblem } from './spread-problem.ts'

/** An offer, and what taking it does. */
export interface JudgedOffer {
  readonly size: Pick<OfferedSize, 'name' | 'words' | 'kind' | 'drawn' | 'isZone'>
  /** As typed. */
  readonly typed: string
  /** Gain of the yield of all requirements; below nothing for a loss. */
  readonly gain: YieldGain
}

/** The sets of a run judged once more, with another tolerance of one size. */
export function judgedOffer(problem: SpreadProblem, spread: Spread, { size, typed, moved }: Offer): JudgedOffer {
  const places = size.sources.map(({ id }) => problem.sources.findIndex((source) => source.id === id))
  const judge: SpreadProblem['judge'] = (values) => {
    const offered = Float64Array.from(values)
    for (const place of places) offered[place] = moved(values[place])
    return problem.judge(offered)
  }
  const { name, words, kind, drawn, isZone } = size
  return { size: { name, words, kind, drawn, isZone }, typed, gain: gainOf({ problem, spread, judge }) }
}
