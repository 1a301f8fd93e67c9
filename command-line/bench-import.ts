import type { Problem } from '../engine/index.ts'
import { entryWho } from '../records/index.ts'
import { farOutsideRows, type ReadAgainst, readAs, readBenchTable } from '../report/index.ts'
import { keepReadings } from '../server/index.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { fitting } from './fitting.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import { type ColumnsTyped, columnsSaid, tellColumns } from './table-columns.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { lookInStore, saveInStore } from './use-store.ts'

/** A table of readings to be brought in, as typed. */
export interface ReadingsAsked extends ColumnsTyped {
  readonly name: string
  readonly lot: string
  readonly path: string
  readonly who: string
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
  const as = readAs(rows, { named: columnsSaid(asked.column), decimal: asked.decimal })
  const table = { rows, ...as }
  const read = readBenchTable(table, await readAgainst(asked, terminal))
  tellColumns(path, { as, passedOver: read.passedOver }, terminal)
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

function refused(path: string, problems: readonly Problem[], { writeError }: Terminal): ExitStatus {
  writeError(refusalText(path, problems))
  return exitStatus.refused
}
