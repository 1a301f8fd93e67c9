import type { Characteristic, Reading } from '../../engine/index.ts'

/** A reading as a bench book keeps it: the place of its characteristic, its visit and its value. */
export interface KeptFound {
  readonly characteristic: string
  readonly visit: 'before coating' | 'finished'
  readonly value?:
    | { readonly least: number; readonly most: number }
    | { readonly x_mm: number; readonly y_mm: number; readonly uncertainty_mm: number }
    | undefined
  /** Set where a later one corrects it. */
  readonly correctedBy?: number | undefined
  /** Set where the import that it came with was taken back. */
  readonly withdrawn?: object | undefined
}

/** Whether a reading counts: nobody corrected it or took it back, and it has a value. */
export const isStanding = ({ value, correctedBy, withdrawn }: KeptFound): boolean =>
  value !== undefined && correctedBy === undefined && withdrawn === undefined

/** A coater's certificate as a bench book keeps it. */
export interface KeptCoupons {
  readonly coating: string
  readonly coupons_mm: readonly number[]
  readonly correctedBy?: number
}

/**
 * What was found of one set, in the order of the plan: of each characteristic and visit the newest reading that counts; of a coating
 * the newest certificate of the lot, whose thinnest and thickest coupon take the place of its range.
 *
 * @param plan of the design as it is read today; readings of what is no longer in it are left out
 */
export function standingFound(
  plan: readonly Characteristic[],
  kept: { readonly readings: readonly KeptFound[]; readonly certificates: readonly KeptCoupons[] },
): readonly Reading[] {
  const standing = kept.readings.filter(isStanding)
  return plan.flatMap((characteristic) => {
    const read = (['before coating', 'finished'] as const).flatMap((visit) => {
      const newest = standing.findLast((one) => one.characteristic === characteristic.id && one.visit === visit)
      return newest?.value === undefined ? [] : [asReading(characteristic, { visit, value: newest.value })]
    })
    const coupons = kept.certificates.findLast(
      ({ coating, correctedBy }) => correctedBy === undefined && characteristic.id === `coatings.${coating}.thickness`,
    )
    if (read.length > 0 || coupons === undefined) return read
    return [{ characteristic, size: { least: Math.min(...coupons.coupons_mm), most: Math.max(...coupons.coupons_mm) } }]
  })
}

function asReading(
  characteristic: Characteristic,
  { visit, value }: { readonly visit: KeptFound['visit']; readonly value: NonNullable<KeptFound['value']> },
): Reading {
  if ('x_mm' in value) {
    const { uncertainty_mm, ...at } = value
    return { characteristic, at, uncertainty_mm }
  }
  return { characteristic, size: value, ...(visit === 'before coating' && { visit }) }
}
