import type { Evaluation } from '../engine/index.ts'
import { findingsOf, overallVerdict, problemsAsked, type QuestionName } from '../report/index.ts'

/** What the command tells the shell. `wrongUse` also stands for a file that cannot be opened or written. */
export const exitStatus = { met: 0, short: 1, undecided: 2, refused: 3, wrongUse: 64 } as const

export type ExitStatus = (typeof exitStatus)[keyof typeof exitStatus]

/** One question of the program, or all of them. */
export type Scope = QuestionName | 'verdict'

/**
 * Status of an evaluated design: refused when moving the finger brought problems to light or the question asks for what is not stated, else by
 * its findings.
 * A design that states no requirements has none that falls short: its status is 0, and the text says that nothing was asked.
 */
export function statusOf(evaluation: Evaluation, scope: Scope): ExitStatus {
  if (problemsAsked(evaluation, scope).length > 0) return exitStatus.refused
  const findings = scope === 'verdict' ? evaluation.findings : findingsOf(evaluation, scope)
  const verdict = overallVerdict(findings)
  return verdict === 'notAsked' ? exitStatus.met : exitStatus[verdict]
}
