/**
 * Evaluates a few figures of a design: the same road as `evaluate`, with what nobody asks for left out. For counting samples, where each
 * evaluation is one of thousands.
 */
import type { Design } from './design/design.ts'
import { workOut } from './evaluate.ts'
import { decidesDoubtOf } from './figures/doubts.ts'
import type { Evaluation, Finding, StrengthList, Travel } from './figures/evaluation.ts'
import { figureSheet } from './figures/figure-sheet.ts'
import { endKind } from './figures/travel-report.ts'

/** What was asked for of a design. */
export interface AskedEvaluation {
  /** Those asked for, and what their findings hang on; each as `evaluate` gives it. */
  readonly figures: Evaluation['figures']
  /** One a requirement. */
  readonly findings: readonly Finding[]
  /** What ends the closing motion; absent where the finger cannot be assembled or moved. */
  readonly endsBy?: Travel['endsBy']
  /** Where a figure of strength was asked for. */
  readonly strength?: StrengthList
}

/** Names of the figures that a design's requirements and a caller ask for, with all that their findings hang on. */
export function askedFigures(design: Design, also: readonly string[]): ReadonlySet<string> {
  const asked = [...design.requirements.map(({ figure }) => figure), ...also]
  return new Set([...asked, ...asked.flatMap((figure) => decidesDoubtOf(design, figure))])
}

/** @param asked by `askedFigures`, of this design or of one that differs in sizes only */
export function evaluateAsked(design: Design, asked: ReadonlySet<string>): AskedEvaluation {
  const sheet = figureSheet(design, asked)
  const { findings, moved } = workOut(design, sheet)
  const { strength } = moved ?? {}
  return { figures: sheet.figures, findings, ...(moved && { endsBy: endKind(moved.survey) }), ...(strength && { strength }) }
}
