/**
 * Sizes before a coating, so that the coated part meets its limits.
 *
 * A coating of thickness t, of which a share grows into the metal, moves its surface outwards by b = t (1 − inward). A pin grows by 2 b and a
 * hole shrinks by 2 b. A flank of a thread at 30° to the axis' normal moves the pitch diameter by b / sin 30° = 2 b a side, 4 b in all. As t
 * differs from batch to batch, what is left for the shop is the tolerance less the range of the change.
 */
import type { Coating } from '../design.ts'
import type { Deviations, ZoneFault } from './deviations.ts'

/** Surfaces by what a coating does to their size. */
export type CoatedSurface = 'pin' | 'hole' | 'outer thread' | 'inner thread'

const changes = { pin: 2, hole: -2, 'outer thread': 4, 'inner thread': -4 } as const
const bores: ReadonlySet<CoatedSurface> = new Set(['hole', 'inner thread'])

/** Change of a diameter (of a thread its pitch diameter) over the thickness outside; negative for holes, which shrink. */
export function changePerThickness({ inward_ratio, bore_ratio }: Coating, surface: CoatedSurface): number {
  return changes[surface] * (1 - inward_ratio) * (bores.has(surface) ? bore_ratio : 1)
}

/** How far a diameter is changed by the thinnest and by the thickest batch, the smaller (more negative) first. */
export function changeOfSize(coating: Coating, surface: CoatedSurface): { readonly least_mm: number; readonly most_mm: number } {
  const per = changePerThickness(coating, surface)
  const [one, other] = [per * coating.thickness.least_mm, per * coating.thickness.most_mm]
  return { least_mm: Math.min(one, other), most_mm: Math.max(one, other) }
}

/** A window that is exactly used up by the range of the coating closes within rounding of typed inches. */
const rounding_mm = 1e-9

/**
 * Limits before coating, as deviations from the finished nominal.
 *
 * @param finished limits of the coated size
 * @returns a fault with the numbers when the coating's range takes up more than the tolerance
 */
export function beforeCoating(
  finished: Deviations,
  change: { readonly least_mm: number; readonly most_mm: number },
): { readonly deviations: Deviations; readonly fault?: never } | { readonly deviations?: never; readonly fault: ZoneFault } {
  const before = { lower_mm: finished.lower_mm - change.least_mm, upper_mm: finished.upper_mm - change.most_mm }
  const isOpen = !(before.upper_mm < before.lower_mm - rounding_mm)
  if (isOpen) return { deviations: before }
  const width_mm = finished.upper_mm - finished.lower_mm
  const [least, most] = [change.least_mm, change.most_mm].map(micrometres)
  return {
    fault: {
      code: 'contradiction',
      found: `a tolerance of ${micrometres(width_mm)} µm on a size that its coating changes by ${least} to ${most} µm`,
      needed: `a tolerance of more than ${micrometres(change.most_mm - change.least_mm)} µm`,
      wayOut: 'Widen the tolerance, mask the surface, or state the narrower range that your coater keeps.',
    },
  }
}

const micrometres = (mm: number): string => `${Number((mm * 1000).toPrecision(4))}`
