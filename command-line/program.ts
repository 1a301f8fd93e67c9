import { Command, CommanderError, Option } from 'commander'
import { designSchema } from '../engine/index.ts'
import { questions } from '../report/index.ts'
import { version } from '../server/index.ts'
import { addSpread } from './add-spread.ts'
import { addBenchBook } from './bench-book.ts'
import { addBreaks } from './breaks.ts'
import { addCheck } from './check.ts'
import { addBench } from './check-bench.ts'
import { addLotStudies } from './check-lot.ts'
import { addPair } from './check-pair.ts'
import { addRuns } from './check-runs.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus, type Scope } from './exit-status.ts'
import { addFieldLog } from './field-log.ts'
import { type JudgeOptions, judge } from './judge.ts'
import { addMake } from './make.ts'
import { STORE } from './option-words.ts'
import { setPassphrase } from './passphrase.ts'
import { addReport } from './report.ts'
import { type ServeOptions, serve } from './serve.ts'
import { addSprings } from './springs.ts'
import { addStarter } from './starter.ts'
import { addStoreCommands } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { addWear } from './wear.ts'
import { writeNewDesign } from './write-new-design.ts'

const INTRODUCTION = `Does a body-powered mechanical finger hold its load, and does it let go again?
Give it a design file; it moves the finger, works out the forces and answers in one sentence.`

const STATUSES = `
Exit status
   0  every requirement of the design is met
   1  at least one falls short
   2  none falls short, some are undecided
   3  the design was refused; every problem is listed
  64  wrong use, or a file that cannot be opened or written`

const FIRST_STEPS = `
First steps
  fingerwright new finger.json        a design to begin with
  fingerwright verdict finger.json    what it does, in words and figures
  fingerwright serve finger.json      the same as a page, with drawings
  fingerwright designs                what was kept; each name may stand in the place of a file`

/**
 * Runs one command.
 *
 * @param words what was typed after the name of the program
 * @returns the exit status; wrong use is explained on the error stream. Faults of the program itself are thrown.
 */
export async function runCommandLine(words: readonly string[], terminal: Terminal): Promise<ExitStatus> {
  let status: ExitStatus = exitStatus.met
  const program = createProgram(terminal, (ended) => {
    status = ended
  })
  try {
    await program.parseAsync([...words], { from: 'user' })
    return status
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitStatus.met : exitStatus.wrongUse
    if (!(error instanceof WrongUse)) throw error
    terminal.writeError(`fingerwright: ${error.message}\n`)
    return exitStatus.wrongUse
  }
}

function createProgram(terminal: Terminal, end: (status: ExitStatus) => void): Command {
  const program = new Command('fingerwright')
    .description(INTRODUCTION)
    .version(version, '--version', 'print the version')
    .helpOption('--help', 'print this help')
    .addHelpText('after', `${FIRST_STEPS}\n${STATUSES}`)
    .exitOverride()
    .showHelpAfterError('fingerwright --help explains the commands.')
    .configureOutput({ writeOut: terminal.write, writeErr: terminal.writeError })
  addQuestion(program, {
    scope: 'verdict',
    asks: 'does it hold, and does it let go? every requirement with what was found',
    run: async (path, options) => end(await judge({ path, scope: 'verdict', options }, terminal)),
  })
  for (const { name, asks } of questions) {
    const run = async (path: string, options: JudgeOptions) => end(await judge({ path, scope: name, options }, terminal))
    addQuestion(program, { scope: name, asks: `${asks.charAt(0).toLowerCase()}${asks.slice(1)}`, run })
  }
  addSpread(program, { terminal, end })
  addMake(program, { terminal, end })
  addCheck(program, { terminal, end })
  addLotStudies(program, { terminal, end })
  addPair(program, { terminal, end })
  addReport(program, { terminal, end })
  addStarter(program, { terminal, end })
  addFieldLog(program, { terminal, end })
  addBench(program, { terminal, end })
  addRuns(program, { terminal, end })
  addSprings(program, { terminal, end })
  addWear(program, { terminal, end })
  addBreaks(program, { terminal, end })
  addOthers(program, terminal)
  addStoreCommands(program, { terminal, end })
  addBenchBook(program, { terminal, end })
  return program
}

interface Question {
  readonly scope: Scope
  readonly asks: string
  readonly run: (path: string, options: JudgeOptions) => Promise<void>
}

function addQuestion(program: Command, { scope, asks, run }: Question): void {
  const command = designCommand(program, { name: scope, asks: asks })
  if (scope === 'strength') command.option('--changes', 'try a step of every size first: which change helps most?')
  command
    .option('--json', 'print one JSON document instead of text; angles are in degrees, every value names its unit')
    .option('--working', 'print the working of every figure: method, formula, inputs, steps, source')
    .option('--drawing <FILE.svg>', 'write a drawing of the finger to this file')
    .option('--at <PLACE>', 'posture of the drawing: 0 (open) to 1 (closed), or a drive position such as "60 deg"')
    .addHelpText(
      'after',
      `\nExample\n  fingerwright ${scope} designs/heron.json --drawing heron.svg --at "60 deg"
  fingerwright ${scope} heron --revision 2\n${STATUSES}`,
    )
    .action(run)
}

function addOthers(program: Command, terminal: Terminal): void {
  program
    .command('new')
    .description('write a design to begin with; never overwrites a file')
    .argument('<DESIGN>', 'file to write')
    .addHelpText('after', '\nExample\n  fingerwright new finger.json')
    .action((path: string) => writeNewDesign(path, terminal))
  addServe(program, terminal)
  program
    .command('schema')
    .description('print the JSON Schema of design files, with which an editor checks and completes them')
    .addHelpText('after', '\nExample\n  fingerwright schema > fingerwright-design.schema.json')
    .action(() => terminal.write(`${JSON.stringify(designSchema(), null, 2)}\n`))
}

const WHO_COMES_IN = `
Without --host and --name the page is served on 127.0.0.1 and cannot be reached from another machine. With either of them everybody
has to sign in: set a passphrase first with fingerwright passphrase. Ctrl-C ends the server.

Examples
  fingerwright serve finger.json
  fingerwright serve --host 192.168.1.20 --name bench.example   in the workshop's own network, as plain HTTP
  fingerwright serve --name https://bench.example               behind a proxy on this machine that speaks TLS`

// Each --name takes one name: an option that takes several would swallow the design that follows it.
const NAME =
  'further name under which the page is asked for; give it again for another. https:// before it: a proxy speaks TLS for it'

function addServe(program: Command, terminal: Terminal): void {
  program
    .command('serve')
    .description('show designs as a page in the browser; on this machine only, unless --host or --name lets others in')
    .argument('[DESIGN]', 'design file to show first; the examples follow')
    .addOption(new Option('--port <N>', 'port to listen on; the environment variable PORT does the same, 0 takes any free one'))
    .option('--host <ADDRESS>', 'IP address of this machine to listen on, so that other machines reach it')
    .option('--name <NAME>', NAME, (name, before: readonly string[] = []) => [...before, name])
    .option('--store <FOLDER>', STORE)
    .addHelpText('after', WHO_COMES_IN)
    .action((path: string | undefined, options: Omit<ServeOptions, 'path'>) => serve({ ...options, path }, terminal))
  program
    .command('passphrase')
    .description('set the passphrase with which others sign in to a server that lets them in')
    .option('--store <FOLDER>', STORE)
    .addHelpText(
      'after',
      '\nIt is asked for twice and not shown; from a file or another command it is read as one line of standard input.',
    )
    .action((options: { readonly store?: string }) => setPassphrase(options.store, terminal))
}
