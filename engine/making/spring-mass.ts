/**
 * What a spring weighs: the length of its wire, drawn out, times its section and its density.
 *
 *     torsion       l = π D n + legs
 *     compression   l = √((π D n)² + L₀²), all coils
 *     tension       l = π D n + two hooks, each a whole round: 2π of its loop, or of the coil where no hook is stated
 *
 * A helix of n turns and height h, unrolled, is the long side of a triangle of π D n and h. The small slope of a close-wound body is left out.
 */
import table from '../../tables/wire-densities.json' with { type: 'json' }
import type { Spring } from '../design/design.ts'
import { parseQuantity } from '../numbers/quantity.ts'

/** Mass of one coil. @returns kg; undefined where the document does not state the wire */
export function springMass_kg(spring: Spring): number | undefined {
  const { wire } = spring
  if (wire === undefined) return undefined
  const density_kg_mm3 = densities.get(wire.material.name)
  if (density_kg_mm3 === undefined) throw new Error(`table of wire densities: no row for ${wire.material.name}`)
  const section_mm2 = (Math.PI / 4) * wire.wire_mm ** 2
  return wireLength_mm(spring) * section_mm2 * density_kg_mm3
}

/** Coils that stand side by side and do together what the design calls one spring. */
export function springsSideBySide(spring: Spring): number {
  return spring.kind === 'torsion' ? (spring.wire?.springs_count ?? 1) : 1
}

function wireLength_mm(spring: Spring): number {
  if (spring.kind === 'torsion' && spring.wire) {
    const { mean_mm, bodyTurns, legs_mm } = spring.wire
    return Math.PI * mean_mm * bodyTurns + legs_mm
  }
  if (spring.kind === 'compression' && spring.wire) {
    const { mean_mm, coils } = spring.wire
    return Math.hypot(Math.PI * mean_mm * coils, spring.freeLength_mm)
  }
  if (spring.kind === 'tension' && spring.wire) {
    const { mean_mm, bodyTurns, hook } = spring.wire
    return Math.PI * mean_mm * bodyTurns + 2 * 2 * Math.PI * (hook?.loop_mm ?? mean_mm / 2)
  }
  throw new Error(`spring ${spring.id} has no wire to weigh`)
}

const densities = new Map(table.flatMap(({ wires, density }) => wires.map((wire) => [wire, densityOf(density)] as const)))

function densityOf(text: string): number {
  const read = parseQuantity(text, 'density')
  if (read.fault) throw new Error(`table of wire densities: ${text}: ${read.fault.found}`)
  return read.value
}
