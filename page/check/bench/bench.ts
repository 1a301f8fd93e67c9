/** The bench book of a design as the server keeps it. */
import type { BookAsKept, Characteristic, FieldEntry, Problem } from '../../../engine/index.ts'
import type { CertificateEntry, HistoryReading, NamedColumns, SerialSheet, TestEntry } from '../../../report/index.ts'
import { reasonOf } from '../../state/server-words.ts'

/** A lot with its serial numbers. */
export interface Lot {
  readonly lot: string
  readonly revision: number
  readonly serials: readonly { readonly serial: string; readonly readings: number }[]
  readonly imports: readonly Import[]
}

/** A table that was taken in as a whole. */
export interface Import extends Signed {
  readonly file: string
  readonly readings: number
  /** Why and by whom it was taken back. */
  readonly withdrawn?: { readonly who: string; readonly made: string; readonly reason: string }
}

/** A calibration of a gauge. */
export interface Gauge extends Signed, Corrected {
  readonly gauge: string
  readonly resolution_mm: number
  readonly uncertainty_mm: number
  readonly calibrated: string
}

/** What there is at the bench. */
export interface Bench {
  readonly lots: readonly Lot[]
  /** Each since its last calibration. */
  readonly gauges: readonly Gauge[]
  /** Every calibration, those that were corrected too. */
  readonly calibrations: readonly Gauge[]
  /** Why nothing can be kept. */
  readonly notKept?: string
}

interface Signed {
  readonly id: number
  readonly who: string
  readonly made: string
}

/** What it corrects and why, and what corrects it. */
interface Corrected {
  readonly corrects?: number
  readonly reason?: string
  readonly correctedBy?: number
}

/** A reading as it is kept. */
export type KeptReading = HistoryReading

/** A coater's certificate as it is kept. */
export interface KeptCertificate extends Signed, Corrected, Omit<CertificateEntry, 'kind'> {}

/** A bench test as it is kept. */
export interface KeptTest extends Signed, Corrected, Omit<TestEntry, 'kind' | 'serial'> {
  readonly hasPhoto: boolean
}

/** A decision as it is kept. */
export interface KeptDecision extends Signed, Corrected {
  readonly characteristic?: string
  readonly decision: string
  readonly why: string
  readonly consequence: string
}

/** All that one set of a lot is judged by. */
export interface SetOfLot {
  readonly serial: string
  readonly readings: readonly KeptReading[]
  readonly certificates: readonly KeptCertificate[]
  readonly decisions: readonly KeptDecision[]
  readonly signOffs: readonly (Signed & { readonly statement: string })[]
}

/** Everything about one serial number. */
export interface Serial extends SetOfLot {
  readonly lot: string
  readonly revision: number
  readonly who: string
  readonly made: string
  readonly tests: readonly KeptTest[]
  readonly field: readonly (Signed & FieldEntry)[]
  readonly sheet?: SerialSheet
  readonly problems: readonly Problem[]
}

/** Rows of a table of readings of one lot, the heading first. */
export interface SentReadings {
  readonly who: string
  readonly lot: string
  readonly rows: readonly (readonly string[])[]
  readonly decimal?: 'point' | 'comma'
  readonly named?: NamedColumns
  /** Where they come from; the same rows are not taken twice for one lot. */
  readonly file?: string
  /** Set once it was asked about what lies far outside. */
  readonly asRead?: boolean
}

/** Where a design's bench book is. */
export const benchOf = (design: string): string => `/api/designs/${encodeURIComponent(design)}`

/** Lots and gauges of a design. @throws Error in words */
export const fetchBench = (design: string): Promise<Bench> => got(`${benchOf(design)}/bench`)

/** The frozen plan of a revision. @throws Error in words */
export async function fetchPlan(design: string, revision: number): Promise<readonly Characteristic[]> {
  return (await got<{ readonly plan: readonly Characteristic[] }>(`${benchOf(design)}/plans/${revision}`)).plan
}

/** One serial number with what it will do. @throws Error in words */
export const fetchSerial = (design: string, serial: string): Promise<Serial> =>
  got(`${benchOf(design)}/serials/${encodeURIComponent(serial)}`)

/** Every set of a lot, in the order in which they came. @throws Error in words */
export async function fetchSets(design: string, lot: string): Promise<readonly SetOfLot[]> {
  return (await got<{ readonly sets: readonly SetOfLot[] }>(`${benchOf(design)}/lots/${encodeURIComponent(lot)}/sets`)).sets
}

/** What the proof of a design rests on, its bench tests among it. @throws Error in words */
export const fetchBook = (design: string): Promise<BookAsKept> => got(`${benchOf(design)}/proving`)

/** Keeps entries that are no readings. @throws Error in words; then none is kept */
export async function sendEntries(
  design: string,
  sent: { readonly who: string; readonly entries: readonly object[] },
): Promise<void> {
  const response = await post(`${benchOf(design)}/entries`, sent)
  if (!response.ok) throw new Error(await reasonOf(response))
}

/** How many readings were kept; or what is asked first, and nothing was kept. */
export type KeptReadings = { readonly kept: number } | { readonly asks: readonly string[] }

/** Keeps readings, or none. @throws Error in words; then none is kept */
export async function sendReadings(design: string, sent: SentReadings): Promise<KeptReadings> {
  const response = await post(`${benchOf(design)}/readings`, sent)
  if (response.status === ASKED_FIRST) return (await response.json()) as { readonly asks: readonly string[] }
  if (!response.ok) throw new Error(await reasonOf(response))
  const { kept } = (await response.json()) as { readonly kept: readonly number[] }
  return { kept: kept.length }
}

/** Something lies far outside and was likely mistyped. */
const ASKED_FIRST = 409

async function got<Answer>(address: string): Promise<Answer> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(await reasonOf(response))
  return (await response.json()) as Answer
}

function post(address: string, sent: object): Promise<Response> {
  const headers = { 'Content-Type': 'application/json' }
  return fetch(address, { method: 'POST', headers, body: JSON.stringify(sent) })
}
