import { expect, it } from 'vitest'
import { inventedDesign, inventedForces, inventedTravel } from '../test-support/invented-finger.ts'
import { forceLine } from './force-line.ts'

const RAD = Math.PI / 180
const [L, a] = [24.507, 5.867]

/** A toggle laid out by hand: A at the origin, B at (L, 0), C at δ off the line, all friction circles of one size. */
function laidOut(margin_rad: number, lever_mm: number) {
  const posture = { ...inventedTravel.postures[60] }
  const C = { x_mm: L + a * Math.cos(margin_rad), y_mm: a * Math.sin(margin_rad) }
  const pinsAt = posture.pinsAt.map((at, pin) =>
    pin === 5 ? { x_mm: 0, y_mm: 0 } : pin === 6 ? { x_mm: L, y_mm: 0 } : pin === 2 ? C : at,
  )
  const forces = inventedForces({ ...posture, pinsAt })
  const circles = forces.pins.map((pin) => ({ ...pin, frictionCircle_mm: lever_mm }))
  const links = forces.linkLines.map((link) => ({ ...link, tension_N: 0 }))
  return forceLine({ design: inventedDesign, forces: { ...forces, pins: circles, linkLines: links }, toggle: 0 })
}

it('touches the friction circle of C exactly at the jam angle in closed form', () => {
  const lever = 0.2
  const jam = Math.asin((2 * lever) / a) + Math.asin((2 * lever) / L)
  // SOURCE other-method: jamAngle = asin((ρB + ρC)/a) + asin((ρA + ρB)/L), docs/theory
  expect(laidOut(jam, lever)?.distance_mm).toBeCloseTo(lever, 9)
  expect(laidOut(jam + 0.5 * RAD, lever)?.distance_mm).toBeGreaterThan(lever)
  expect(laidOut(jam - 0.5 * RAD, lever)?.distance_mm).toBeLessThan(lever)
})

it('runs through C where the circles of A and B allow it', () => {
  // SOURCE property: straight, a line through A, B and C touches no circle at all
  expect(laidOut(0, 0.2)?.distance_mm).toBe(0)
})

it('is the line of the force where the link carries one', () => {
  const posture = inventedTravel.postures[60]
  const forces = inventedForces(posture)
  const line = forceLine({ design: inventedDesign, forces, toggle: 0 })
  expect(line?.tension_N).toBe(forces.linkLines[0].tension_N)
  expect(line?.direction_rad).toBe(forces.linkLines[0].direction_rad)
})

it('does not exist without friction circles', () => {
  const forces = { ...inventedForces(inventedTravel.postures[60]), pins: [] }
  expect(forceLine({ design: inventedDesign, forces, toggle: 0 })).toBeUndefined()
})
