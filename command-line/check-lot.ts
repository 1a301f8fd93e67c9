import type { Command } from 'commander'
import { gaugeStudy } from '../engine/index.ts'
import { type LotRow, lotRows, readStudy, studiedLots, studyRows, studySentence } from '../report/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import type { DesignNamed } from './find-design.ts'
import { measuredSets, type SetsTyped, withSets } from './measured-sets.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/** Adds what a lot says of its process, and what a gauge study says of the gauge. */
export function addLotStudies(program: Command, { terminal, end }: Ends): void {
  const lots = designCommand(program, { name: 'lot', asks: 'what do the readings of a lot say of the process that made it?' })
  withSets(lots, 'readings as for check, sets in the order of their making')
    .option('--json', 'print one JSON document instead of text')
    .action(async (path: string, options: LotOptions) => end(await lot({ path, ...options }, terminal)))
  program
    .command('gauge')
    .description('how much of what a gauge says is the gauge? A crossed study: part, appraiser, found')
    .argument('<FILE.csv>', 'a table with the columns part, appraiser and found; every part read equally often by everybody')
    .option('--tolerance <MM>', 'width of the tolerance that the gauge is to judge, in mm')
    .option('--json', 'print one JSON document instead of text')
    .action(async (path: string, options: GaugeOptions) => end(await gauge(path, options, terminal)))
}

interface LotOptions extends Omit<DesignNamed, 'path'>, SetsTyped {
  readonly json?: boolean
}

async function lot({ json, ...named }: LotOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const measured = await measuredSets(named, terminal)
  if (measured === undefined) return exitStatus.refused
  const lots = studiedLots(measured.sets)
  terminal.write(json === true ? `${JSON.stringify(lots, null, 2)}\n` : `${lotLines(lotRows(lots)).join('\n')}\n`)
  return exitStatus.met
}

function lotLines(rows: readonly LotRow[]): readonly string[] {
  if (rows.length === 0) return [wrapped('No size was read on two sets or more: a process cannot be told from one piece.')]
  const heads = [
    'characteristic',
    'read',
    'mean',
    'deviation',
    'Cp',
    'Cpk',
    'Pp',
    'Ppk',
    '95 % of pieces, 95 % sure',
    'to be known',
  ]
  const cells = rows.map(({ number, words, count, mean, deviation, cp, cpk, pp, ppk, interval, told }) => [
    right(String(number)),
    ...[words, String(count), mean, deviation, cp, cpk, pp, ppk, interval, told].map(left),
  ])
  return aligned([[right('no.'), ...heads.map(left)], ...cells])
}

interface GaugeOptions {
  readonly tolerance?: string
  readonly json?: boolean
}

async function gauge(path: string, { tolerance, json }: GaugeOptions, terminal: Terminal): Promise<ExitStatus> {
  const width_mm = tolerance === undefined ? undefined : Number(tolerance)
  if (width_mm !== undefined && !(width_mm > 0 && Number.isFinite(width_mm)))
    throw new WrongUse(`--tolerance takes a width in mm, such as 0.02, not ${tolerance}`)
  const read = readStudy(await readTable(path))
  if (read.problems !== undefined) {
    terminal.writeError(refusalText(path, read.problems))
    return exitStatus.refused
  }
  const found = gaugeStudy(read.value.study)
  const rows = studyRows(found).map(({ from, deviation, share }) => [left(from), right(`${deviation} mm`), right(share)])
  const shown = [wrapped(studySentence(read.value, found, width_mm)), '', ...aligned(rows)].join('\n')
  terminal.write(json === true ? `${JSON.stringify(found, null, 2)}\n` : `${shown}\n`)
  return exitStatus.met
}
