import {
  countsMoved,
  type DocumentDifference,
  documentDifferences,
  evaluate,
  readDesign,
  type TypedValue,
  whatMoved,
} from '../engine/index.ts'
import { countsSentence, movedSentence, moveWords } from '../report/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findStored } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import type { Terminal } from './terminal.ts'

/** Two revisions of one design, as typed: numbers, or `draft`. */
export interface ToCompare {
  readonly name: string
  readonly earlier: string
  readonly later: string
  readonly store?: string
}

/** Widest that a value may be in the table; longer ones go on below, and of a long text the beginning is shown. */
const VALUE_columns = 26
const PLACE_columns = 40
const VALUE_characters = 80

/**
 * Prints what differs between two revisions: the values of the document, the findings and the figures. Both are judged by the engine of
 * today, so that a difference is one of the design.
 *
 * @throws WrongUse for a name or revision that is not in the store
 */
export async function compareRevisions({ name, earlier, later, store }: ToCompare, terminal: Terminal): Promise<ExitStatus> {
  const one = await readRevision({ path: name, revision: earlier, store }, terminal)
  const other = await readRevision({ path: name, revision: later, store }, terminal)
  if (one === undefined || other === undefined) return exitStatus.refused
  const moved = whatMoved(evaluate(one.design), evaluate(other.design))
  const values = documentDifferences(one.text, other.text).map(valueRow)
  const figures = [...moved.findings.map(({ figure }) => figure), ...moved.figures].map((figure) => `  ${moveWords(figure)}`)
  const blocks = [
    `${one.shown} → ${other.shown}`,
    wrapped(movedSentence(moved)),
    values.length === 0 ? 'No value differs.' : ['Values', ...aligned(values)].join('\n'),
    wrapped(countsSentence(countsMoved(one.design, other.design))),
    ...(figures.length === 0 ? [] : [['Figures', ...figures].join('\n')]),
  ]
  terminal.write(`${blocks.join('\n\n')}\n`)
  return exitStatus.met
}

/** Undefined after every problem of a refused document was listed. */
async function readRevision(named: DesignNamed, terminal: Terminal) {
  const { bytes, shown } = await findStored(named, terminal)
  const text = Buffer.from(bytes).toString('utf8')
  const design = readDesign(text, named.path)
  if (design.problems === undefined) return { text, shown, design: design.value }
  terminal.writeError(refusalText(shown, design.problems))
  return undefined
}

function valueRow({ where, before, after }: DocumentDifference): readonly Cell[] {
  const cell = (text: string): Cell => ({ text, side: 'left', most_columns: VALUE_columns })
  const place: Cell = { text: where, side: 'left', most_columns: PLACE_columns }
  return [place, cell(valueText(before)), { text: '→', side: 'left' }, cell(valueText(after))]
}

/** A whole thing is only said to be there: its values would fill the screen. */
function valueText(value: TypedValue | undefined): string {
  if (value === undefined) return 'nothing'
  if (/^[[{]/.test(value.typed)) return 'there'
  return value.typed.length > VALUE_characters ? `${value.typed.slice(0, VALUE_characters)} …` : value.typed
}
