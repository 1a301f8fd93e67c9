/**
 * What varies from one set to the next: the interface between the reading of a document and the counting of samples.
 *
 *     text ─▶ readVariation ─▶ Variation { design, sources, setOf }
 *     independent standard normal numbers, one a source ─▶ valuesAt(sources, …) ─▶ setOf(values) ─▶ Design ─▶ figures
 *
 * Sources are independent of one another. What is shared (one film on many surfaces, one bar for many pins) is one source that moves them all.
 */
import type { Design } from '../../design/design.ts'
import type { Checked } from '../../design/problem.ts'
import type { MadeDiameter, TolerancedDiameter } from './diameter.ts'

/** How the values of a source are spread, in its own unit. */
export type Law =
  /** At a stated capability: so many standard deviations fit between the mean and the nearer limit. It has no ends. */
  | { readonly kind: 'normal'; readonly mean: number; readonly deviation: number }
  /** The same with what is outside of the limits sorted out. `mean` and `deviation` are those before the cut. */
  | {
      readonly kind: 'truncatedNormal'
      readonly mean: number
      readonly deviation: number
      readonly least: number
      readonly most: number
    }
  | { readonly kind: 'uniform'; readonly least: number; readonly most: number }
  /**
   * One coordinate of a place that is spread evenly over a round zone, in shares of the zone's radius. The two sources of a zone stand one
   * after the other, x first. Each alone is not uniform, and the two are not independent: `valuesAt` makes them from two normal numbers.
   */
  | { readonly kind: 'disc'; readonly axis: 'x' | 'y'; readonly deviation?: number }
  /** Measured, in ascending order; every one as likely as the next. */
  | { readonly kind: 'sample'; readonly values: readonly number[] }

/** Unit of a source's values: an inside unit, or 1 for shares. */
export type SourceUnit = 'mm' | 'rad' | 'N' | 'N·mm' | 'N/mm' | 'N·mm/rad' | 'MPa' | 'kg' | 'kg/mm³' | '1'

/** One thing that is different in every set, or in every wearer. */
export interface Source {
  /** Place in the document, e.g. `dimensions.topLinkLength`, `parts.middle.holes.dip.position.x` or `coatings.film.thickness`. */
  readonly id: string
  /** In words, e.g. `part middle hole dip: position, x`. */
  readonly words: string
  readonly unit: SourceUnit
  /** The value at which the design is the one that was typed. */
  readonly nominal: number
  readonly law: Law
  /** What the drawing allows, for the worst case. A zone allows the disc x² + y² ≤ 1 only, not the square. */
  readonly least: number
  readonly most: number
  /** Wearers are not sets: the share of wearers is told apart from the yield. */
  readonly of: 'sets' | 'wearers'
  /** The zone is measured from no hole of its part: nobody can inspect it, and distances on the part vary by two zones. */
  readonly needsDatum?: true
}

/** A diameter that the shop makes and the coater finishes, mm. */
export interface SizeBeforeCoating {
  /** Of the pin or hole in the document. */
  readonly place: string
  readonly words: string
  readonly coating: string
  /** Limits of the coated size. */
  readonly finished: { readonly least: number; readonly most: number }
  /** Limits before coating, with which every batch within its range comes out within `finished`. */
  readonly before: { readonly least: number; readonly most: number }
}

/** A design with all that varies in it. */
export interface Variation {
  /** As typed. */
  readonly design: Design
  readonly sources: readonly Source[]
  /** Places of sizes that have no tolerance, neither their own nor a general one; they are held at their nominal. */
  readonly untolerated: readonly string[]
  readonly beforeCoating: readonly SizeBeforeCoating[]
  /** Every limited diameter by itself, also those that share a dimension. */
  readonly diameters: readonly TolerancedDiameter[]
  /**
   * The design of one set.
   *
   * @param values one a source, in its unit and in the order of `sources`; those at `nominal` give `design` itself, but for friction, of which
   *               `nominal` is the likely one and NaN the range that was typed
   * @param made diameters that were measured, by the place of their pin or hole; they stand in the place of what the sources say of them
   * @returns problems where no set can be built of such sizes, such as a pin that is thicker than its hole
   */
  readonly setOf: (values: ArrayLike<number>, made?: ReadonlyMap<string, MadeDiameter>) => Checked<Design>
}
