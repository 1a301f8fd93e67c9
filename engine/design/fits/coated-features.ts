import type { Coating, Dimension, Part, Pin, Tolerance } from '../design.ts'
import type { Document } from '../document.ts'
import { isMasked } from '../masked-faces.ts'
import { type CoatedSurface, changeOfSize } from './coated-size.ts'

/** A diameter that a coating changes. */
export interface CoatedFeature {
  /** Of the pin or hole. */
  readonly place: string
  readonly surface: CoatedSurface
  readonly coating: Coating
  readonly nominal_mm: number
  /** Its own tolerance, or that of the dimension that is its diameter; of the finished size. */
  readonly tolerance?: Tolerance
  /** The dimension whose name alone stands as its diameter. */
  readonly dimension?: string
}

interface Drawn {
  readonly document: Document
  readonly dimensions: readonly Dimension[]
  readonly parts: readonly Part[]
  readonly pins: readonly Pin[]
}

/** All coated diameters, holes first. */
export function coatedFeatures({ document, dimensions, parts, pins }: Drawn): readonly CoatedFeature[] {
  const named = new Map(dimensions.map((dimension) => [dimension.name, dimension]))
  const feature = (
    place: string,
    {
      typed,
      own,
      ...rest
    }: { typed: string; own: Tolerance | undefined } & Pick<CoatedFeature, 'surface' | 'coating' | 'nominal_mm'>,
  ): CoatedFeature => {
    const dimension = named.get(typed.trim())
    const tolerance = own ?? dimension?.tolerance
    return { place, ...rest, ...(tolerance && { tolerance }), ...(dimension && !own && { dimension: dimension.name }) }
  }
  const ofParts = parts.flatMap((part) =>
    part.holes.flatMap((hole) => {
      const { id, coating } = part
      if (coating === undefined || isMasked(part, `holes.${hole.id}`)) return []
      const typed = document.parts?.[id]?.holes?.[hole.id]?.diameter ?? ''
      const sized = { typed, own: hole.tolerance, surface: 'hole', coating, nominal_mm: hole.diameter_mm } as const
      return [feature(`parts.${id}.holes.${hole.id}`, sized)]
    }),
  )
  const ofPins = pins.flatMap(({ id, coating, tolerance, diameter_mm }) => {
    const typed = document.pins?.[id]?.diameter ?? ''
    return coating === undefined
      ? []
      : [feature(`pins.${id}`, { typed, own: tolerance, surface: 'pin', coating, nominal_mm: diameter_mm })]
  })
  return [...ofParts, ...ofPins]
}

/** How far the coating of a feature may be off the middle of its range, as a change of the diameter either way. */
export function spreadOfChange_mm({ coating, surface }: CoatedFeature): number {
  const { least_mm, most_mm } = changeOfSize(coating, surface)
  return (most_mm - least_mm) / 2
}
