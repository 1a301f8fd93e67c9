import type { Verdict } from '../figures/evaluation.ts'
import type { FieldEntry } from './book.ts'
import type { Evidence } from './evidence.ts'
import { type RiskRow, riskTable } from './risk-table.ts'
import { type TraceItem, traceOf } from './trace.ts'
import { worstVerdict } from './worst-verdict.ts'

/** Whether a design can be stood behind: what is asked and shown, what may go wrong. */
export interface Proof {
  readonly trace: readonly TraceItem[]
  readonly risks: readonly RiskRow[]
  /** What came back from the field, oldest first. */
  readonly field: readonly FieldEntry[]
  /** Of that, what belongs to no risk of the design: a hazard that nobody wrote down, until it is looked at. */
  readonly unforeseen: readonly FieldEntry[]
  /** Absent where the document asks for nothing and names no risk. */
  readonly verdict?: Verdict
}

/** The proof of a design from what is known of it. */
export function proofOf(evidence: Evidence): Proof {
  const trace = traceOf(evidence)
  const risks = riskTable(evidence)
  const named = new Set(evidence.evaluation.design.risks.map(({ id }) => id))
  const field = evidence.book?.field ?? []
  const unforeseen = field.filter((entry) => !entry.risks.some((id) => named.has(id)))
  const open = unforeseen.length > 0 ? ['undecided' as const] : []
  const verdicts = [...[...trace, ...risks].map(({ verdict }) => verdict), ...open]
  return { trace, risks, field, unforeseen, ...(verdicts.length > 0 && { verdict: worstVerdict(verdicts) }) }
}
