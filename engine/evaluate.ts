/** The whole way from a design to what is said of it, on one screen. */
import type { Design } from './design/design.ts'
import type { Problem } from './design/problem.ts'
import { addCaseFigures, addOutOfPlaneFigures, type CaseFound } from './figures/case-figures.ts'
import { addCollisionFigures } from './figures/collision-figures.ts'
import { doubtsOf } from './figures/doubts.ts'
import { addDriveFigures } from './figures/drive-figures.ts'
import type { Evaluation, Finding, Overlapping, StrengthList, Working } from './figures/evaluation.ts'
import { type FigureSheet, figureSheet, line } from './figures/figure-sheet.ts'
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
import { keepWay } from './figures/ready-finger.ts'
import { addReturnFigures } from './figures/return-figures.ts'
import type { ReturnFound } from './figures/return-found.ts'
import { addStrengthFigures } from './figures/strength-figures.ts'
import { type Survey, surveyTravel } from './figures/survey.ts'
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
  const sheet = figureSheet(design)
  const { mobility, findings, problems: fixed, moved } = workOut(design, sheet)
  const { figures } = sheet
  if (!moved) return { design, mobility, figures, findings, problems: fixed }
  const { survey, returns, cases, overlaps, strength } = moved
  const problems = [...cannotOpen(survey), ...passedWhenOpen(survey), ...cannotClose.onTheWay(survey), ...stopsTogether(survey)]
  const travel = { ...travelReport(survey, returns, cases), overlaps }
  return { design, mobility, travel, ...(strength && { strength }), figures, findings, problems }
}

/** Workings are read one after the other of the same design: a memory, not a state. */
const knownWorkings = new WeakMap<Design, ReadonlyMap<string, Working>>()

/**
 * How the figures of a design come about, by their names: one for each figure that `evaluate` gives. The design is worked out once more for
 * them, on the same way: an evaluation is made sixty times a second while a pin is dragged, a working is read now and then.
 */
export function workingsOf(design: Design): ReadonlyMap<string, Working> {
  const known = knownWorkings.get(design)
  if (known) return known
  const sheet = figureSheet(design)
  workOut(design, sheet)
  const workings = sheet.workings()
  knownWorkings.set(design, workings)
  return workings
}

/** What a design comes to. */
export interface WorkedOut {
  readonly mobility: Evaluation['mobility']
  readonly findings: readonly Finding[]
  /** Why the finger cannot be moved; empty when it can. */
  readonly problems: readonly Problem[]
  /** Absent when it cannot be moved. */
  readonly moved?: {
    readonly survey: Survey
    readonly returns: ReturnFound
    readonly cases: readonly CaseFound[]
    readonly overlaps: readonly Overlapping[]
    readonly strength?: StrengthList
  }
}

/** Works a design out as far as a sheet asks for figures, which are added to it. Findings are those of the figures that stand there. */
export function workOut(design: Design, sheet: FigureSheet): WorkedOut {
  const mechanism = mechanismOf(design)
  const assembled = mechanism.columns_count === mechanism.rows_count + 1 ? assemble(mechanism) : undefined
  const freedom = mobilityOf(mechanism, assembled?.posture ?? drawnPosture(design))
  const words = mobilityWords(design, freedom)
  const mobility = { degrees: freedom.degrees, words }
  sheet.add('motion.mobility', { value: freedom.degrees, inputs: [line('in words', words, 'words')] })
  const stuck = (...problems: readonly Problem[]): WorkedOut => {
    return { mobility, problems, findings: findingsOf(design.requirements, sheet.figures, new Map()) }
  }
  if (assembled?.problem) return stuck(assembled.problem)
  const loose = looseOrLocked(design, freedom)
  if (loose || !assembled) return loose ? stuck(loose) : stuck()
  const path = travelPath(makePathBench(mechanism), assembled.posture)
  if (!path) return stuck(cannotClose.atDrawn(design))
  const survey = surveyTravel(path, assembled.posture)
  keepWay(design, survey)
  addMotionFigures(sheet, survey)
  const overlaps = addCollisionFigures(sheet, survey)
  const returns = addReturnFigures(sheet, survey)
  addDriveFigures(sheet, survey)
  const asksStrength = sheet.asksUnder('strength.')
  const asked = survey.cases.filter(({ loadCase }) => asksStrength || sheet.asksUnder(`loadCase.${loadCase.id}.`))
  const cases = asked.map((one) => addCaseFigures(sheet, survey, one, returns))
  for (const loadCase of design.loadCases) if (!actsInPlane(loadCase)) addOutOfPlaneFigures(sheet, design, loadCase)
  const strength = asksStrength ? addStrengthFigures(sheet, survey, cases) : undefined
  const findings = findingsOf(design.requirements, sheet.figures, doubtsOf(survey, sheet.figures, cases))
  return { mobility, findings, problems: [], moved: { survey, returns, cases, overlaps, ...(strength && { strength }) } }
}
