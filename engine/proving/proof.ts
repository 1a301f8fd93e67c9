import type { Verdict } from '../figures/evaluation.ts'
import type { Evidence } from './evidence.ts'
import { type RiskRow, riskTable } from './risk-table.ts'
import { type TraceItem, traceOf } from './trace.ts'
import { worstVerdict } from './worst-verdict.ts'

/** Whether a design can be stood behind: what is asked and shown, what may go wrong. */
export interface Proof {
  readonly trace: readonly TraceItem[]
  readonly risks: readonly RiskRow[]
  /** Absent where the document asks for nothing and names no risk. */
  readonly verdict?: Verdict
}

/** The proof of a design from what is known of it. */
export function proofOf(evidence: Evidence): Proof {
  const trace = traceOf(evidence)
  const risks = riskTable(evidence)
  const verdicts = [...trace, ...risks].map(({ verdict }) => verdict)
  return { trace, risks, ...(verdicts.length > 0 && { verdict: worstVerdict(verdicts) }) }
}
