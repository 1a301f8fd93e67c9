import type { Evaluation } from '../engine/index.ts'
import { helpingDocument, problemsAsked, questionOf, type ResultDocument, strengthDocument } from '../report/index.ts'
import { answerDesign } from '../server/index.ts'
import { answerText } from './answer-text.ts'
import { writeDrawing } from './drawing-file.ts'
import { type ExitStatus, exitStatus, type Scope, statusOf } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { triedChanges } from './helping-text.ts'
import { refusalText } from './refusal-text.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** Options of verdict, motion and hold, as commander gives them. */
export interface JudgeOptions extends Omit<DesignNamed, 'path'> {
  readonly json?: boolean
  readonly working?: boolean
  readonly drawing?: string
  readonly at?: string
  /** Of strength only: which change helps most. */
  readonly changes?: boolean
}

/** A question put to a design. */
export interface Asked {
  readonly path: string
  readonly scope: Scope
  readonly options: JudgeOptions
}

/**
 * Answers one question about a design, of a file or of the store: text or JSON to the output, problems to the error stream, a drawing to its file.
 *
 * @throws WrongUse when a file cannot be opened or written, or `--at` names no posture
 */
export async function judge({ path, scope, options }: Asked, terminal: Terminal): Promise<ExitStatus> {
  if (options.at !== undefined && options.drawing === undefined) throw new WrongUse('--at goes with --drawing FILE.svg')
  const file = await findDesign({ ...options, path }, terminal)
  const answer = answerDesign(file.bytes, file.name)
  const evaluation = answer.evaluation
  if (evaluation !== undefined && options.drawing !== undefined) {
    await writeDrawing({ file: options.drawing, at: options.at, scope }, evaluation)
  }
  const problems = evaluation === undefined ? answer.problems : problemsAsked(evaluation, scope)
  const helping = evaluation !== undefined && options.changes === true ? triedChanges(file, terminal) : undefined
  if (options.json === true) {
    const further = { ...strengthOf(evaluation, scope), ...(helping && { changes: helpingDocument(helping) }) }
    terminal.write(`${JSON.stringify({ ...scoped(answer.document, scope), problems, ...further }, null, 2)}\n`)
  } else {
    const shown = { scope, working: options.working === true, colour: terminal.colour, ...(helping && { helping }) }
    if (evaluation !== undefined) terminal.write(answerText({ evaluation, ...shown }))
    if (problems.length > 0) terminal.writeError(refusalText(file.shown, problems))
  }
  return evaluation === undefined ? exitStatus.refused : statusOf(evaluation, scope)
}

/** What gives first, of an answer to Strength. */
function strengthOf(evaluation: Evaluation | undefined, scope: Scope): object {
  return evaluation !== undefined && scope === 'strength' ? { strength: strengthDocument(evaluation) } : {}
}

/** The part of the result that belongs to the question. */
function scoped(document: ResultDocument, scope: Scope): ResultDocument {
  if (scope === 'verdict') return document
  const figures = Object.entries(document.figures).filter(([id]) => questionOf(id) === scope)
  const findings = document.findings.filter((finding) => questionOf(finding.figure) === scope)
  return { ...document, figures: Object.fromEntries(figures), findings }
}
