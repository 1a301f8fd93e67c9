/** The bench book of a design as the server keeps it. */
import type { Characteristic, FieldEntry, Problem } from '../../../engine/index.ts'
import type { CertificateEntry, KeptFound, NamedColumns, SerialSheet, TestEntry } from '../../../report/index.ts'
import { reasonOf } from '../../state/server-words.ts'

/** A lot with its serial numbers. */
export interface Lot {
  readonly lot: string
  readonly revision: number
  readonly serials: readonly { readonly serial: string; readonly readings: number }[]
}

/** A gauge since its last calibration. */
export interface Gauge {
  readonly gauge: string
  readonly resolution_mm: number
  readonly uncertainty_mm: number
  readonly calibrated: string
}

/** What there is at the bench. */
export interface Bench {
  readonly lots: readonly Lot[]
  readonly gauges: readonly Gauge[]
  /** Why nothing can be kept. */
  readonly notKept?: string
}

interface Signed {
  readonly id: number
  readonly who: string
  readonly made: string
}

/** A reading as it is kept. */
export interface KeptReading extends Signed, KeptFound {
  readonly found?: string
  readonly x?: string
  readonly y?: string
  readonly gauge?: string
  readonly file?: string
  readonly by?: string
  readonly date?: string
  readonly corrects?: number
  readonly reason?: string
}

/** A coater's certificate as it is kept. */
export interface KeptCertificate extends Signed, Omit<CertificateEntry, 'kind'> {
  readonly correctedBy?: number
}

/** A bench test as it is kept. */
export interface KeptTest extends Signed, Omit<TestEntry, 'kind' | 'serial'> {
  readonly hasPhoto: boolean
  readonly correctedBy?: number
}

/** Everything about one serial number. */
export interface Serial {
  readonly serial: string
  readonly lot: string
  readonly revision: number
  readonly who: string
  readonly made: string
  readonly readings: readonly KeptReading[]
  readonly certificates: readonly KeptCertificate[]
  readonly tests: readonly KeptTest[]
  readonly decisions: readonly (Signed & { readonly decision: string; readonly why: string; readonly consequence: string })[]
  readonly signOffs: readonly (Signed & { readonly statement: string })[]
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

/** Keeps entries that are no readings. @throws Error in words; then none is kept */
export async function sendEntries(
  design: string,
  sent: { readonly who: string; readonly entries: readonly object[] },
): Promise<void> {
  await put(`${benchOf(design)}/entries`, sent)
}

/** Keeps readings. @returns how many. @throws Error in words; then none is kept */
export async function sendReadings(design: string, sent: SentReadings): Promise<number> {
  const { kept } = await put<{ readonly kept: readonly number[] }>(`${benchOf(design)}/readings`, sent)
  return kept.length
}

async function got<Answer>(address: string): Promise<Answer> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(await reasonOf(response))
  return (await response.json()) as Answer
}

async function put<Answer>(address: string, sent: object): Promise<Answer> {
  const headers = { 'Content-Type': 'application/json' }
  const response = await fetch(address, { method: 'POST', headers, body: JSON.stringify(sent) })
  if (!response.ok) throw new Error(await reasonOf(response))
  return (await response.json()) as Answer
}
