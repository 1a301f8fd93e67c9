/** Risks as rows, in the order of ISO 14971: hazard, sequence, harm, estimate, control, check, what is left. */
import type { Design, Proof, RiskRow, RiskScales, ShareNotMet } from '../../engine/index.ts'
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

function riskTextRow({ risk, verdict, left, notMet }: RiskRow, { severity, probability }: RiskScales): RiskTextRow {
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
      ...notMet.map(notMetWords),
      ...(residual.probability === undefined ? [] : [`judged by the workshop: ${probability[residual.probability].name}`]),
    ],
    reason: residual.reason,
  }
}

function notMetWords({ requirement, asDrawn, share }: ShareNotMet): string {
  const head = `requirement ${requirement.id}`
  if (asDrawn !== 'met') return `${head}: ${asDrawn} as drawn`
  if (share === undefined) return `${head}: met as drawn; sets are not counted yet (Spread)`
  return `${head}: not met by ${shareWords(share.value)} of ${share.samples} sets, at most ${shareWords(share.most)} at 95 % confidence`
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
