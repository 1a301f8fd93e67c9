import { writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { setImmediate } from 'node:timers/promises'
import {
  byMany,
  type DesignSpread,
  type DesignSpreadAsked,
  designRun,
  type Problem,
  type RunProgress,
  readOffer,
  readVariation,
  sentence,
  type Variation,
} from '../engine/index.ts'
import { holdWindowFile, refusedDocument, spreadDocument } from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import { readSpreadAsked, type SpreadWords } from './spread-asked.ts'
import { progressTeller } from './spread-progress.ts'
import { spreadText } from './spread-text.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { type HeldHands, ownHands, workerHands } from './worker-hands.ts'

/** Options of spread, as commander gives them. */
export interface SpreadOptions extends Omit<DesignNamed, 'path'>, SpreadWords {
  readonly json?: boolean
  readonly ruler?: string
  readonly working?: boolean
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
  else terminal.write(spreadText(told, { colour: terminal.colour, working: options.working === true }))
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
  const { tell, end } = progressTeller(terminal)
  let isStopped = false
  // Only a reader who sees the progress is waiting; for others Ctrl-C ends the program as it always does.
  if (terminal.tellProgress) void terminal.stopped().then(() => (isStopped = true))
  const hands = handsFor(terminal, { variation, text, name, asked })
  const telling = async (progress: RunProgress<DesignSpread>): Promise<void> => {
    tell(progress)
    await setImmediate()
  }
  try {
    return await byMany(designRun(variation, asked), { hands, tell: telling, isStopped: () => isStopped })
  } finally {
    end()
    await hands.end()
  }
}

/** Starting a worker costs as much as judging some tens of samples, or as looking at tens of thousands of closed postures. */
const SAMPLES_worth_a_worker = 128
const CLOSED_worth_a_worker = 25_000

/** Times that advice judges the same sets once more, about. */
const ADVICE_times = 8

/** Workers; or this process itself where it is as quick, or where there are none. */
function handsFor({ workerFile: file }: Terminal, { variation, asked, ...job }: SetsAsked): HeldHands {
  const { samples, advice, closed = 0 } = asked
  const judged = advice ? ADVICE_times * samples : samples
  const worth = Math.max(judged / SAMPLES_worth_a_worker, closed / CLOSED_worth_a_worker)
  const count = Math.min(availableParallelism(), Math.ceil(worth))
  return file && count > 1 ? workerHands({ file, count, job }) : ownHands(variation)
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
