import pc from 'picocolors'
import type { DesignSpread } from '../engine/index.ts'
import {
  adviceRows,
  caution,
  closedLines,
  failureLines,
  frictionLines,
  joined,
  marks,
  offerLines,
  priceLines,
  type SpreadFigureRow,
  spreadFigureRows,
  spreadSentence,
  surfaceLines,
  wearersLine,
  yieldRows,
} from '../report/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'

type Paint = ReturnType<typeof pc.createColors>

/** Room for a title, and for words in a table. */
const TITLE_columns = 42
const WORDS_columns = 30

/** The spread as a person reads it in a terminal: sentence, yields, figures, what drives them, what to change. Ends with a line break. */
export function spreadText(told: DesignSpread, { colour }: { readonly colour: boolean }): string {
  const paint = pc.createColors(colour)
  const { design, asked, spread } = told
  const blocks = [
    paint.dim(design.title),
    paint.bold(wrapped(spreadSentence(told))),
    block('Share of sets that meet it', yieldLines(told, paint), paint),
    block('Sets without an answer of their own', failureLines(told), paint),
    block('The same by surfaces', surfaceLines(told), paint),
    block('Figures over the sets', figureLines(spreadFigureRows(told)), paint),
    block('Where it comes from', driverLines(spreadFigureRows(told)), paint),
    block('What to change', adviceLines(told), paint),
    block('Closed, and nothing else', closedLines(told), paint),
    block('What the shop offers', offerLines(told), paint),
    block('What tolerances cost', priceLines(told), paint),
    block('Friction that it bears, all else as drawn', frictionLines(told), paint),
    block('Held as drawn, because no tolerance is stated', told.untolerated, paint),
    wrapped(
      [wearersLine(told), `Seed ${asked.seed}, ${spread.samples.to} samples; the same seed gives the same numbers.`]
        .join(' ')
        .trim(),
    ),
    wrapped(caution),
  ]
  return `${blocks.filter((one) => one !== '').join('\n\n')}\n`
}

function block(heading: string, lines: readonly string[], paint: Paint): string {
  return lines.length === 0
    ? ''
    : [paint.underline(heading), ...lines.map((line) => (line.startsWith(' ') ? line : wrapped(line, '  ')))].join('\n')
}

function left(text: string, most_columns?: number): Cell {
  return { text, side: 'left', ...(most_columns !== undefined && { most_columns }) }
}

function right(text: string): Cell {
  return { text, side: 'right' }
}

function yieldLines(told: DesignSpread, paint: Paint): readonly string[] {
  const colours = { met: paint.green, short: paint.red, undecided: paint.yellow } as const
  return aligned(
    yieldRows(told).map(({ verdict, title, met, interval, undecided, saved }) => [
      { ...left(`${marks[verdict].character} ${marks[verdict].word}`), paint: colours[verdict] },
      left(title, TITLE_columns),
      right(met),
      left(`(${interval})`),
      left(undecided === undefined ? '' : `undecided ${undecided}`),
      left(saved === undefined ? '' : `chance would need ${saved} the samples`),
    ]),
  )
}

function figureLines(rows: readonly SpreadFigureRow[]): readonly string[] {
  if (rows.length === 0) return []
  const heading = [
    left(''),
    left('median'),
    left('all but 1 in 740 a side'),
    left('straight, ± 3 deviations'),
    left('worst case'),
  ]
  return aligned([
    heading,
    ...rows.map(({ title, counted, straight, worst }) => [
      left(title, TITLE_columns),
      left(counted ? joined(counted[1]) : '–'),
      left(counted ? between([counted[0], counted[2]]) : '–'),
      left(between(straight), WORDS_columns),
      left(between(worst), WORDS_columns),
    ]),
  ])
}

/** Both ends, the unit once where it is that of both. */
function between(ends: SpreadFigureRow['worst']): string {
  if (typeof ends === 'string') return ends
  const [least, most] = ends
  return `${least.unit === most.unit ? least.number : joined(least)} to ${joined(most)}`
}

function driverLines(rows: readonly SpreadFigureRow[]): readonly string[] {
  return rows.filter(({ drivers }) => drivers.length > 0).map(({ title, drivers }) => `${title}: ${drivers.join('; ')}`)
}

function adviceLines(told: DesignSpread): readonly string[] {
  const rows = adviceRows(told).map(({ change, gain, interval }) => [
    left(change, 2 * TITLE_columns),
    right(gain),
    left(`(${interval})`),
  ])
  return aligned(rows)
}
