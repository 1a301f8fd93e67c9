/**
 * Risks in the order of ISO 14971:2019 (5 analysis, 6 evaluation, 7.1 to 7.3 control, its check and the residual risk; from memory): hazard,
 * sequence, harm, severity and probability, control, check of the control, what is left.
 *
 * Where what is left hangs on requirements, its probability comes from counted sets, the share that does not meet the worst of them; from wear, where
 * one falls short before the stated life ends; and for strength from how loads and strengths scatter. That is the probability that a finger can
 * behave so, and no less than that it does harm; what a wearer does then stands in the sequence.
 */
import type { Requirement, Risk, RiskScales } from '../design/design.ts'
import type { Verdict } from '../figures/evaluation.ts'
import { type CountedShare, shareOf } from '../variation/spread/share-interval.ts'
import type { LifeFinding } from '../variation/wear/life-of.ts'
import type { Book } from './book.ts'
import type { Evidence } from './evidence.ts'
import { type Overload, overloadOf } from './overload.ts'
import { worstFirst, worstVerdict } from './worst-verdict.ts'
import { yieldOfRequirement } from './yield-of-requirement.ts'

/** Share of sets that do not meet a requirement, with its interval at 95 %. */
export interface ShareNotMet {
  readonly requirement: Requirement
  /** As drawn. */
  readonly asDrawn: Verdict
  /** Absent until sets are counted. */
  readonly share?: { readonly value: number; readonly least: number; readonly most: number; readonly samples: number }
  /** Over the stated life; absent until it is worked through, and where the document does not say enough. */
  readonly life?: LifeFinding
  /** That a load exceeds what bears it; absent where the requirement is none of strength, or scatter is not stated. */
  readonly overload?: Overload
}

/** Sets that came back with a risk, of those that were made; the interval is at 95 %. */
export interface SeenInField {
  readonly serials: readonly string[]
  readonly hurt_count: number
  readonly share: CountedShare
}

/** A risk with what is known of it. */
export interface RiskRow {
  readonly risk: Risk
  /** Whether it would be taken without any control. */
  readonly before: Verdict
  /** One for each requirement that what is left hangs on. */
  readonly notMet: readonly ShareNotMet[]
  /** What came back from the field with it; absent where nothing did. */
  readonly seen?: SeenInField
  /** Steps of probability of what is left, at least and at most; absent where nobody knows. */
  readonly left?: { readonly least: number; readonly most: number }
  /** Whether what is left is taken: undecided while the steps straddle what is taken, or sets are not counted. */
  readonly verdict: Verdict
}

/** Every risk: those that are not taken first, then the most severe; otherwise in the order of the document. */
export function riskTable(evidence: Evidence): readonly RiskRow[] {
  const { risks, riskScales } = evidence.evaluation.design
  if (!riskScales) return []
  const rows = risks.map((risk) => riskRow(risk, riskScales, evidence))
  return worstFirst(rows.toSorted((one, other) => other.risk.residual.severity - one.risk.residual.severity))
}

function riskRow(risk: Risk, scales: RiskScales, evidence: Evidence): RiskRow {
  const { residual, severity, probability } = risk
  const notMet = residual.requirements.map((index) => shareNotMet(index, evidence))
  const seen = seenInField(risk, evidence.book)
  const left = worseInField(stepsLeft(risk, notMet, scales), seen, scales)
  const accepted = (step: number) => isTaken(scales, { severity: residual.severity, probability: step })
  return {
    risk,
    before: isTaken(scales, { severity, probability }) ? 'met' : 'short',
    notMet,
    ...(seen && { seen }),
    ...(left && { left }),
    verdict: !left ? 'undecided' : accepted(left.most) ? 'met' : accepted(left.least) ? 'undecided' : 'short',
  }
}

/** Whether the workshop takes a harm of that severity at that probability. */
export function isTaken(
  { severity: severities }: RiskScales,
  { severity, probability }: { readonly severity: number; readonly probability: number },
): boolean {
  const { acceptable } = severities[severity]
  return acceptable !== undefined && probability <= acceptable
}

/** The lowest step that a share does not exceed. */
export function stepOfShare({ probability }: RiskScales, share_ratio: number): number {
  const step = probability.findIndex(({ upTo_ratio }) => share_ratio <= upTo_ratio)
  return step < 0 ? probability.length - 1 : step
}

function shareNotMet(index: number, evidence: Evidence): ShareNotMet {
  const { evaluation, spread, lived } = evidence
  const requirement = evaluation.design.requirements[index]
  const counted = spread && yieldOfRequirement(spread, requirement)
  const asDrawn = worstVerdict(
    evaluation.findings.filter((finding) => finding.requirement.id === requirement.id).map(({ verdict }) => verdict),
  )
  const life = lived?.life?.findings.find((finding) => finding.requirement === requirement.id)
  const overload = overloadOf(evaluation, requirement)
  const found = { requirement, asDrawn, ...(life && { life }), ...(overload && { overload }) }
  if (!counted) return found
  const { value, least, most, samples } = counted.met
  return { ...found, share: { value: 1 - value, least: 1 - most, most: 1 - least, samples } }
}

/** The worst of what is judged, counted, worn and overloaded; a design that falls short as drawn is at the top of the scale; what nobody judged is not known. */
function stepsLeft({ residual }: Risk, notMet: readonly ShareNotMet[], scales: RiskScales): RiskRow['left'] {
  if (residual.probability === undefined && notMet.length === 0) return undefined
  const judged = residual.probability ?? 0
  const top = scales.probability.length - 1
  if (notMet.some(({ asDrawn, life }) => asDrawn === 'short' || life?.verdict === 'short')) return { least: top, most: top }
  const counted = notMet.flatMap(({ share }) => (share ? [share] : []))
  if (counted.length < notMet.length || notMet.some(({ asDrawn }) => asDrawn === 'undecided')) return undefined
  const overloads = notMet.flatMap(({ overload }) => (overload ? [stepOfShare(scales, overload.share_ratio)] : []))
  const steps = (key: 'least' | 'most') => counted.map((share) => stepOfShare(scales, share[key]))
  // At the most wear every finger may come to it, at the likely wear none does.
  const worn = notMet.some(({ life }) => life?.verdict === 'undecided') ? top : 0
  return {
    least: Math.max(judged, ...overloads, ...steps('least')),
    most: Math.max(judged, worn, ...overloads, ...steps('most')),
  }
}

/** A set counts once, however often it came back. What nobody reported is not in it: it is the least that happens. */
function seenInField({ id }: Risk, book: Book | undefined): SeenInField | undefined {
  const entries = book?.field.filter(({ risks }) => risks.includes(id)) ?? []
  if (!book || entries.length === 0) return undefined
  const serials = [...new Set(entries.map(({ serial }) => serial))]
  const share = shareOf({ hits: [serials.length], of: [Math.max(book.sets_count, serials.length)] })
  return { serials, hurt_count: entries.filter(({ harm }) => harm === 'somebody hurt').length, share }
}

/** What was seen is known to happen: it counts where it is worse, also where nothing else is known. */
function worseInField(left: RiskRow['left'], seen: SeenInField | undefined, scales: RiskScales): RiskRow['left'] {
  if (!seen) return left
  const [least, most] = [stepOfShare(scales, seen.share.least), stepOfShare(scales, seen.share.most)]
  const top = scales.probability.length - 1
  return { least: Math.max(left?.least ?? 0, least), most: Math.max(left?.most ?? top, most) }
}
