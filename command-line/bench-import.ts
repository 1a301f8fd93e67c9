import type { Problem } from '../engine/index.ts'
import { entryWho } from '../records/index.ts'
import {
  benchColumns,
  columnWords,
  farOutsideRows,
  guessColumns,
  guessDecimal,
  type NamedColumns,
  type ReadAgainst,
  readBenchTable,
  type TableRows,
} from '../report/index.ts'
import { keepReadings } from '../server/index.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { fitting } from './fitting.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { lookInStore, saveInStore } from './use-store.ts'

/** A table of readings to be brought in, as typed. */
export interface ReadingsAsked {
  readonly name: string
  readonly lot: string
  readonly path: string
  readonly who: string
  readonly column?: readonly string[]
  readonly decimal?: 'point' | 'comma'
  readonly asRead?: boolean
  readonly look?: boolean
  readonly store?: string
}

/**
 * Brings a table of readings into the bench book, all of it or nothing, by the same road as the page.
 *
 * @throws WrongUse when the file or the store cannot be used, or an option does not fit
 */
export async function importReadings(asked: ReadingsAsked, terminal: Terminal): Promise<ExitStatus> {
  const { name, lot, path, store } = asked
  const who = fitting(entryWho, ['--who', asked.who])
  const rows = await readTable(path)
  const named = namedColumns(rows, asked.column ?? [])
  const table = { rows, named, decimal: asked.decimal ?? guessDecimal(rows, named) }
  const read = readBenchTable(table, await readAgainst(asked, terminal))
  tellColumns(path, { named, decimal: table.decimal, passedOver: read.passedOver }, terminal)
  if (read.problems.length > 0) return refused(path, read.problems, terminal)
  const far = asked.asRead === true ? [] : farOutsideRows(read.rows)
  for (const line of far) terminal.writeError(`${path}: ${line}\n`)
  const count = read.rows.length === 1 ? 'One reading' : `${read.rows.length} readings`
  if (asked.look === true) {
    terminal.write(`${count} of ${path} can be kept; nothing was kept.\n`)
    return exitStatus.met
  }
  if (far.length > 0) throw new WrongUse('nothing was kept: were these read so? Give --as-read if they were')
  const file = path.replace(/^.*[\\/]/, '')
  const sent = { design: name, lot, who, table, file, asRead: true }
  const answer = await saveInStore({ store, terminal }, (opened) => keepReadings(opened, sent))
  if (answer.problems !== undefined) return refused(path, answer.problems, terminal)
  terminal.write(`${count} of ${path} ${read.rows.length === 1 ? 'is' : 'are'} kept in lot ${lot}.\n`)
  return exitStatus.met
}

/** The frozen plan of the lot, and the gauges. @throws WrongUse when there is no such lot */
async function readAgainst({ name, lot, store }: ReadingsAsked, terminal: Terminal): Promise<ReadAgainst> {
  return lookInStore({ store, terminal }, (opened) => {
    refuseUnknown(opened, name)
    const begun = opened.bench.lots(name).find((one) => one.lot === lot)
    if (begun === undefined) throw new WrongUse(`${lot}: there is no such lot; fingerwright lots ${name} lists them`)
    return { plan: opened.bench.plan(name, begun.revision) ?? [], gauges: opened.bench.gauges() }
  })
}

/** Guessed from the heading, and what was said of them. @throws WrongUse for what is no column */
function namedColumns(rows: TableRows, said: readonly string[]): NamedColumns {
  const pairs = said.map((typed) => {
    const [what = '', ...heading] = typed.split('=')
    const column = benchColumns.find((one) => one === what.trim())
    if (column === undefined || heading.length === 0)
      throw new WrongUse(
        `--column "${typed}": needs what the column is and its heading, such as found=Value; what is one of ${benchColumns.join(', ')}`,
      )
    return [column, heading.join('=')] as const
  })
  const taken = new Set(pairs.map(([, heading]) => heading))
  const guessed = Object.entries(guessColumns(rows[0] ?? [])).filter(([, heading]) => !taken.has(heading))
  return Object.fromEntries([...guessed, ...pairs])
}

interface Told {
  readonly named: NamedColumns
  readonly decimal: 'point' | 'comma'
  readonly passedOver: readonly string[]
}

/** What was taken for what, where it was guessed or said; nothing where the headings are ours. */
function tellColumns(path: string, { named, decimal, passedOver }: Told, { writeError }: Terminal): void {
  for (const column of benchColumns) {
    const heading = named[column]
    if (heading !== undefined && heading.toLowerCase() !== column)
      writeError(`${path}: the column ${heading} is taken for ${column} (${columnWords[column]})\n`)
  }
  for (const heading of passedOver) writeError(`${path}: nothing is taken from the column ${heading}\n`)
  if (decimal === 'comma') writeError(`${path}: decimals are commas\n`)
}

function refused(path: string, problems: readonly Problem[], { writeError }: Terminal): ExitStatus {
  writeError(refusalText(path, problems))
  return exitStatus.refused
}
