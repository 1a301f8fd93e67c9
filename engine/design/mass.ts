import type { Part, Point } from './design.ts'
import { polygon } from './polygon.ts'

export interface Mass {
  readonly mass_kg: number
  /** In the part's own frame. */
  readonly centreOfMass: Point
}

/**
 * Mass and centre of mass of a part: as declared, else of a plate in the shape of its outline with its thickness and the
 * density of its material. Holes are not taken off: they are filled by pins of about the same weight.
 *
 * @returns undefined when neither is declared and the outline, thickness or material is missing; the centre of a part without
 *          mass does not matter and may be the origin
 */
export function partMass(part: Part): Mass | undefined {
  const shape = part.outline.length > 0 ? polygon(part.outline) : undefined
  const mass_kg = part.mass_kg ?? plateMass_kg(part, shape?.area_mm2)
  const centreOfMass = part.centreOfMass ?? shape?.centre ?? (mass_kg === 0 ? { x_mm: 0, y_mm: 0 } : undefined)
  return mass_kg !== undefined && centreOfMass ? { mass_kg, centreOfMass } : undefined
}

function plateMass_kg({ thickness_mm, material }: Part, area_mm2: number | undefined): number | undefined {
  if (area_mm2 === undefined || thickness_mm === undefined || !material) return undefined
  return area_mm2 * thickness_mm * material.density_kg_mm3
}
