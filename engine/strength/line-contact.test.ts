import { describe, expect, it } from 'vitest'
import { lineContact, SHEAR_BELOW_LINE_ratio, shearOverPressure } from './line-contact.ts'
import { ellipticalContact } from './test-support/elliptical-contact.ts'

const friction_ratio = 0
const steel = { modulus_MPa: 200_000, poisson: 0.29 }

describe('a line contact', () => {
  it('is that of two equal steel cylinders in a textbook', () => {
    const found = lineContact({ force_N: 24_100, length_mm: 20, curvature_1_mm: 2 / 40, bodies: [steel, steel], friction_ratio })
    // SOURCE book (Boresi & Schmidt, Advanced Mechanics of Materials, ex. 17.3, p. 621, by a notebook that quotes it: 1445 and 433 MPa,
    // chart coefficients; worked out again exactly: half-width 0.53014 mm, 1447.0 MPa, 434.1 MPa)
    expect(found.halfWidth_mm).toBeCloseTo(0.53014, 4)
    expect(found.pressure_MPa).toBeCloseTo(1447.0, 0)
    expect(found.shear_MPa / 434.1).toBeCloseTo(1, 2)
    expect(found.pressure_MPa / 1445).toBeCloseTo(1, 2)
  })

  it('carries its force: half an ellipse of pressure over its width', () => {
    const asked = { force_N: 310, length_mm: 2, curvature_1_mm: 1 / 1.5, bodies: [steel, steel], friction_ratio } as const
    const { halfWidth_mm, pressure_MPa } = lineContact(asked)
    // SOURCE property (area of half an ellipse: π/2 b p₀ L = P)
    expect((Math.PI / 2) * halfWidth_mm * pressure_MPa * asked.length_mm).toBeCloseTo(asked.force_N, 9)
  })

  it('is the limit of a point contact that grows long, and that of a textbook is found', () => {
    const softness_1_MPa = (2 * (1 - 0.29 ** 2)) / 200_000
    const [one, other, sum] = [1 / 60 - 1 / 130, 1 / 80 - 1 / 200, 1 / 60 + 1 / 130 + 1 / 80 + 1 / 200]
    const apart = Math.sqrt(one ** 2 + other ** 2 + 2 * one * other * Math.cos((120 * Math.PI) / 180))
    const curvatures = { alongCurvature_1_mm: (sum - apart) / 2, acrossCurvature_1_mm: (sum + apart) / 2 }
    const book = ellipticalContact({ force_N: 4500, ...curvatures, softness_1_MPa })
    // SOURCE book (Boresi & Schmidt, Advanced Mechanics of Materials, ex. 17.1, p. 607, by a notebook that quotes it: 1597 MPa with chart
    // coefficients, good to 3 %; worked out again exactly: semi-axes 1.3086 and 1.0000 mm, 1641.9 MPa)
    expect(curvatures.acrossCurvature_1_mm / curvatures.alongCurvature_1_mm).toBeCloseTo(1.497, 3)
    expect([book.a_mm, book.b_mm]).toEqual([expect.closeTo(1.3086, 3), expect.closeTo(1, 3)])
    expect(book.pressure_MPa).toBeCloseTo(1641.9, 0)
    expect(Math.abs(book.pressure_MPa / 1597 - 1)).toBeLessThan(0.03)
    const long = ellipticalContact({ force_N: 4500, alongCurvature_1_mm: 1e-7, acrossCurvature_1_mm: 0.05, softness_1_MPa })
    // SOURCE other-method (in its middle a long ellipse carries π/2 b p₀ for each millimetre, and is as wide as a line contact of that load)
    const force_N = (Math.PI / 2) * long.b_mm * long.pressure_MPa
    const line = lineContact({ force_N, length_mm: 1, curvature_1_mm: 0.05, bodies: [steel, steel], friction_ratio })
    expect(line.pressure_MPa / long.pressure_MPa).toBeCloseTo(1, 4)
    expect(line.halfWidth_mm / long.b_mm).toBeCloseTo(1, 4)
  })

  it('has its largest shear where a sum over the pressures has it', () => {
    // SOURCE other-method (line loads on a half-space, Flamant, summed over the ellipse; depth looked for in steps of b/500)
    let most = 0
    for (let depth = 0.5; depth < 1.1; depth += 0.002) most = Math.max(most, shearBelow(depth))
    expect(most).toBeCloseTo(SHEAR_BELOW_LINE_ratio, 3)
  })

  it.each([0, 0.1, 0.18, 0.3, 0.37])('rubbed with μ = %s shears most where a sum over pressure and friction does', (friction) => {
    // SOURCE other-method (line loads along and across the surface, Flamant, summed over the ellipse; looked for in steps of 0.03 b)
    let most = 0
    for (let x = 0; x < 1; x += 0.03) for (let z = 0.15; z < 0.85; z += 0.03) most = Math.max(most, shearAt({ x, z }, friction))
    expect(Math.abs(most - shearOverPressure(friction))).toBeLessThan(0.001)
  })

  it('rubbed harder shears evenly over its surface', () => {
    // SOURCE other-method (the same sum just below the surface: half of the difference is nothing there, so that the friction is all there is)
    for (const x of [-0.6, 0, 0.5]) expect(shearAt({ x, z: 0.02 }, 0.6)).toBeCloseTo(0.6, 1)
    // SOURCE property (no step from one rule to the other, and friction never helps)
    expect(shearOverPressure(0.3761) - shearOverPressure(0.3759)).toBeLessThan(1e-3)
    expect([0, 0.1, 0.2, 0.5].map(shearOverPressure)).toEqual([0, 0.1, 0.2, 0.5].map(shearOverPressure).toSorted())
    expect(shearOverPressure(0.6)).toBe(0.6)
  })

  it('presses less the closer the socket fits', () => {
    const at = (curvature_1_mm: number) =>
      lineContact({ force_N: 100, length_mm: 5, curvature_1_mm, bodies: [steel, steel], friction_ratio }).pressure_MPa
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

/** Largest shear stress in the plane at a place in half-widths, the surface rubbed along x with μ p, for p₀ = 1. */
function shearAt({ x, z }: { readonly x: number; readonly z: number }, friction: number): number {
  const pieces = 300
  let along = 0
  let down = 0
  let sheared = 0
  for (let index = 0; index < pieces; index++) {
    const angle = -Math.PI / 2 + ((index + 0.5) * Math.PI) / pieces
    const away = x - Math.sin(angle)
    const load = (2 / Math.PI) * Math.cos(angle) ** 2 * (Math.PI / pieces)
    // A line load points at the place: all of its stress acts along that ray.
    const ray = (load * (z + friction * away)) / (away * away + z * z) ** 2
    along -= ray * away * away
    down -= ray * z * z
    sheared -= ray * away * z
  }
  return Math.hypot((along - down) / 2, sheared)
}
