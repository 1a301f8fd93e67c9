/// <reference lib="webworker" />
/** Judges measured sets apart from the page, from a file of readings or as the bench book keeps them. */
import {
  type Characteristic,
  consequences,
  inspectionPlan,
  judgeMeasured,
  measuredSpread,
  readVariation,
} from '../../engine/index.ts'
import {
  fileRows,
  type HistoryReading,
  isStanding,
  type KeptCoupons,
  type KeptPapers,
  measuredWith,
  paperLines,
  type ReadAs,
  type ReadReadings,
  type ReadSet,
  readAsLines,
  readSets,
  standingDecisions,
  standingFound,
} from '../../report/index.ts'
import type { KeptDecision } from './bench/bench.ts'
import type { OpenedFrom, OpenedReadings, PageSet } from './readings.ts'

/** One serial number as the bench book keeps it. */
export interface KeptSet extends KeptPapers {
  readonly decisions: readonly KeptDecision[]
  readonly serial: string
  readonly readings: readonly HistoryReading[]
  readonly certificates: readonly KeptCoupons[]
}

/** What is judged, and where it comes from. */
export interface CheckAsked {
  readonly opened: OpenedFrom
  readonly from: { readonly bytes: Uint8Array } | { readonly kept: readonly KeptSet[] }
}

/** What the worker says: what is known now, and whether more follows. */
export interface CheckTold {
  readonly opened: OpenedReadings
  readonly isAll: boolean
}

/** Ways that are counted for the yield of one set: the interval is then some six in a hundred wide at worst, in a second or two. */
const SAMPLES = 64
/** The same readings give the same counts. */
const SEED = 1

addEventListener('message', ({ data }: MessageEvent<CheckAsked>) => {
  for (const told of judgedReadings(data)) postMessage(told)
})

/** All sets first, then each with its yield. */
function* judgedReadings({ opened: about, from }: CheckAsked): Generator<CheckTold> {
  const variation = readVariation(about.text)
  if (variation.value === undefined) return yield { opened: { ...about, problems: variation.problems }, isAll: true }
  const plan = inspectionPlan(variation.value)
  const read: ReadSome = 'bytes' in from ? readRows(from.bytes, plan) : keptSets(from.kept, plan)
  if (read.sets === undefined) return yield { opened: { ...about, problems: read.problems }, isAll: true }
  const takenAs = read.as === undefined ? [] : readAsLines(read.as)
  const sets: PageSet[] = read.sets.map(({ serial, readings }) => ({
    serial,
    ...judgeMeasured(variation.value, plan, readings),
    decisions: consequences(variation.value, plan, readings),
    ...papersOf(from, serial),
  }))
  const opened = (): OpenedReadings => ({ ...about, sets: [...sets], passedOver: read.passedOver, takenAs })
  yield { opened: opened(), isAll: false }
  for (const [index, set] of sets.entries()) {
    const spread = measuredSpread(variation.value, set.readings, { seed: SEED, samples: SAMPLES })
    sets[index] = { ...set, spread }
    yield { opened: opened(), isAll: index === sets.length - 1 }
  }
}

function papersOf(from: CheckAsked['from'], serial: string): Pick<PageSet, 'papers' | 'decided' | 'measuredWith'> {
  const kept = 'kept' in from ? from.kept.find((one) => one.serial === serial) : undefined
  if (kept === undefined) return {}
  const decided = standingDecisions(kept.decisions)
  return { papers: paperLines(kept), decided, measuredWith: measuredWith(kept.readings) }
}

/** What was read; of a table also how. */
type ReadSome = ReadReadings & { readonly as?: ReadAs }

function readRows(bytes: Uint8Array, plan: readonly Characteristic[]): ReadSome {
  const rows = fileRows(bytes)
  return rows.problems === undefined ? readSets({ rows: rows.value, plan }) : { problems: rows.problems }
}

/** What stands of every serial number; one of which nothing was read has no set. */
function keptSets(kept: readonly KeptSet[], plan: readonly Characteristic[]): ReadReadings {
  const sets = kept
    .filter(({ readings }) => readings.some(isStanding))
    .map((one): ReadSet => ({ serial: one.serial, readings: standingFound(plan, one) }))
  if (sets.length > 0) return { sets, passedOver: [] }
  return { problems: [{ code: 'missing', place: '', found: 'no reading', needed: 'at least one' }] }
}
