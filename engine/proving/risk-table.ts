/**
 * Risks in the order of ISO 14971:2019 (5 analysis, 6 evaluation, 7.1 to 7.3 control, its check and the residual risk; from memory): hazard,
 * sequence, harm, severity and probability, control, check of the control, what is left.
 *
 * Where what is left hangs on requirements, its probability comes from counted sets: the share that does not meet the worst of them. That is
 * the probability that a finger can behave so, and no less than that it does harm; what a wearer does then stands in the sequence.
 */
import type { Requirement, Risk, RiskScales } from '../design/design.ts'
import type { Verdict } from '../figures/evaluation.ts'
import type { Evidence } from './evidence.ts'
import { worstFirst, worstVerdict } from './worst-verdict.ts'
import { yieldOfRequirement } from './yield-of-requirement.ts'

/** Share of sets that do not meet a requirement, with its interval at 95 %. */
export interface ShareNotMet {
  readonly requirement: Requirement
  /** As drawn. */
  readonly asDrawn: Verdict
  /** Absent until sets are counted. */
  readonly share?: { readonly value: number; readonly least: number; readonly most: number; readonly samples: number }
}

/** A risk with what is known of it. */
export interface RiskRow {
  readonly risk: Risk
  /** Whether it would be taken without any control. */
  readonly before: Verdict
  /** One for each requirement that what is left hangs on. */
  readonly notMet: readonly ShareNotMet[]
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
  const left = stepsLeft(risk, notMet, scales)
  const accepted = (step: number) => isTaken(scales, { severity: residual.severity, probability: step })
  return {
    risk,
    before: isTaken(scales, { severity, probability }) ? 'met' : 'short',
    notMet,
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

function shareNotMet(index: number, { evaluation, spread }: Evidence): ShareNotMet {
  const requirement = evaluation.design.requirements[index]
  const counted = spread && yieldOfRequirement(spread, requirement)
  const asDrawn = worstVerdict(
    evaluation.findings.filter((finding) => finding.requirement.id === requirement.id).map(({ verdict }) => verdict),
  )
  if (!counted) return { requirement, asDrawn }
  const { value, least, most, samples } = counted.met
  return { requirement, asDrawn, share: { value: 1 - value, least: 1 - most, most: 1 - least, samples } }
}

/** The worse of what is judged and what is counted; a design that falls short as drawn is at the top of the scale. */
function stepsLeft({ residual }: Risk, notMet: readonly ShareNotMet[], scales: RiskScales): RiskRow['left'] {
  const judged = residual.probability ?? 0
  const top = scales.probability.length - 1
  if (notMet.some(({ asDrawn }) => asDrawn === 'short')) return { least: top, most: top }
  const counted = notMet.flatMap(({ share }) => (share ? [share] : []))
  if (counted.length < notMet.length || notMet.some(({ asDrawn }) => asDrawn === 'undecided')) return undefined
  const steps = (key: 'least' | 'most') => counted.map((share) => stepOfShare(scales, share[key]))
  return { least: Math.max(judged, ...steps('least')), most: Math.max(judged, ...steps('most')) }
}
