/** The whole way from a design to what is said of it, on one screen. */
import type { Design } from './design/design.ts'
import type { Problem } from './design/problem.ts'
import { addCaseFigures, addOutOfPlaneFigures } from './figures/case-figures.ts'
import { addCollisionFigures } from './figures/collision-figures.ts'
import { doubtsOf } from './figures/doubts.ts'
import { addDriveFigures } from './figures/drive-figures.ts'
import type { Evaluation } from './figures/evaluation.ts'
import { figureSheet, line } from './figures/figure-sheet.ts'
import { findingsOf } from './figures/findings.ts'
import { addMotionFigures } from './figures/motion-figures.ts'
import {
  cannotClose,
  cannotOpen,
  looseOrLocked,
  mobilityWords,
  passedWhenOpen,
  stopsTogether,
} from './figures/motion-problems.ts'
import { addReturnFigures } from './figures/return-figures.ts'
import { surveyTravel } from './figures/survey.ts'
import { travelReport } from './figures/travel-report.ts'
import { actsInPlane } from './forces/case-way.ts'
import { assemble, drawnPosture } from './motion/assemble.ts'
import { mechanismOf } from './motion/mechanism.ts'
import { mobilityOf } from './motion/mobility.ts'
import { makePathBench } from './motion/path.ts'
import { travelPath } from './motion/travel-path.ts'

/**
 * Evaluates a design: motion, forces, figures, findings.
 *
 * Never throws for a design that `readDesign` gave. What cannot be worked out is left out and stands in `problems`, or stands in its
 * figure as a reason; nothing is guessed.
 */
export function evaluate(design: Design): Evaluation {
  const mechanism = mechanismOf(design)
  const sheet = figureSheet(design)
  const assembled = mechanism.columns_count === mechanism.rows_count + 1 ? assemble(mechanism) : undefined
  const mobility = mobilityOf(mechanism, assembled?.posture ?? drawnPosture(design))
  const words = mobilityWords(design, mobility)
  sheet.add('motion.mobility', { value: mobility.degrees, inputs: [line('in words', words, 'words')] })
  const said = (problems: readonly Problem[]): Evaluation => {
    const findings = findingsOf(design.requirements, sheet.figures, new Map())
    return { design, mobility: { degrees: mobility.degrees, words }, figures: sheet.figures, findings, problems }
  }
  if (assembled?.problem) return said([assembled.problem])
  const loose = looseOrLocked(design, mobility)
  if (loose || !assembled) return said(loose ? [loose] : [])
  const path = travelPath(makePathBench(mechanism), assembled.posture)
  if (!path) return said([cannotClose.atDrawn(design)])
  const survey = surveyTravel(path, assembled.posture)
  addMotionFigures(sheet, survey)
  const overlaps = addCollisionFigures(sheet, survey)
  const returns = addReturnFigures(sheet, survey)
  addDriveFigures(sheet, survey)
  const cases = survey.cases.map((one) => addCaseFigures(sheet, survey, one, returns))
  for (const loadCase of design.loadCases) if (!actsInPlane(loadCase)) addOutOfPlaneFigures(sheet, design, loadCase)
  const findings = findingsOf(design.requirements, sheet.figures, doubtsOf(survey, sheet.figures, cases))
  const problems = [...cannotOpen(survey), ...passedWhenOpen(survey), ...cannotClose.onTheWay(survey), ...stopsTogether(survey)]
  const travel = { ...travelReport(survey, returns, cases), overlaps }
  return { design, mobility: { degrees: mobility.degrees, words }, travel, figures: sheet.figures, findings, problems }
}
