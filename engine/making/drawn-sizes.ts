/**
 * Sizes as a drawing states them: each with the limits that the shop works to, and before a coating those that the coated size needs.
 *
 * A design holds numbers; which of them is a dimension with a tolerance stands only in the document, where its name alone is the value.
 */
import type { Hole, Part, Pin, Tolerance } from '../design/design.ts'
import type { Checked } from '../design/problem.ts'
import { readRecipe } from '../design/read-design.ts'
import { readVariation } from '../variation/sources/read-variation.ts'
import type { Variation } from '../variation/sources/source.ts'

/** Largest and smallest size that passes, mm. */
export interface Limits {
  readonly least: number
  readonly most: number
}

/** A length with its own limits; without them the general tolerance holds. */
export interface DrawnSize {
  readonly nominal_mm: number
  readonly limits?: Limits
  /** The zone or class by its name, such as `H7`. */
  readonly zone?: string
}

export interface DrawnHole {
  readonly hole: Hole
  readonly x: DrawnSize
  readonly y: DrawnSize
  readonly diameter: DrawnSize
  /** Limits of the diameter before it is coated. */
  readonly beforeCoating?: Limits
}

export interface DrawnPart {
  readonly part: Part
  readonly holes: readonly DrawnHole[]
}

export interface DrawnPin {
  readonly pin: Pin
  readonly diameter: DrawnSize
  readonly beforeCoating?: Limits
}

/** A design as it goes to the shop. */
export interface ShopDesign {
  readonly variation: Variation
  readonly parts: readonly DrawnPart[]
  readonly pins: readonly DrawnPin[]
}

/** @param text of a document, as for `readDesign`; with a problem it gives its problems */
export function readShopDesign(text: string, name = 'design'): Checked<ShopDesign> {
  const { value: recipe, problems } = readRecipe(text, name)
  const { value: variation } = readVariation(text, name)
  if (!recipe || !variation) return { problems: problems ?? [] }
  const { design, document } = recipe
  const named = new Map(design.dimensions.map((dimension) => [dimension.name, dimension.tolerance]))
  const before = new Map(variation.beforeCoating.map((size) => [size.place, size.before]))
  const size = (nominal_mm: number, typed: string | undefined, own?: Tolerance): DrawnSize => {
    const tolerance = own ?? named.get((typed ?? '').trim())
    return { nominal_mm, ...(tolerance && limited(nominal_mm, tolerance)) }
  }
  const coated = (place: string) => {
    const limits = before.get(place)
    return limits && { beforeCoating: limits }
  }
  const parts = design.parts.map((part) => {
    const holes = part.holes.map((hole): DrawnHole => {
      const typed = document.parts?.[part.id]?.holes?.[hole.id]
      const diameter = size(hole.diameter_mm, typed?.diameter, hole.tolerance)
      const place = { x: size(hole.at.x_mm, typed?.x), y: size(hole.at.y_mm, typed?.y) }
      return { hole, ...place, diameter, ...coated(`parts.${part.id}.holes.${hole.id}`) }
    })
    return { part, holes }
  })
  const pins = design.pins.map((pin): DrawnPin => {
    const diameter = size(pin.diameter_mm, document.pins?.[pin.id]?.diameter, pin.tolerance)
    return { pin, diameter, ...coated(`pins.${pin.id}`) }
  })
  return { value: { variation, parts, pins } }
}

function limited(nominal_mm: number, tolerance: Tolerance): Pick<DrawnSize, 'limits' | 'zone'> {
  const limits = { least: nominal_mm + tolerance.lower, most: nominal_mm + tolerance.upper }
  return { limits, ...(tolerance.kind === 'zone' && { zone: tolerance.zone }) }
}
