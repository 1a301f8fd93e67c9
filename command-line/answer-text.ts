import pc from 'picocolors'
import { type Evaluation, type HelpingChanges, type Working, workingsOf } from '../engine/index.ts'
import {
  caution,
  type FigureRow,
  type FindingRow,
  figureRows,
  findingRows,
  joined,
  marks,
  questionNamed,
  questions,
  type ValueText,
  verdictSentence,
} from '../report/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import type { Scope } from './exit-status.ts'
import { helpingBlocks } from './helping-text.ts'
import type { Paint } from './paint.ts'
import { strengthBlocks } from './strength-text.ts'
import { workingLines } from './working-text.ts'

/** What is printed: an evaluation under one question, with or without the working of its figures. */
export interface AnswerShown {
  readonly evaluation: Evaluation
  readonly scope: Scope
  readonly working: boolean
  readonly colour: boolean
  /** Which change helps most, where that was asked. */
  readonly helping?: HelpingChanges
}

/** Room for a title and for a reason, so that a row stays within a line of readable length. */
const TITLE_columns = 42
const REASON_columns = 40

/**
 * The answer as a person reads it in a terminal: title, sentence, requirements, figures, caution. The verdict leaves the figures
 * out unless their working is asked for. Ends with a line break.
 */
export function answerText({ evaluation, scope, working, colour, helping }: AnswerShown): string {
  const paint = pc.createColors(colour)
  const asked = scope === 'verdict' ? questions : [questionNamed(scope)]
  const rows = asked.flatMap(({ name }) => figureRows(evaluation, name))
  const sentence = scope === 'verdict' ? verdictSentence(evaluation) : questionNamed(scope).sentence(evaluation)
  const workings = working ? workingsOf(evaluation.design) : undefined
  const blocks = [
    paint.dim(evaluation.design.title),
    paint.bold(wrapped(sentence)),
    requirementsBlock(findingRows(evaluation, scope === 'verdict' ? undefined : scope), paint),
    ...(scope === 'strength' ? strengthBlocks(evaluation, paint) : []),
    ...(helping ? helpingBlocks(helping, paint) : []),
    ...(scope === 'verdict' && !working ? [] : figureBlocks({ rows, workings }, paint)),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

function requirementsBlock(rows: readonly FindingRow[], paint: Paint): string {
  if (rows.length === 0) return wrapped('The design states no requirements here, so nothing was judged.')
  const colours = { met: paint.green, short: paint.red, undecided: paint.yellow } as const
  const lines = aligned(
    rows.map((row) => [
      { text: `${marks[row.verdict].character} ${marks[row.verdict].word}`, side: 'left', paint: colours[row.verdict] },
      titleCell(row.title),
      ...valueCells(row.found),
      { text: row.needed, side: 'left' },
      { text: row.margin === undefined ? '' : `margin ${joined(row.margin)}`, side: 'left' },
    ]),
  )
  const explained = lines.flatMap((line, index) => {
    const why = rows[index].why
    return why === undefined ? [line] : [line, paint.dim(wrapped(why, '      '))]
  })
  return [paint.underline('Requirements'), ...explained].join('\n')
}

interface FiguresShown {
  readonly rows: readonly FigureRow[]
  /** Printed below their figures, where somebody asked for them. */
  readonly workings: ReadonlyMap<string, Working> | undefined
}

/** One block a heading; all of them share their columns. */
function figureBlocks({ rows, workings }: FiguresShown, paint: Paint): readonly string[] {
  const lines = aligned(
    rows.map((row) => [
      titleCell(row.title),
      ...valueCells(row.value),
      { text: row.why ?? '', side: 'left', most_columns: REASON_columns },
    ]),
  )
  const groups = [...new Set(rows.map((row) => row.group))]
  return groups.map((group) => {
    const own = rows.flatMap((row, index) => {
      if (row.group !== group) return []
      const working = workings?.get(row.id)
      return working === undefined ? [lines[index]] : [lines[index], ...workingLines(working), '']
    })
    return [paint.underline(group), ...own].join('\n').trimEnd()
  })
}

function titleCell(text: string): Cell {
  return { text, side: 'left', most_columns: TITLE_columns }
}

/** Number to the right, unit to the left of one line; words go left; a dash where there is no value. */
function valueCells(value: ValueText | undefined): readonly [Cell, Cell] {
  return [
    { text: value?.number ?? '–', side: 'right' },
    { text: value?.unit ?? '', side: 'left' },
  ]
}
