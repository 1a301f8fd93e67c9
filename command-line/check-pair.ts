import type { Command } from 'commander'
import { inspectionPlan, type MeasuredPiece, type PairedLot, type Problem, pairLot, readVariation } from '../engine/index.ts'
import { caution, marks, pairRows, pairSentence, type ReadSet, readReadings } from '../report/index.ts'
import { documentText } from '../server/index.ts'
import { aligned, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import type { Terminal } from './terminal.ts'

interface PairOptions extends Omit<DesignNamed, 'path'> {
  readonly readings: string
  readonly json?: boolean
}

/** Adds the pairing of measured pieces to sets. */
export function addPair(program: Command, { terminal, end }: Ends): void {
  designCommand(program, { name: 'pair', asks: 'which pieces of a lot go together, so that most fingers work?' })
    .requiredOption('--readings <FILE.csv>', 'readings as for check; a serial number is that of one part or pin')
    .option('--json', 'print one JSON document instead of text')
    .action(async (path: string, options: PairOptions) => end(await pair({ path, ...options }, terminal)))
}

async function pair({ readings, json, ...named }: PairOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readVariation(text.value, file.name) : text
  if (read.problems !== undefined) return refused(file.shown, read.problems, terminal)
  const { sets, ...faults } = readReadings(await readTable(readings), inspectionPlan(read.value))
  const problems = sets ? sets.flatMap(mixedPiece) : 'problems' in faults ? faults.problems : []
  if (!sets || problems.length > 0) return refused(readings, problems, terminal)
  const lot = pairLot(
    read.value,
    sets.map(({ serial, readings: own }): MeasuredPiece => ({ serial, piece: own[0].characteristic.piece, readings: own })),
  )
  terminal.write(json === true ? `${JSON.stringify(lot, null, 2)}\n` : pairText(lot))
  return lot.working_count === lot.sets.length ? exitStatus.met : exitStatus.short
}

function refused(shown: string, problems: readonly Problem[], terminal: Terminal): ExitStatus {
  terminal.writeError(refusalText(shown, problems))
  return exitStatus.refused
}

function mixedPiece({ serial, readings }: ReadSet): readonly Problem[] {
  const pieces = [...new Set(readings.map(({ characteristic }) => characteristic.piece.title))]
  if (pieces.length === 1) return []
  return [
    { code: 'wrong value', place: `serial ${serial}`, found: pieces.join(', '), needed: 'a serial number of one part or pin' },
  ]
}

function pairText(lot: PairedLot): string {
  const rows = pairRows(lot).map(({ number, answer, pieces }) => [
    { text: String(number), side: 'right' as const },
    { text: `${marks[answer].character} ${answer === 'met' ? 'met' : 'not met'}`, side: 'left' as const },
    { text: pieces, side: 'left' as const },
  ])
  return `${[wrapped(pairSentence(lot)), aligned(rows).join('\n'), wrapped(caution)].join('\n\n')}\n`
}
