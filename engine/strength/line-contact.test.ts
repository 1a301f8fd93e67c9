import { describe, expect, it } from 'vitest'
import { lineContact, SHEAR_BELOW_LINE_ratio } from './line-contact.ts'

const steel = { modulus_MPa: 200_000, poisson: 0.29 }

describe('a line contact', () => {
  it('is that of two equal steel cylinders in a textbook', () => {
    const found = lineContact({ force_N: 24_100, length_mm: 20, curvature_1_mm: 2 / 40, bodies: [steel, steel] })
    // SOURCE book (Boresi & Schmidt, Advanced Mechanics of Materials, ex. 17.3, p. 621, by a notebook that quotes it: 1445 and 433 MPa,
    // chart coefficients; worked out again exactly: half-width 0.53014 mm, 1447.0 MPa, 434.1 MPa)
    expect(found.halfWidth_mm).toBeCloseTo(0.53014, 4)
    expect(found.pressure_MPa).toBeCloseTo(1447.0, 0)
    expect(found.shear_MPa / 434.1).toBeCloseTo(1, 2)
    expect(found.pressure_MPa / 1445).toBeCloseTo(1, 2)
  })

  it('carries its force: half an ellipse of pressure over its width', () => {
    const asked = { force_N: 310, length_mm: 2, curvature_1_mm: 1 / 1.5, bodies: [steel, steel] } as const
    const { halfWidth_mm, pressure_MPa } = lineContact(asked)
    // SOURCE property (area of half an ellipse: π/2 b p₀ L = P)
    expect((Math.PI / 2) * halfWidth_mm * pressure_MPa * asked.length_mm).toBeCloseTo(asked.force_N, 9)
  })

  it('has its largest shear where a sum over the pressures has it', () => {
    // SOURCE other-method (line loads on a half-space, Flamant, summed over the ellipse; depth looked for in steps of b/500)
    let most = 0
    for (let depth = 0.5; depth < 1.1; depth += 0.002) most = Math.max(most, shearBelow(depth))
    expect(most).toBeCloseTo(SHEAR_BELOW_LINE_ratio, 3)
  })

  it('presses less the closer the socket fits', () => {
    const at = (curvature_1_mm: number) =>
      lineContact({ force_N: 100, length_mm: 5, curvature_1_mm, bodies: [steel, steel] }).pressure_MPa
    // SOURCE property (1/R falls from another round to a flat to a socket)
    expect(at(2 / 3)).toBeGreaterThan(at(1 / 3))
    expect(at(1 / 3)).toBeGreaterThan(at(1 / 3 - 1 / 3.2))
  })
})

/** Half the difference of the principal stresses on the middle line at a depth in half-widths, for p₀ = 1. */
function shearBelow(depth: number): number {
  const pieces = 4000
  let along = 0
  let down = 0
  for (let index = 0; index < pieces; index++) {
    const angle = -Math.PI / 2 + ((index + 0.5) * Math.PI) / pieces
    const at = Math.sin(angle)
    const load = Math.cos(angle) * Math.cos(angle) * (Math.PI / pieces)
    const far = (at * at + depth * depth) ** 2
    along += ((2 / Math.PI) * load * at * at * depth) / far
    down += ((2 / Math.PI) * load * depth ** 3) / far
  }
  return Math.abs(down - along) / 2
}
