/** One verdict for many findings, and the finding that governs it. */
import type { Evaluation, Finding, Verdict } from '../../engine/index.ts'
import { type QuestionName, questionOf } from '../questions/question-of.ts'

/** Verdict of a question: `notAsked` where the design states no requirement. */
export type Answer = Verdict | 'notAsked'

/** Findings that belong to one question, in the order of the design. */
export function findingsOf(evaluation: Evaluation, question: QuestionName): readonly Finding[] {
  return evaluation.findings.filter((finding) => questionOf(finding.requirement.figure) === question)
}

/** Short if any is short, else undecided if any is undecided, else met; `notAsked` for none. */
export function overallVerdict(findings: readonly Pick<Finding, 'verdict'>[]): Answer {
  const verdicts = findings.map((finding) => finding.verdict)
  if (verdicts.includes('short')) return 'short'
  if (verdicts.includes('undecided')) return 'undecided'
  return verdicts.length > 0 ? 'met' : 'notAsked'
}

/**
 * The finding to look at first: among those of the overall verdict the one with the least margin for its bound, and one without
 * a number (yes or no, undecided) before any other.
 */
export function governingFinding(findings: readonly Finding[]): Finding | undefined {
  const overall = overallVerdict(findings)
  const candidates = findings.filter((finding) => finding.verdict === overall)
  const numbered = candidates.filter((finding) => finding.margin !== undefined)
  if (overall !== 'met' && numbered.length < candidates.length) return candidates.find((finding) => finding.margin === undefined)
  return [...numbered].sort((one, other) => relativeMargin(one) - relativeMargin(other))[0] ?? candidates[0]
}

function relativeMargin(finding: Finding): number {
  const bound = finding.requirement.bound
  const scale = bound.kind === 'is' ? 1 : Math.abs(bound.value)
  return (finding.margin ?? 0) / Math.max(scale, 1e-9)
}
