import type { Part, Point } from './design.ts'

export interface Mass {
  readonly mass_kg: number
  /** In the part's own frame. */
  readonly centreOfMass: Point
}

interface Area {
  readonly area_mm2: number
  readonly centre: Point
}

/** Area and centre of a polygon that does not cross itself; either sense of its corners. */
function polygonArea(corners: readonly Point[]): Area | undefined {
  let twice = 0
  let x = 0
  let y = 0
  for (const [index, corner] of corners.entries()) {
    const next = corners[(index + 1) % corners.length]
    const cross = corner.x_mm * next.y_mm - next.x_mm * corner.y_mm
    twice += cross
    x += (corner.x_mm + next.x_mm) * cross
    y += (corner.y_mm + next.y_mm) * cross
  }
  if (!(Math.abs(twice) > 0)) return undefined
  return { area_mm2: Math.abs(twice) / 2, centre: { x_mm: x / (3 * twice), y_mm: y / (3 * twice) } }
}

/**
 * Mass and centre of mass of a part: as declared, else of a plate in the shape of its outline with its thickness and the
 * density of its material. Holes are not taken off: they are filled by pins of about the same weight.
 *
 * @returns undefined when neither is declared and the outline, thickness or material is missing
 */
export function partMass(part: Part): Mass | undefined {
  const area = polygonArea(part.outline)
  const centreOfMass = part.centreOfMass ?? area?.centre
  const mass_kg = part.mass_kg ?? plateMass_kg(part, area)
  if (mass_kg === undefined) return undefined
  if (mass_kg > 0) return centreOfMass && { mass_kg, centreOfMass }
  return { mass_kg, centreOfMass: centreOfMass ?? { x_mm: 0, y_mm: 0 } }
}

function plateMass_kg({ thickness_mm, material }: Part, area: Area | undefined): number | undefined {
  if (!area || thickness_mm === undefined || !material) return undefined
  return area.area_mm2 * thickness_mm * material.density_kg_mm3
}
