import { existsSync } from 'node:fs'
import { type Command, Option } from 'commander'
import { type Checked, lifeStudy, type Run } from '../engine/index.ts'
import { caution, lifeLines, readRuns, type TestKind, testKinds, testRuns } from '../report/index.ts'
import { bookOf } from './book-of.ts'
import { wrapped } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { findStored } from './find-design.ts'
import { STORE } from './option-words.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'

interface RunsOptions {
  readonly test: TestKind
  readonly store?: string
  readonly life: string
  readonly shape: string
  readonly confidence: string
  readonly json?: boolean
}

const HELP = `
A file of runs is a table of comma-separated values:

  serial,ran,outcome
  A-001,20000,did
  A-005,12400,did not

Examples
  fingerwright runs runs.csv --life 20000 --shape 2
  fingerwright runs heron --test "load to hold" --life 60`

/** Adds what runs with few failures show. */
export function addRuns(program: Command, { terminal, end }: Ends): void {
  program
    .command('runs')
    .description('what do pieces that ran without failure, or with few, show of a life?')
    .argument(
      '<FILE.csv>',
      'a table with the columns serial, ran and outcome: did, did not; or a design of the store, whose bench tests are taken',
    )
    .addOption(new Option('--test <KIND>', 'which tests of the store').choices(testKinds).default('cycles'))
    .option('--store <FOLDER>', STORE)
    .requiredOption('--life <N>', 'the life that is asked for, as it was counted; of loads the load in N')
    .option('--shape <B>', 'shape of the law of lives, stated: 1 by chance, 2 and more by wear', '1')
    .option('--confidence <SHARE>', 'how sure the answer is to be, between 0 and 1', '0.95')
    .option('--json', 'print one JSON document instead of text')
    .addHelpText('after', HELP)
    .action(async (path: string, options: RunsOptions) => end(await runs(path, options, terminal)))
}

async function runs(path: string, { json, test, store, ...typed }: RunsOptions, terminal: Terminal): Promise<ExitStatus> {
  const above0 = { from: 0, below: Number.POSITIVE_INFINITY }
  const life = between(typed.life, { ...above0, option: '--life' })
  const shape = between(typed.shape, { ...above0, option: '--shape' })
  const confidence = between(typed.confidence, { from: 0, below: 1, option: '--confidence' })
  const read = await runsFound({ path, test, store }, terminal)
  if (read.problems !== undefined) {
    terminal.writeError(refusalText(path, read.problems))
    return exitStatus.refused
  }
  const study = lifeStudy(read.value, { life, shape, confidence })
  const shown = [...lifeLines(study), caution].map((line) => wrapped(line)).join('\n\n')
  terminal.write(json === true ? `${JSON.stringify(study, null, 2)}\n` : `${shown}\n`)
  return exitStatus.met
}

interface RunsFrom {
  readonly path: string
  readonly test: TestKind
  readonly store: string | undefined
}

/** Runs of a table, or those that were kept of sets of this finger. @throws WrongUse where there is neither */
async function runsFound({ path, test, store }: RunsFrom, terminal: Terminal): Promise<Checked<readonly Run[]>> {
  if (existsSync(path) || /[\\/]|\.csv$/i.test(path)) return readRuns(await readTable(path))
  const book = await bookOf(await findStored({ path, store }, terminal), { store, terminal })
  const kept = testRuns(book?.tests.filter(({ isOfThisFinger }) => isOfThisFinger) ?? [], test)
  if (kept.length > 0) return { value: kept }
  throw new WrongUse(`${path}: no ${test} is kept of this finger that did or did not; fingerwright enter-test enters one`)
}

interface Bounds {
  readonly from: number
  readonly below: number
  readonly option: string
}

function between(typed: string, { from, below, option }: Bounds): number {
  const value = Number(typed)
  if (value > from && value < below) return value
  throw new WrongUse(
    `${option} takes a number above ${from}${below === Number.POSITIVE_INFINITY ? '' : ` and below ${below}`}, not ${typed}`,
  )
}
