/** What is asked against what shows it, as rows. */
import type { Proof, TraceItem, UnitSystem, WayShown } from '../../engine/index.ts'
import { neededWords } from '../tables/rows.ts'
import { joined, setValue } from '../tables/value-text.ts'
import { shareWords } from './share-words.ts'

/** One thing that is asked. */
export interface TraceRow {
  readonly id: string
  /** Its place in the document. */
  readonly place: string
  readonly verdict: TraceItem['verdict']
  /** `Dead-centre margin, closed: at least 7 deg`, or the demand's own words. */
  readonly asks: string
  readonly reason: string
  readonly source: string
  readonly ways: readonly { readonly words: string; readonly verdict: TraceItem['verdict'] }[]
}

/** Words of a verdict on what is asked. */
export const traceSays: Readonly<Record<TraceItem['verdict'], string>> = {
  met: 'shown',
  short: 'falls short',
  undecided: 'open',
}

/** Rows in the order of the trace: what is not shown stands at the top. */
export function traceRows({ trace }: Pick<Proof, 'trace'>, units: UnitSystem = 'metric'): readonly TraceRow[] {
  return trace.map((item) => ({
    id: item.id,
    place: `${item.kind}s.${item.id}`,
    verdict: item.verdict,
    asks: item.kind === 'demand' ? item.asked.asks : requirementWords(item.finding, units),
    reason: item.asked.reason,
    source: item.asked.source,
    ways:
      item.ways.length === 0
        ? [{ words: 'nothing is named that shows it (shownBy)', verdict: 'undecided' }]
        : item.ways.map((way) => ({ words: wayWords(way, units), verdict: way.verdict })),
  }))
}

type RequirementItem = Extract<TraceItem, { readonly kind: 'requirement' }>

function requirementWords(finding: RequirementItem['finding'], units: UnitSystem): string {
  return `${finding.figure?.title ?? finding.requirement.figure}: ${neededWords(finding, units)}`
}

function wayWords(way: WayShown, units: UnitSystem): string {
  switch (way.by) {
    case 'figure':
      return `figure as drawn: ${foundWords(way.finding, units)}`
    case 'share':
      return way.found === undefined
        ? `share of sets, at least ${shareWords(way.asked_ratio)}: not counted yet`
        : `share of sets, at least ${shareWords(way.asked_ratio)}: ${shareWords(way.found.value)} of ${way.found.samples} counted, at least ${shareWords(way.found.least)} at 95 % confidence`
    case 'test':
      return testWords(way)
    case 'document':
      return `document: ${way.document}${way.verdict === 'met' ? '' : ', not in hand yet'}`
  }
}

function foundWords({ figure, why }: RequirementItem['finding'], units: UnitSystem): string {
  if (figure?.value === undefined) return why ?? figure?.why ?? 'not known'
  return joined(setValue(figure.value, figure.unit, units))
}

function testWords(way: Extract<WayShown, { readonly by: 'test' }>): string {
  const { test, inBook, shown_ratio } = way
  const head = `${test.sort} test: ${test.title}`
  const another =
    inBook === undefined || inBook.ofAnother_count === 0
      ? ''
      : `; ${inBook.ofAnother_count} more in the bench book, of sets that were made to another finger, prove nothing of this one`
  const { done } = test
  if (shown_ratio === undefined) return `${head}, still to be done${another}`
  const proves = `which proves that at least ${shareWords(shown_ratio)} pass, at 95 % confidence`
  if (inBook !== undefined && inBook.tried_count > 0)
    return `${head}, last ${inBook.last}: ${triedWords(inBook)}, ${proves}; bench book, ${inBook.serials.join(', ')}${another}`
  return done === undefined ? head : `${head}, ${done.on}: ${triedWords(done)}, ${proves}; ${done.record}${another}`
}

function triedWords({ tried_count, failed_count }: { readonly tried_count: number; readonly failed_count: number }): string {
  return `${tried_count} tried, ${failed_count === 0 ? 'all passed' : `${failed_count} failed`}`
}
