/**
 * Sizes without a tolerance of their own: the classes of ISO 2768-1 for lengths. Its part 2, the second letter of a note such as
 * ISO 2768-mK, was withdrawn in 2021; its successor ISO 22081 has no classes, so that such a letter says nothing any more and is refused.
 */
import table from '../../../tables/iso-2768.json' with { type: 'json' }
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
