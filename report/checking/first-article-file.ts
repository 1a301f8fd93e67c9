/** The first-article sheet as a page by itself that prints on A4 or Letter and needs no other file. */

import { drawingStyle } from '../drawing/drawing-style.ts'
import { element, type Shape, svgText } from '../drawing/svg.ts'
import { caution } from '../sentences/caution.ts'
import { marks } from '../tables/marks.ts'
import { drawBalloons } from './draw-balloons.ts'
import { type FirstArticleAsked, firstArticle } from './first-article.ts'

const STYLE = `
body { font: 10pt/1.4 'Source Serif 4', Georgia, serif; color: #1d2733; background: #fff; margin: 14mm; }
h1 { font-size: 16pt; margin: 0; } h2 { font-size: 12pt; margin: 6mm 0 2mm; } p { margin: 2mm 0; max-width: 170mm; }
table { border-collapse: collapse; width: 100%; font: 8.5pt/1.3 'Source Sans 3', Arial, sans-serif; font-variant-numeric: tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: 1mm 2mm 1mm 0; border-bottom: 0.2mm solid #ded8c9; font-weight: 400; }
thead th { color: #56606b; } thead { display: table-header-group; } tr, svg { break-inside: avoid; }
.short { color: #9c2f1b; font-weight: 600; } .drawings { display: flex; flex-wrap: wrap; gap: 4mm; }
.drawings svg { max-width: 84mm; height: auto; } .sign { display: flex; gap: 10mm; margin-top: 10mm; }
.sign p { flex: 1; border-top: 0.2mm solid #1d2733; padding-top: 1mm; margin-top: 10mm; } .soft { color: #56606b; }
@page { margin: 12mm; } @media print { body { margin: 0; } }
`

const HEADS = ['No.', 'Characteristic', 'Piece', 'Drawn', 'Allowed', 'Found', 'Against the drawing', 'Gauge', 'What feels it']

/** @returns the text of an HTML file */
export function firstArticleFile(asked: FirstArticleAsked): string {
  const sheet = firstArticle(asked)
  const drawings = asked.design.parts.flatMap((part) => drawBalloons(part, asked.plan) ?? [])
  const body = element(
    'body',
    {},
    words('p', sheet.title, 'soft'),
    words('h1', `First article, set ${sheet.serial}`),
    sheet.sentences.map((sentence) => words('p', sentence)),
    words('h2', 'Every characteristic, what matters most first'),
    table(HEADS, sheet.rows.map(cellsOf)),
    sheet.decisions.flatMap(decisionShapes),
    words('h2', 'Open'),
    listed(sheet.open, 'Nothing is open.'),
    asked.papers === undefined ? [] : [words('h2', 'Decided and signed off'), listed(asked.papers, 'Nothing is signed off yet.')],
    words('h2', 'Where the numbers are'),
    element('div', { class: 'drawings' }, drawings),
    signatures(),
    words('p', caution, 'soft'),
  )
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    words('title', `First article ${sheet.serial}`),
    words('style', STYLE + drawingStyle),
  )
  return `<!doctype html>\n${svgText(element('html', { lang: 'en' }, head, body))}\n`
}

function words(name: string, text: string, className?: string): Shape {
  return { ...element(name, { class: className }), words: text }
}

/** Lines as a list, or what stands where there is none. */
function listed(lines: readonly string[], none: string): Shape {
  if (lines.length === 0) return words('p', none)
  const items = lines.map((line) => words('li', line))
  return element('ul', {}, items)
}

type Cell = string | { readonly text: string; readonly className: string }

function table(heads: readonly string[], rows: readonly (readonly Cell[])[]): Shape {
  const cell = (one: Cell): Shape => (typeof one === 'string' ? words('td', one) : words('td', one.text, one.className))
  const head = element(
    'thead',
    {},
    element(
      'tr',
      {},
      heads.map((text) => words('th', text)),
    ),
  )
  return element(
    'table',
    {},
    head,
    element(
      'tbody',
      {},
      rows.map((row) => element('tr', {}, row.map(cell))),
    ),
  )
}

function cellsOf(row: ReturnType<typeof firstArticle>['rows'][number]): readonly Cell[] {
  const { number, words: what, piece, drawn, allowed, found, answer, word, gauge, matters } = row
  const judged = { text: `${marks[answer].character} ${word}`, className: answer }
  return [String(number), what, piece, drawn, allowed, found, judged, gauge, matters]
}

function decisionShapes({ of, outcomes, taken }: ReturnType<typeof firstArticle>['decisions'][number]): readonly Shape[] {
  const rows = outcomes.map(({ disposition, answer, words: told }): readonly Cell[] => [
    disposition === taken ? '☒' : '☐',
    disposition,
    { text: `${marks[answer].character} ${marks[answer].word}`, className: answer },
    told,
  ])
  return [
    words('h2', `${taken === undefined ? 'To decide' : 'Decided'}: ${of}`),
    table(['', 'Decision', 'The finger then', 'What it does'], rows),
  ]
}

function signatures(): Shape {
  const lines = ['Measured by, date', 'Decided by, date']
  return element(
    'div',
    { class: 'sign' },
    lines.map((line) => words('p', line)),
  )
}
