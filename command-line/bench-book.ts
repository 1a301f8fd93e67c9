import type { Command } from 'commander'
import { type Begun, correctable, WHO } from './bench-command.ts'
import { addBenchEntries } from './bench-entries.ts'
import { enterGauge, type GaugeAsked, listGauges } from './bench-gauge.ts'
import { importReadings, type ReadingsAsked } from './bench-import.ts'
import { beginLot, exportReadings, listLots } from './bench-lots.ts'
import { showSerial } from './bench-serial.ts'
import { STORE } from './option-words.ts'
import type { Ends } from './store-commands.ts'
import { COLUMNS, withColumns } from './table-columns.ts'

const NAME = 'name of a design in the store'

interface StoreOption {
  readonly store?: string
}
type Begin = StoreOption & { readonly revision: string; readonly who: string; readonly note?: string }
type Gauged = Omit<GaugeAsked, 'name' | 'gauge'>
type Import = StoreOption & Omit<ReadingsAsked, 'name' | 'lot' | 'path'>

const TABLE = `
The table is CSV with commas, semicolons or tabs. All readings are kept, or none.
${COLUMNS}

Examples
  fingerwright import-readings heron L7 box.csv --who K1 --look
  fingerwright import-readings heron L7 box.csv --who K1 --column found=Wert --column "by=Wer" --decimal comma`

/** Adds the commands of the bench book: lots, readings in and out, and what is known of a serial number. */
export function addBenchBook(program: Command, ends: Ends): void {
  const command = (words: string, description: string) =>
    program.command(words).description(description).option('--store <FOLDER>', STORE).argument('<NAME>', NAME)
  addLots(command, ends)
  addReadings(command, ends)
  addBenchEntries(command, ends)
}

function addLots(command: Begun, { terminal, end }: Ends): void {
  command('lots', 'list the lots of a design: revision, sets, readings, tables that were brought in').action(
    (name: string, { store }: StoreOption) => listLots(name, { store, terminal }),
  )
  command('begin-lot', 'begin a lot to a revision, whose inspection plan is frozen with it')
    .argument('<LOT>', 'name of the lot')
    .requiredOption('--revision <N>', 'number of the revision that it is made to')
    .requiredOption('--who <WHO>', WHO)
    .option('--note <WORDS>', 'what else is to be known of it')
    .action(async (name: string, lot: string, options: Begin) => end(await beginLot({ name, lot, ...options }, terminal)))
  correctable(
    command('enter-gauge', 'enter a gauge, or its next calibration; every design of the store has it then')
      .argument('<GAUGE>', 'what it is called')
      .requiredOption('--resolution <SIZE>', 'the least step that it shows, in mm where no unit stands')
      .requiredOption('--uncertainty <SIZE>', 'what its certificate leaves open either way')
      .requiredOption('--calibrated <DAY>', 'day of its calibration, such as 2031-04-05'),
  ).action(async (name: string, gauge: string, options: Gauged) => end(await enterGauge({ name, gauge, ...options }, terminal)))
  command('gauges', 'list every calibration of every gauge, those that were corrected too').action(
    (name: string, { store }: StoreOption) => listGauges(name, { store, terminal }),
  )
}

function addReadings(command: Begun, { terminal, end }: Ends): void {
  withColumns(
    command('import-readings', 'bring readings of a lot from a table into the bench book')
      .argument('<LOT>', 'lot that was begun')
      .argument('<FILE.csv>', 'table of readings')
      .requiredOption('--who <WHO>', WHO),
  )
    .option('--as-read', 'readings far outside of their limits were read so')
    .option('--look', 'say what would be kept, and keep nothing')
    .addHelpText('after', TABLE)
    .action(async (name: string, lot: string, path: string, options: Import) =>
      end(await importReadings({ name, lot, path, ...options }, terminal)),
    )
  command('export-readings', 'print every reading of a lot as CSV')
    .argument('<LOT>', 'lot that was begun')
    .addHelpText('after', '\nExample\n  fingerwright export-readings heron L7 > L7.csv')
    .action((name: string, lot: string, { store }: StoreOption) => exportReadings({ name, lot }, { store, terminal }))
  command('serial', 'tell what is known of a serial number, and what the set will do as it was measured')
    .argument('<SERIAL>', 'serial number of one of its lots')
    .action(async (name: string, serial: string, { store }: StoreOption) =>
      end(await showSerial({ name, serial }, { store, terminal })),
    )
}
