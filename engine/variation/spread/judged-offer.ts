import type { SetsRun } from '../shares/sets-run.ts'
import { gainOf, type YieldGain } from './advice.ts'
import { movesOf, type Offer, type OfferedSize } from './offer.ts'
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

/** The sets of a run judged once more for each offer, with another tolerance of one size. */
export function* judgedOffers(
  problem: SpreadProblem,
  spread: Spread,
  offers: readonly Offer[],
): SetsRun<readonly JudgedOffer[], never> {
  const judged: JudgedOffer[] = []
  for (const [index, offer] of offers.entries()) {
    const { name, words, kind, drawn, isZone } = offer.size
    const change = { moves: movesOf(problem, offer) }
    const gain = yield* gainOf({ problem, spread, change, index, of: offers.length })
    judged.push({ size: { name, words, kind, drawn, isZone }, typed: offer.typed, gain })
  }
  return judged
}
