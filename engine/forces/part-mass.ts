/** Mass and centre of mass of the parts: as stated, or outline area × thickness × density. */
import type { Design, Point } from '../design/design.ts'
import type { PartMass } from './loads.ts'

/** One row for each moving part whose mass is known; the others are listed by `partsWithoutMass`. */
export function partMasses(design: Design): PartMass[] {
  return design.parts.flatMap((part, index) => {
    if (index === 0) return []
    const section = part.outline.length >= 3 ? polygonSection(part.outline) : undefined
    const centre = part.centreOfMass ?? section?.centre ?? middleOfHoles(part.holes)
    const volume_mm3 = section && part.thickness_mm !== undefined ? section.area_mm2 * part.thickness_mm : undefined
    const mass_kg = part.mass_kg ?? (volume_mm3 !== undefined && part.material ? volume_mm3 * part.material.density_kg_mm3 : undefined)
    return mass_kg !== undefined ? [{ part: index, mass_kg, centre }] : []
  })
}

/** Moving parts that have neither a mass nor outline, thickness and material to get one from. */
export function partsWithoutMass(design: Design): number[] {
  const known = new Set(partMasses(design).map((row) => row.part))
  return design.parts.map((_, index) => index).filter((index) => index > 0 && !known.has(index))
}

function middleOfHoles(holes: readonly { readonly at: Point }[]): Point {
  const count = Math.max(1, holes.length)
  return {
    x_mm: holes.reduce((sum, hole) => sum + hole.at.x_mm, 0) / count,
    y_mm: holes.reduce((sum, hole) => sum + hole.at.y_mm, 0) / count,
  }
}

/** Area and centroid of a closed polygon by the shoelace sums (any text on surveying, from memory). */
export function polygonSection(corners: readonly Point[]): { area_mm2: number; centre: Point } {
  let twice = 0
  let x = 0
  let y = 0
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length]
    const cross = corner.x_mm * next.y_mm - next.x_mm * corner.y_mm
    twice += cross
    x += (corner.x_mm + next.x_mm) * cross
    y += (corner.y_mm + next.y_mm) * cross
  })
  if (twice === 0) return { area_mm2: 0, centre: corners[0] }
  return { area_mm2: Math.abs(twice) / 2, centre: { x_mm: x / (3 * twice), y_mm: y / (3 * twice) } }
}
