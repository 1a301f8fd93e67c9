/**
 * What is asked of a finger against what shows it. A requirement is shown by its figure and by every other way that it names; a demand in
 * words by the ways that it names, and stays open where it names none. One way that speaks against it is enough.
 */
import type { BenchTest, Demand, Requirement, ShownBy } from '../design/design.ts'
import type { Finding, Verdict } from '../figures/evaluation.ts'
import { reliabilityShown } from '../inspection/success-run.ts'
import { type CountedShare, confidence_ratio } from '../variation/spread/share-interval.ts'
import { targetVerdict } from '../variation/spread/yields.ts'
import type { Book } from './book.ts'
import type { Evidence } from './evidence.ts'
import { type TestsInBook, testsInBook } from './tests-in-book.ts'
import { worstFirst, worstVerdict } from './worst-verdict.ts'
import { yieldOfRequirement } from './yield-of-requirement.ts'

/** One way in which something is shown, and what it says: met, short (it speaks against it), undecided (not done, not counted). */
export type WayShown = { readonly verdict: Verdict } & (
  | { readonly by: 'figure'; readonly finding: Finding }
  | {
      readonly by: 'share'
      readonly asked_ratio: number
      /** Absent until sets are counted. */
      readonly found?: CountedShare
    }
  | {
      readonly by: 'test'
      readonly test: BenchTest
      /** Share of pieces that pass, at least, with `confidence_ratio`; absent until it was done. */
      readonly shown_ratio?: number
      /** Tests of this kind in the bench book; where some are of this finger, they count in the place of what the document says was done. */
      readonly inBook?: TestsInBook
    }
  | { readonly by: 'document'; readonly document: string }
)

/** Something that is asked, with everything that shows it. */
export type TraceItem = { readonly id: string; readonly verdict: Verdict; readonly ways: readonly WayShown[] } & (
  | { readonly kind: 'requirement'; readonly asked: Requirement; readonly finding: Finding }
  | { readonly kind: 'demand'; readonly asked: Demand }
)

/** Everything that is asked of the finger; what is not shown stands at the top. */
export function traceOf(evidence: Evidence): readonly TraceItem[] {
  const { evaluation } = evidence
  const requirements = evaluation.findings.map((finding): TraceItem => {
    const { requirement } = finding
    const ways: readonly WayShown[] = [
      { by: 'figure', verdict: finding.verdict, finding },
      ...(requirement.shownBy ?? []).map((way) => wayShown(way, evidence, requirement)),
    ]
    return { kind: 'requirement', id: requirement.id, asked: requirement, finding, ways, verdict: verdictOf(ways) }
  })
  const demands = evaluation.design.demands.map((demand): TraceItem => {
    const ways = demand.shownBy.map((way) => wayShown(way, evidence))
    return { kind: 'demand', id: demand.id, asked: demand, ways, verdict: verdictOf(ways) }
  })
  return worstFirst([...requirements, ...demands])
}

function verdictOf(ways: readonly WayShown[]): Verdict {
  return ways.length === 0 ? 'undecided' : worstVerdict(ways.map(({ verdict }) => verdict))
}

/** @param requirement that it is a way of; a demand has no share of sets */
function wayShown(way: ShownBy, { evaluation, spread, book }: Evidence, requirement?: Requirement): WayShown {
  switch (way.by) {
    case 'share': {
      const counted = requirement && spread && yieldOfRequirement(spread, requirement)
      const verdict = counted ? targetVerdict(counted, way.least_ratio) : 'undecided'
      return { by: 'share', verdict, asked_ratio: way.least_ratio, ...(counted && { found: counted.met }) }
    }
    case 'test':
      return testShown(evaluation.design.benchTests[way.test], book)
    case 'document':
      return { by: 'document', verdict: way.isInHand ? 'met' : 'undecided', document: way.document }
  }
}

/** A test is passed when no piece failed; how much that proves depends on how many were tried. */
function testShown(test: BenchTest, book: Book | undefined): WayShown {
  const inBook = testsInBook(test, book)
  const done = inBook && inBook.tried_count > 0 ? inBook : test.done
  const found = { by: 'test', test, ...(inBook && { inBook }) } as const
  if (!done) return { ...found, verdict: 'undecided' }
  const shown_ratio = reliabilityShown({ tried: done.tried_count, failed: done.failed_count }, confidence_ratio)
  return { ...found, verdict: done.failed_count === 0 ? 'met' : 'short', shown_ratio }
}
