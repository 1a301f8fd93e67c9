/// <reference lib="webworker" />
/** Judges the sets of a file of readings apart from the page. */
import {
  type Characteristic,
  consequences,
  inspectionPlan,
  judgeMeasured,
  measuredSpread,
  readVariation,
} from '../../engine/index.ts'
import { fileRows, type ReadReadings, readReadings } from '../../report/index.ts'
import type { OpenedReadings, PageSet } from './readings.ts'

/** Text of a design, and a file of readings. */
export interface CheckAsked {
  readonly text: string
  readonly file: string
  readonly bytes: Uint8Array
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
function* judgedReadings({ text, file, bytes }: CheckAsked): Generator<CheckTold> {
  const variation = readVariation(text)
  if (variation.value === undefined) return yield { opened: { file, text, problems: variation.problems }, isAll: true }
  const plan = inspectionPlan(variation.value)
  const read = readRows(bytes, plan)
  if (read.sets === undefined) return yield { opened: { file, text, problems: read.problems }, isAll: true }
  const sets: PageSet[] = read.sets.map(({ serial, readings }) => ({
    serial,
    ...judgeMeasured(variation.value, plan, readings),
    decisions: consequences(variation.value, plan, readings),
  }))
  const opened = (): OpenedReadings => ({ file, text, sets: [...sets], passedOver: read.passedOver })
  yield { opened: opened(), isAll: false }
  for (const [index, set] of sets.entries()) {
    const spread = measuredSpread(variation.value, set.readings, { seed: SEED, samples: SAMPLES })
    sets[index] = { ...set, spread }
    yield { opened: opened(), isAll: index === sets.length - 1 }
  }
}

function readRows(bytes: Uint8Array, plan: readonly Characteristic[]): ReadReadings {
  const rows = fileRows(bytes)
  return rows.problems === undefined ? readReadings(rows.value, plan) : { problems: rows.problems }
}
