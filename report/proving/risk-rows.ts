/** Risks as rows, in the order of ISO 14971: hazard, sequence, harm, estimate, control, check, what is left. */
import type { Design, Overload, Proof, RiskRow, RiskScales, SeenInField, ShareNotMet } from '../../engine/index.ts'
import { closingsWords } from '../wear/wear-rows.ts'
import { shareWords } from './share-words.ts'

/** One risk. */
export interface RiskTextRow {
  readonly id: string
  readonly verdict: RiskRow['verdict']
  /** `not taken` and so on: the verdict in the words of a risk. */
  readonly says: string
  readonly hazard: string
  readonly sequence: string
  readonly harm: string
  /** `lasting harm, often` */
  readonly before: string
  readonly controls: readonly { readonly by: string; readonly does: string; readonly check: string }[]
  /** `treated hurt, seldom to now and then` */
  readonly left: string
  /** What the probability of what is left comes from. */
  readonly from: readonly string[]
  readonly reason: string
}

/** Words of a verdict on a risk. */
export const riskSays: Readonly<Record<RiskRow['verdict'], string>> = {
  met: 'taken',
  short: 'more than is taken',
  undecided: 'cannot be judged yet',
}

const CONTROL = { design: 'by design', protection: 'protective measure', information: 'information for use' } as const

/** Rows in the order of the risk table; none for a design without scales. */
export function riskRows({ risks }: Pick<Proof, 'risks'>, { riskScales }: Pick<Design, 'riskScales'>): readonly RiskTextRow[] {
  return riskScales === undefined ? [] : risks.map((row) => riskTextRow(row, riskScales))
}

function riskTextRow({ risk, verdict, left, notMet, seen }: RiskRow, { severity, probability }: RiskScales): RiskTextRow {
  const { residual } = risk
  const steps = left === undefined ? [] : [...new Set([left.least, left.most])].map((step) => probability[step].name)
  return {
    id: risk.id,
    verdict,
    says: riskSays[verdict],
    hazard: risk.hazard,
    sequence: risk.sequence,
    harm: risk.harm,
    before: `${severity[risk.severity].name}, ${probability[risk.probability].name}`,
    controls: risk.controls.map(({ by, does, check }) => ({ by: CONTROL[by], does, check })),
    left: `${severity[residual.severity].name}, ${steps.length === 0 ? 'probability not known' : steps.join(' to ')}`,
    from: [
      ...notMet.flatMap(notMetWords),
      ...(seen === undefined ? [] : [seenWords(seen)]),
      ...(residual.probability === undefined && notMet.length === 0 ? [UNJUDGED] : []),
      ...(residual.probability === undefined ? [] : [`judged by the workshop: ${probability[residual.probability].name}`]),
    ],
    reason: residual.reason,
  }
}

const UNJUDGED = 'nobody has judged it yet: state a probability of what is left, or the requirements that it hangs on'

function notMetWords({ requirement, asDrawn, share, life, overload }: ShareNotMet): readonly string[] {
  const head = `requirement ${requirement.id}`
  if (asDrawn !== 'met') return [`${head}: ${asDrawn} as drawn`]
  const counted =
    share === undefined
      ? `${head}: met as drawn; sets are not counted yet (Spread)`
      : `${head}: not met by ${shareWords(share.value)} of ${share.samples} sets, at most ${shareWords(share.most)} at 95 % confidence`
  return [
    counted,
    ...(life === undefined ? [] : [`${head}, ${lifeWords(life)}`]),
    ...(overload === undefined ? [] : [overloadWords(overload)]),
  ]
}

function lifeWords({ verdict, untilMost, untilLikely }: NonNullable<ShareNotMet['life']>): string {
  if (verdict === 'met') return 'as it wears: met over the stated life, at the most wear as well'
  const after = verdict === 'short' ? untilLikely : untilMost
  const level = verdict === 'short' ? 'likely' : 'most'
  if (after === undefined) return 'as it wears: how long it is met is not known'
  const comes =
    verdict === 'short'
      ? 'every finger comes to it that is not taken out of use before; state a shorter life (use) if it is'
      : 'looking it over has to come before, or a shorter life be stated (use)'
  const falls = verdict === 'short' ? 'falls' : 'may fall'
  return `as it wears: ${falls} short after ${closingsWords(after)} closings at the ${level} wear; ${comes}`
}

function overloadWords({ share_ratio, strengthOverStress, words }: Overload): string {
  const ratio = strengthOverStress.toPrecision(RATIO_digits)
  return `${words}: strength is ${ratio} times the stress; as both scatter, ${shareWords(share_ratio)} are overloaded`
}

/** Digits of a ratio of strength to stress. */
const RATIO_digits = 3

function seenWords({ serials, hurt_count, share }: SeenInField): string {
  const hurt = hurt_count === 0 ? '' : `, ${hurt_count} with somebody hurt`
  return `field log: ${serials.length} of ${share.samples} sets came back with it${hurt} (${serials.join(', ')}); at least ${shareWords(share.least)} at 95 % confidence, and what nobody reports is not in it`
}

/** The scales as lines, each step with what it means. */
export function scaleLines({ severity, probability }: RiskScales): {
  readonly probability: readonly string[]
  readonly severity: readonly string[]
} {
  return {
    probability: probability.map(({ name, means, upTo_ratio }) => `${name}, up to ${shareWords(upTo_ratio)}: ${means}`),
    severity: severity.map(({ name, means, acceptable }) => {
      const taken = acceptable === undefined ? 'never taken' : `taken up to ${probability[acceptable].name}`
      return `${name}, ${taken}: ${means}`
    }),
  }
}
