/** One set as it was measured: its readings in place of the sizes that were drawn. */
import type { Design } from '../design/design.ts'
import type { Checked } from '../design/problem.ts'
import type { MadeDiameter } from '../variation/sources/diameter.ts'
import type { Variation } from '../variation/sources/source.ts'
import type { Limits } from './capability.ts'
import { type Conformity, conformity, type Found } from './guard-band.ts'
import type { Characteristic } from './inspection-plan.ts'

/**
 * What was found of one characteristic of one set: a size as an interval, or where the hole lies in the part's frame, mm. A coated diameter
 * may have been measured at the visit before the coating; then it is judged by the shop's limits and grows or shrinks by its coating.
 */
export type Reading = { readonly characteristic: Characteristic } & (
  | { readonly size: Found; readonly visit?: MadeDiameter['visit'] }
  | { readonly at: { readonly x_mm: number; readonly y_mm: number }; readonly uncertainty_mm: number }
)

/** Readings of one set as the values of its sources and its diameters, and what was not measured. */
export interface MeasuredSet {
  /** One a source: as measured, else as drawn; of an interval its middle. Friction is not measured here: NaN, its whole range. */
  readonly values: Float64Array
  /** By the place of the pin or hole. */
  readonly diameters: ReadonlyMap<string, MadeDiameter>
  /** Places of the sources that stand at their nominal because nobody measured them. */
  readonly unmeasured: readonly number[]
}

/** Readings that say what the piece is now: one before the coating gives way to one with the coating on. */
export function standingReadings(readings: readonly Reading[]): readonly Reading[] {
  const isEarlier = (reading: Reading): boolean => 'size' in reading && reading.visit === 'before coating'
  const finished = new Set(readings.filter((reading) => !isEarlier(reading)).map(({ characteristic }) => characteristic.id))
  return readings.filter((reading) => !isEarlier(reading) || !finished.has(reading.characteristic.id))
}

/** @param all of `variation`, of each characteristic one, or one for each visit */
export function measuredSet({ sources }: Variation, all: readonly Reading[]): MeasuredSet {
  const readings = standingReadings(all)
  const values = Float64Array.from(sources, ({ id, nominal }) => (id.startsWith('friction.') ? Number.NaN : nominal))
  const diameters = new Map<string, MadeDiameter>()
  const measured = new Set<number>()
  for (const reading of readings) {
    const { characteristic } = reading
    if (characteristic.diameter !== undefined && 'size' in reading) {
      diameters.set(characteristic.diameter, { value_mm: middle(reading.size), visit: reading.visit ?? 'finished' })
      continue
    }
    const found = 'size' in reading ? [middle(reading.size)] : sharesOfZone(reading)
    for (const [index, source] of characteristic.sources.entries()) {
      values[source] = found[index]
      measured.add(source)
    }
  }
  const unmeasured = sources.flatMap((source, index) => (measured.has(index) || source.of === 'wearers' ? [] : [index]))
  return { values, diameters, unmeasured }
}

/** The design of a set as it was measured. @returns problems where it cannot be built, such as a pin that is thicker than its hole */
export function measuredDesign(variation: Variation, { values, diameters }: MeasuredSet): Checked<Design> {
  return variation.setOf(values, diameters)
}

const middle = ({ least, most }: Found): number => (least + most) / 2

/** Where a hole was found, in shares of the radius of its zone. */
export function sharesOfZone({
  characteristic: { place },
  at,
}: Extract<Reading, { readonly at: object }>): readonly [number, number] {
  if (!place) throw new Error('a place was measured of what is no position')
  const radius_mm = place.zone_mm / 2
  return [(at.x_mm - place.x_mm) / radius_mm, (at.y_mm - place.y_mm) / radius_mm]
}

/** What was found as its characteristic is limited: a size by itself, a place by its distance from the true one. */
export function foundOf(reading: Reading): Found {
  if ('size' in reading) return reading.size
  const { place } = reading.characteristic
  if (!place) throw new Error('a place was measured of what is no position')
  const off_mm = Math.hypot(reading.at.x_mm - place.x_mm, reading.at.y_mm - place.y_mm)
  return { least: Math.max(0, off_mm - reading.uncertainty_mm), most: off_mm + reading.uncertainty_mm }
}

/** What a reading is judged by: the drawing, or before the coating what the shop works to. A place has no least distance. */
export function limitsFor(reading: Reading): Limits {
  const { kind, least, most, before } = reading.characteristic
  if (kind === 'position') return { most }
  return 'size' in reading && reading.visit === 'before coating' && before ? before : { least, most }
}

/** Whether a reading shows that its characteristic keeps what the drawing allows. */
export function readingConformity(reading: Reading): Conformity {
  return conformity(foundOf(reading), limitsFor(reading))
}
