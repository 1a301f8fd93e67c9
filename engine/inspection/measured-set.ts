/** One set as it was measured: its readings in place of the sizes that were drawn. */
import type { Design } from '../design/design.ts'
import type { Checked } from '../design/problem.ts'
import type { Variation } from '../variation/sources/source.ts'
import type { Limits } from './capability.ts'
import { type Conformity, conformity, type Found } from './guard-band.ts'
import type { Characteristic } from './inspection-plan.ts'

/** What was found of one characteristic of one set: a size as an interval, or where the hole lies in the part's frame, mm. */
export type Reading = { readonly characteristic: Characteristic } & (
  | { readonly size: Found }
  | { readonly at: { readonly x_mm: number; readonly y_mm: number }; readonly uncertainty_mm: number }
)

/** Readings of one set as the values of its sources, and what was not measured. */
export interface MeasuredSet {
  /** One a source: as measured, else as drawn; of an interval its middle. Friction is not measured here: NaN, its whole range. */
  readonly values: Float64Array
  /** Places of the sources that stand at their nominal because nobody measured them. */
  readonly unmeasured: readonly number[]
}

/** @param readings of different characteristics of `variation` */
export function measuredSet({ sources }: Variation, readings: readonly Reading[]): MeasuredSet {
  const values = Float64Array.from(sources, ({ id, nominal }) => (id.startsWith('friction.') ? Number.NaN : nominal))
  const measured = new Set<number>()
  for (const reading of readings) {
    const found = 'size' in reading ? [middle(reading.size)] : sharesOfZone(reading)
    for (const [index, source] of reading.characteristic.sources.entries()) {
      values[source] = found[index]
      measured.add(source)
    }
  }
  const unmeasured = sources.flatMap((source, index) => (measured.has(index) || source.of === 'wearers' ? [] : [index]))
  return { values, unmeasured }
}

/** The design of a set as it was measured. @returns problems where it cannot be built, such as a pin that is thicker than its hole */
export function measuredDesign(variation: Variation, { values }: MeasuredSet): Checked<Design> {
  return variation.setOf(values)
}

const middle = ({ least, most }: Found): number => (least + most) / 2

function sharesOfZone({ characteristic: { place }, at }: Extract<Reading, { readonly at: object }>): readonly number[] {
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
  return { least: off_mm - reading.uncertainty_mm, most: off_mm + reading.uncertainty_mm }
}

/** Whether a reading shows that its characteristic keeps what the drawing allows. A place has no least distance. */
export function readingConformity(reading: Reading): Conformity {
  const { kind, least, most } = reading.characteristic
  const limits: Limits = kind === 'position' ? { most } : { least, most }
  return conformity(foundOf(reading), limits)
}
