import type { Command } from 'commander'
import { checkAsks } from '../report/index.ts'
import { countedWords, type JudgedSet, judgedSets, weighedPlan, writeSheets } from './check-sets.ts'
import { planDocument, planText, setDocument, setText } from './check-text.ts'
import { designCommand } from './design-command.ts'
import { type ExitStatus, exitStatus, statusOf } from './exit-status.ts'
import type { DesignNamed } from './find-design.ts'
import { measuredSets, type Planned, planned, type SetsTyped, withSets } from './measured-sets.ts'
import type { Ends } from './store-commands.ts'
import { COLUMNS } from './table-columns.ts'
import type { Terminal } from './terminal.ts'

interface CheckOptions extends Omit<DesignNamed, 'path'>, SetsTyped {
  readonly json?: boolean
  readonly samples?: string
  readonly out?: string
}

const HELP = `
Without --readings the inspection plan is printed: every size and place that the drawing limits, numbered. A file of readings is a table
of comma-separated values, its first row the heading:

  serial,characteristic,found,x,y,uncertainty,visit
  A-001,24,2.997,,,0.001             a size, with the uncertainty of the gauge
  A-001,1,3.010 to 3.012             a pin gauge that goes and one that does not
  A-001,23,27.507 over 3 and 3       a distance, taken over two pins
  A-001,3,,6.472,3.429,0.002         a position, from the datum hole of its part
  A-001,25,2.971,,,0.001,before coating

A characteristic is named by its number in the plan or by its place in the design. ${COLUMNS}

Examples
  fingerwright check designs/heron.json --readings lot-7.csv
  fingerwright check heron --lot L7 --out sheets`

/** Adds the question Check: the inspection plan, and what measured sets will do. */
export function addCheck(program: Command, { terminal, end }: Ends): void {
  const checks = designCommand(program, { name: 'check', asks: checkAsks.charAt(0).toLowerCase() + checkAsks.slice(1) })
  withSets(checks, 'what was measured: every set is judged as it was measured')
    .option('--samples <N>', 'ways that are counted for the yield of each set; none when it is left out')
    .option('--out <FOLDER>', 'write drawings with the numbers of the plan, and a first-article sheet of every set that was read')
    .option('--json', 'print one JSON document instead of text')
    .addHelpText('after', HELP)
    .action(async (path: string, options: CheckOptions) => end(await check({ path, ...options }, terminal)))
}

/**
 * Prints the plan of a design, or judges every set of a file of readings as it was measured.
 *
 * @returns the worst status of all sets; that of a plan is 0
 * @throws WrongUse when a file cannot be opened
 */
async function check({ json, samples, out, ...named }: CheckOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  if (named.readings === undefined && named.lot === undefined) {
    const about = await planned(named, terminal)
    return about === undefined ? exitStatus.refused : printPlan({ ...about, json, out }, terminal)
  }
  const measured = await measuredSets(named, terminal)
  if (measured === undefined) return exitStatus.refused
  const { variation, plan, sets, papers } = measured
  const judged = judgedSets({ variation, plan, samples: countedWords(samples) }, sets)
  if (out !== undefined) {
    const weighed = weighedPlan(variation, plan)
    terminal.writeError(await writeSheets(out, { variation, weighed, sets: judged, papers }))
  }
  terminal.write(
    json === true
      ? `${JSON.stringify(judged.map(setDocument), null, 2)}\n`
      : judged.map((set) => setText(set, terminal)).join('\n'),
  )
  return worstOf(judged)
}

interface PlanAsked extends Planned {
  readonly json: boolean | undefined
  readonly out: string | undefined
}

async function printPlan({ variation, plan, json, out }: PlanAsked, terminal: Terminal): Promise<ExitStatus> {
  const weighed = weighedPlan(variation, plan)
  if (out !== undefined) terminal.writeError(await writeSheets(out, { variation, weighed, sets: [], papers: new Map() }))
  terminal.write(
    json === true ? `${JSON.stringify(planDocument(variation, weighed), null, 2)}\n` : planText(variation, weighed, terminal),
  )
  return exitStatus.met
}

function worstOf(judged: readonly JudgedSet[]): ExitStatus {
  const statuses = judged.map(({ set: { evaluation } }) =>
    evaluation === undefined ? exitStatus.short : statusOf(evaluation, 'verdict'),
  )
  return (
    statuses.find((status) => status === exitStatus.short) ??
    statuses.find((status) => status !== exitStatus.met) ??
    exitStatus.met
  )
}
