import { writeFile } from 'node:fs/promises'
import type { Command } from 'commander'
import {
  adoptFriction,
  type BenchTest,
  type Checked,
  changeDocument,
  compareBench,
  type Design,
  fitFriction,
  readDesign,
} from '../engine/index.ts'
import { caution, conformityAnswer, figuredTests, fittedLines, marks, readBenchTests, testedRows } from '../report/index.ts'
import { documentText } from '../server/index.ts'
import { bookOf } from './book-of.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { designCommand } from './design-command.ts'
import { asWrongUse, type DesignFile } from './design-file.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { readTable } from './read-table.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import type { StoreAsked } from './use-store.ts'

interface BenchOptions extends Omit<DesignNamed, 'path'> {
  readonly tests?: string
  readonly fit?: string
  readonly adopt?: string
  readonly json?: boolean
}

const HELP = `
A file of tests is a table of comma-separated values:

  serial,figure,found,uncertainty
  A-001,loadCase.carry.sustainingLoad,17.5 N,0.5 N

Examples
  fingerwright bench heron
  fingerwright bench designs/heron.json --tests rig.csv --fit "filmed pin in hard-coated hole" --adopt heron-2.json`

/** Adds the comparison of bench tests with the prediction. */
export function addBench(program: Command, { terminal, end }: Ends): void {
  designCommand(program, { name: 'bench', asks: 'did the bench find what was predicted?' })
    .option(
      '--tests <FILE.csv>',
      'what a rig found, a test a row; left out the measured tests that the store keeps of this finger',
    )
    .option('--fit <PAIR>', 'the friction pair whose coefficient is worked out from the tests')
    .option('--adopt <FILE.json>', 'write the design with the fitted coefficient and where it is from')
    .option('--json', 'print one JSON document instead of text')
    .addHelpText('after', HELP)
    .action(async (path: string, options: BenchOptions) => end(await bench({ path, ...options }, terminal)))
}

async function bench({ tests, fit, adopt, json, ...named }: BenchOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readDesign(text.value, file.name) : text
  const from = tests ?? 'the bench book'
  const found = read.value && (await testsFound(read.value, { file, tests, asked: { store: named.store, terminal } }))
  if (read.problems !== undefined || found?.problems !== undefined) {
    terminal.writeError(refusalText(read.problems ? file.shown : from, read.problems ?? found?.problems ?? []))
    return exitStatus.refused
  }
  const compared = compareBench(read.value, found?.value ?? [])
  const fitted = fit === undefined ? undefined : fitFriction(read.value, pairNamed(read.value, fit), found?.value ?? [])
  if (adopt !== undefined) {
    const changes = fitted && adoptFriction(fitted, `from ${from}`)
    if (!changes) throw new WrongUse('--adopt needs --fit with a pair of which at least one test says something')
    await writeFile(adopt, changeDocument(text.value ?? '', changes)).catch((error: unknown) => {
      throw asWrongUse(error, adopt)
    })
  }
  const lines = fitted ? ['', ...fittedLines(fitted).map((line) => wrapped(line))] : []
  const shown = [...aligned(benchCells(compared)), ...lines, '', wrapped(caution)].join('\n')
  terminal.write(json === true ? `${JSON.stringify({ compared, ...(fitted && { fitted }) }, null, 2)}\n` : `${shown}\n`)
  return worstOf(compared.map(({ verdict }) => conformityAnswer[verdict]))
}

interface TestsFrom {
  readonly file: DesignFile
  readonly tests: string | undefined
  readonly asked: StoreAsked
}

/** Tests of a file, or those that were measured on sets of this finger. @throws WrongUse where there is neither */
async function testsFound(design: Design, { file, tests, asked }: TestsFrom): Promise<Checked<readonly BenchTest[]>> {
  if (tests !== undefined) return readBenchTests(await readTable(tests), design)
  const book = await bookOf(file, asked)
  if (book === undefined) throw new WrongUse('--tests FILE.csv is needed: only designs of the store have tests of their own')
  const kept = figuredTests(book.tests.filter(({ isOfThisFinger }) => isOfThisFinger))
  if (kept.length === 0)
    throw new WrongUse('no test that is kept says which figure was measured; fingerwright enter-test enters one')
  return { value: kept }
}

function pairNamed({ frictionPairs }: Design, name: string): string {
  if (frictionPairs.some((pair) => pair.name === name)) return name
  throw new WrongUse(`--fit "${name}": the design has ${frictionPairs.map((pair) => `"${pair.name}"`).join(', ')}`)
}

const left = (text: string): Cell => ({ text, side: 'left' })

function benchCells(compared: ReturnType<typeof compareBench>): readonly (readonly Cell[])[] {
  const heads = ['set', 'figure', 'found', 'predicted', 'claimed', 'ratio', '']
  const rows = testedRows(compared).map(({ serial, title, found, predicted, claimed, ratio = 'none', answer, words }) => [
    ...[serial, title, found, predicted, claimed, ratio, `${marks[answer].character} ${words}`],
  ])
  return [heads, ...rows].map((row) => row.map(left))
}

function worstOf(answers: readonly ('met' | 'short' | 'undecided')[]): ExitStatus {
  if (answers.includes('short')) return exitStatus.short
  return answers.includes('undecided') ? exitStatus.undecided : exitStatus.met
}
