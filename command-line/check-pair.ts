import type { Command } from 'commander'
import { type PairedLot, pairLot } from '../engine/index.ts'
import { caution, marks, measuredPieces, pairingSize, pairRows, pairSentence } from '../report/index.ts'
import { aligned, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import type { DesignNamed } from './find-design.ts'
import { measuredSets, type SetsTyped, withSets } from './measured-sets.ts'
import type { Ends } from './store-commands.ts'
import type { Terminal } from './terminal.ts'

interface PairOptions extends Omit<DesignNamed, 'path'>, SetsTyped {
  readonly json?: boolean
}

/** Adds the pairing of measured pieces to sets. */
export function addPair(program: Command, { terminal, end }: Ends): void {
  const pairs = designCommand(program, { name: 'pair', asks: 'which pieces of a lot go together, so that most fingers work?' })
  withSets(pairs, 'readings as for check; a serial number is that of a set, or of one part or pin')
    .option('--json', 'print one JSON document instead of text')
    .action(async (path: string, options: PairOptions) => end(await pair({ path, ...options }, terminal)))
}

async function pair({ json, ...named }: PairOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const measured = await measuredSets(named, terminal)
  if (measured === undefined) return exitStatus.refused
  const pieces = measuredPieces(measured.sets)
  const size = pairingSize(pieces)
  if (size !== undefined) terminal.writeError(`${size}\n`)
  const lot = pairLot(measured.variation, pieces)
  terminal.write(json === true ? `${JSON.stringify(lot, null, 2)}\n` : pairText(lot))
  return lot.working_count === lot.sets.length ? exitStatus.met : exitStatus.short
}

function pairText(lot: PairedLot): string {
  const rows = pairRows(lot).map(({ number, answer, pieces }) => [
    { text: String(number), side: 'right' as const },
    { text: `${marks[answer].character} ${answer === 'met' ? 'met' : 'not met'}`, side: 'left' as const },
    { text: pieces, side: 'left' as const },
  ])
  return `${[wrapped(pairSentence(lot)), aligned(rows).join('\n'), wrapped(caution)].join('\n\n')}\n`
}
