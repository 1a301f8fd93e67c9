import pc from 'picocolors'
import { againstFriction, type DesignSpread, type Working } from '../engine/index.ts'
import {
  adviceNotes,
  adviceRows,
  againstFrictionLines,
  caution,
  closedLines,
  failureLines,
  frictionLines,
  heldLines,
  joined,
  marks,
  type OpenedLine,
  offerLines,
  priceLines,
  rulerLines,
  type SpreadFigureRow,
  spreadFigureRows,
  spreadSentence,
  surfaceLines,
  unreachedLines,
  wearerLines,
  yieldRows,
} from '../report/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { workingLines } from './working-text.ts'

type Paint = ReturnType<typeof pc.createColors>

/** Room for a title, and for words in a table. */
const TITLE_columns = 42
const WORDS_columns = 30

/** How it is shown: `working` prints below each number how it comes about. */
export interface SpreadShown {
  readonly colour: boolean
  readonly working: boolean
}

/** The spread as a person reads it in a terminal: sentence, yields, figures, what drives them, what to change. Ends with a line break. */
export function spreadText(told: DesignSpread, { colour, working }: SpreadShown): string {
  const paint = pc.createColors(colour)
  const { design, asked, spread } = told
  const opened = (lines: readonly OpenedLine[]): readonly string[] =>
    lines.flatMap(({ words, workings }) => [words, ...(working ? openedLines(workings()) : [])])
  const below = (lines: readonly string[], rows: readonly Pick<OpenedLine, 'workings'>[]): readonly string[] =>
    working
      ? lines.flatMap((line, index) => [line, ...openedLines(rows[index - lines.length + rows.length]?.workings() ?? [])])
      : lines
  const [yields, figures, advice] = [yieldRows(told), spreadFigureRows(told), adviceRows(told)]
  const blocks = [
    paint.dim(design.title),
    paint.bold(wrapped(spreadSentence(told))),
    ...unreachedLines(told).map(({ words }) => wrapped(words)),
    block('Share of sets that meet it', below(yieldLines(yields, paint), yields), paint),
    block('Sets without an answer of their own', opened(failureLines(told)), paint),
    block('The same by surfaces', opened(surfaceLines(told)), paint),
    block('Between jam and slip', opened([...rulerLines(told), ...againstFrictionLines(againstFriction(told))]), paint),
    block('Figures over the sets', below(figureLines(figures), figures), paint),
    block('Where it comes from', driverLines(figures), paint),
    block('What to change', [...below(adviceLines(advice), advice), ...opened(adviceNotes(told))], paint),
    block('Closed, and nothing else', opened(closedLines(told)), paint),
    block('What the shop offers', opened(offerLines(told)), paint),
    block('What tolerances cost', opened(priceLines(told)), paint),
    block('Friction that it bears, all else as drawn', opened(frictionLines(told)), paint),
    block('Held as drawn, because no tolerance is stated', opened(heldLines(told)), paint),
    block('Of the wearers', opened(wearerLines(told)), paint),
    wrapped(`Seed ${asked.seed}, ${spread.samples.to} samples; the same seed gives the same numbers.`),
    wrapped(caution),
  ]
  return `${blocks.filter((one) => one !== '').join('\n\n')}\n`
}

function block(heading: string, lines: readonly string[], paint: Paint): string {
  return lines.length === 0
    ? ''
    : [paint.underline(heading), ...lines.map((line) => (line === '' || line.startsWith(' ') ? line : wrapped(line, '  ')))].join(
        '\n',
      )
}

/** Indented, so that they are not wrapped once more. */
function openedLines(workings: readonly Working[]): readonly string[] {
  return workings.flatMap((one) => ['', ...workingLines(one), ''])
}

function left(text: string, most_columns?: number): Cell {
  return { text, side: 'left', ...(most_columns !== undefined && { most_columns }) }
}

function right(text: string): Cell {
  return { text, side: 'right' }
}

function yieldLines(rows: ReturnType<typeof yieldRows>, paint: Paint): readonly string[] {
  const colours = { met: paint.green, short: paint.red, undecided: paint.yellow } as const
  return aligned(
    rows.map(({ verdict, title, met, interval, undecided, saved }) => [
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
  const heading = [left(''), left('median'), left('all but 1 in 740 a side'), left('root-sum-square, ± 3 σ'), left('worst case')]
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

function adviceLines(rows: ReturnType<typeof adviceRows>): readonly string[] {
  const cells = rows.map(({ change, gain, interval }) => [left(change, 2 * TITLE_columns), right(gain), left(`(${interval})`)])
  return aligned(cells)
}
