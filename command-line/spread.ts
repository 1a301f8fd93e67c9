import { writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import {
  adviceFor,
  closedFor,
  type DesignSpread,
  type DesignSpreadAsked,
  designProblem,
  designSpreadFrom,
  offersFor,
  type Problem,
  planSpread,
  readOffer,
  readVariation,
  sentence,
  type Variation,
} from '../engine/index.ts'
import { holdWindowFile, refusedDocument, spreadDocument } from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { countClosed, countHere, countInWorkers } from './count-samples.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { follow } from './follow.ts'
import { refusalText } from './refusal-text.ts'
import { readSpreadAsked, type SpreadWords } from './spread-asked.ts'
import { progressTeller } from './spread-progress.ts'
import { spreadText } from './spread-text.ts'
import type { WorkerJob } from './spread-worker.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { type WorkerPool, workerPool } from './worker-pool.ts'

/** Options of spread, as commander gives them. */
export interface SpreadOptions extends Omit<DesignNamed, 'path'>, SpreadWords {
  readonly json?: boolean
  readonly ruler?: string
}

/** Width of the ruler in its file. */
const RULER_px = 760

/**
 * Answers whether every set will behave so: text or JSON to the output, progress to the error stream, the ruler to its file.
 *
 * @throws WrongUse when a file cannot be opened or written, or an option cannot be read
 */
export async function spread(path: string, options: SpreadOptions, terminal: Terminal): Promise<ExitStatus> {
  const asked = readSpreadAsked(options)
  const file = await findDesign({ ...options, path }, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readVariation(text.value, file.name) : text
  if (read.problems !== undefined)
    return refuse({ problems: read.problems, name: file.name, shown: file.shown }, options, terminal)
  refuseOffers(read.value, asked)
  const told = await countSets({ variation: read.value, text: text.value ?? '', name: file.name, asked }, terminal)
  if (options.json === true) terminal.write(`${JSON.stringify(spreadDocument(told, engineName), null, 2)}\n`)
  else terminal.write(spreadText(told, terminal))
  if (options.ruler !== undefined) await writeRuler(options.ruler, told)
  return told.requirements.length === 0 ? exitStatus.met : exitStatus[told.verdict]
}

/** @throws WrongUse for the first offer that cannot be read */
function refuseOffers(variation: Variation, { offers = [] }: DesignSpreadAsked): void {
  for (const typed of offers) {
    const [problem] = readOffer(variation, typed).problems ?? []
    if (problem) throw new WrongUse(`--offer ${typed}: ${sentence('', problem)}`)
  }
}

interface Refused {
  readonly problems: readonly Problem[]
  readonly name: string
  readonly shown: string
}

function refuse({ problems, name, shown }: Refused, { json }: SpreadOptions, terminal: Terminal): ExitStatus {
  if (json === true) terminal.write(`${JSON.stringify(refusedDocument({ name, problems }, engineName), null, 2)}\n`)
  else terminal.writeError(refusalText(shown, problems))
  return exitStatus.refused
}

/** A design whose sets are to be counted. */
export interface SetsAsked {
  readonly variation: Variation
  readonly text: string
  readonly name: string
  readonly asked: DesignSpreadAsked
}

/** Counts the sets of a design, in workers where the terminal has them; tells how far it is and can be stopped there. */
export async function countSets({ variation, text, name, asked }: SetsAsked, terminal: Terminal): Promise<DesignSpread> {
  const problem = designProblem(variation)
  const { tell, end } = progressTeller(terminal)
  let isStopped = false
  // Only a reader who sees the progress is waiting; for others Ctrl-C ends the program as it always does.
  if (terminal.tellProgress) void terminal.stopped().then(() => (isStopped = true))
  const plan = await follow(planSpread(problem, asked), { tell, isStopped: () => false })
  if (plan === undefined) throw new Error('spread: a plan that was never stopped has no end')
  const following = { tell, isStopped: () => isStopped }
  const reportOf = (of: number) => (done: number) => tell({ doing: 'samples', done, of })
  const { samples, closed: closed_samples = 0, seed } = asked
  const pool = poolFor(terminal, { text, name, cloud: plan.cloud, seed }, asked)
  try {
    const counting = { ...following, problem, plan, samples, report: reportOf(samples) }
    const counted = pool ? await countInWorkers(counting, pool) : await countHere(counting)
    const plainly = designSpreadFrom(variation, { problem, plan, samples: counted, asked })
    const offers = await follow(offersFor(variation, problem, plainly), following)
    const looking = { ...following, variation, seed, samples: closed_samples, report: reportOf(closed_samples) }
    const closed =
      pool && closed_samples > 0 ? await countClosed(looking, pool) : await follow(closedFor(variation, plainly), following)
    const told = { ...plainly, ...(offers && offers.length > 0 && { offers }), ...(closed && { closed }) }
    const advice = asked.advice ? await follow(adviceFor(variation, problem, told), following) : undefined
    return { ...told, ...(advice && { advice }) }
  } finally {
    end()
    await pool?.end()
  }
}

/** Starting a worker costs as much as judging some tens of samples, or as looking at tens of thousands of closed postures. */
const SAMPLES_worth_a_worker = 128
const CLOSED_worth_a_worker = 25_000

/** @returns undefined where one process is as quick, or where there are no workers */
function poolFor({ workerFile }: Terminal, job: WorkerJob, { samples, closed = 0 }: DesignSpreadAsked): WorkerPool | undefined {
  const worth = Math.max(samples / SAMPLES_worth_a_worker, closed / CLOSED_worth_a_worker)
  const count = Math.min(availableParallelism(), Math.ceil(worth))
  return workerFile && count > 1 ? workerPool({ file: workerFile, count, job }) : undefined
}

async function writeRuler(file: string, told: DesignSpread): Promise<void> {
  const svg = holdWindowFile(told, { width_px: RULER_px })
  if (svg === undefined)
    throw new WrongUse('--ruler: this design has no hold window; it takes a toggle and a load case with a keeper')
  try {
    await writeFile(file, svg)
  } catch (error) {
    throw new WrongUse(`${file} cannot be written: ${error instanceof Error ? error.message : error}`)
  }
}
