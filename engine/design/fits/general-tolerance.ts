/**
 * Sizes without a tolerance of their own: the classes of ISO 2768-1 for lengths and angles. Its part 2, the second letter of a note such as
 * ISO 2768-mK, was withdrawn in 2021; its successor ISO 22081 has no classes, so that such a letter says nothing any more and is refused.
 */
import table from '../../../tables/iso-2768.json' with { type: 'json' }
import angles from '../../../tables/iso-2768-angles.json' with { type: 'json' }
import { band, bounds } from './band.ts'

/** Fine, medium, coarse and very coarse. */
export const generalClasses = ['f', 'm', 'c', 'v'] as const
export type GeneralClass = (typeof generalClasses)[number]

const rows = new Map<string, Readonly<Record<string, number | undefined>>>(table.map((row) => [row.class, row.mm]))
/** The class m has all bands. */
const allBounds = bounds(rows.get('m') ?? {})
/** Below it the standard gives nothing: such a size needs a tolerance of its own. */
const least_mm = 0.5

/**
 * How far a length without a tolerance of its own may lie from its nominal, either way.
 *
 * @returns undefined where the class has no value: below 0.5 mm, above 2 m, and for v up to 3 mm
 */
export function generalDeviation_mm(name: GeneralClass, size_mm: number): number | undefined {
  const at = size_mm < least_mm ? undefined : band(size_mm, allBounds)
  return at === undefined ? undefined : rows.get(name)?.[at]
}

const angleRows = new Map<string, Readonly<Record<string, number>>>(angles.map((row) => [row.class, row.minutes]))
const angleBounds = bounds(angleRows.get('m') ?? {})
const minute_rad = Math.PI / (180 * 60)

/**
 * How far an angle without a tolerance of its own may lie from its nominal, either way.
 *
 * @param side_mm the shorter of its sides: the shorter it is, the less its direction can be held
 * @returns rad; undefined above 400 mm, which no finger has
 */
export function generalDeviation_rad(name: GeneralClass, side_mm: number): number | undefined {
  const at = band(side_mm, angleBounds)
  const minutes = at === undefined ? undefined : angleRows.get(name)?.[at]
  return minutes === undefined ? undefined : minutes * minute_rad
}
