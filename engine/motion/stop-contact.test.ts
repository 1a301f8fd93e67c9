import { describe, expect, it } from 'vitest'
import type { Edge, Stop } from '../design/design.ts'
import { seeded } from '../sketches/seeded.ts'
import { oneFriction, sketch } from '../sketches/sketch.ts'
import { mechanismOf } from './mechanism.ts'
import { derivativeOf } from './path.ts'
import { stopContact, stopGap } from './stop-contact.ts'

const straight: Edge = { id: 'e', kind: 'straight', from: { x_mm: 0, y_mm: 0 }, to: { x_mm: 10, y_mm: 0 } }
const arc = { id: 'e', kind: 'arc', centre: { x_mm: 0, y_mm: 0 }, radius_mm: 5, from_rad: 0, to_rad: Math.PI / 2 } as const
const hump: Edge = { ...arc, solid: 'inside' }
const bowl: Edge = { ...arc, solid: 'outside' }

/** A round of 1 mm at the origin of part 1, an edge on part 2; both parts free to be put anywhere. */
function contactOf(
  edge: Edge,
  round: readonly [number, number],
  frame: readonly [number, number, number] = [0, 0, 0],
  gap_mm = 0,
) {
  const design = sketch({
    parts: [
      { id: 'mount', holes: { o: [0, 0] } },
      { id: 'round', holes: { o: [0, 0] } },
      { id: 'block', holes: { o: [0, 0] }, edges: [edge] },
    ],
    pins: [{ id: 'o', joins: ['mount.o', 'round.o'] }],
    drive: { part: 'round', pin: 'o', open: 0, closed: 1 },
  })
  const mechanism = mechanismOf(design)
  const contact: Stop = {
    id: 's',
    round: { part: 1, at: { x_mm: 0, y_mm: 0 }, radius_mm: 1 },
    against: { part: 2, edge: 0 },
    friction: oneFriction(0.1),
    gap_mm,
  }
  const posture = Float64Array.from([0, 0, 0, round[0], round[1], 0, ...frame])
  return { mechanism, posture, stop: contact, ...stopContact(mechanism, contact, posture) }
}

describe('the contact of a stop', () => {
  it('is measured from the left of a straight edge', () => {
    // SOURCE hand: 3 above the edge, radius 1; below it the round stands in the solid
    expect(contactOf(straight, [4, 3])).toMatchObject({ gap_mm: 2, at: { x_mm: 4, y_mm: 0 }, normal: { y: 1 } })
    expect(contactOf(straight, [4, -0.5]).gap_mm).toBeCloseTo(-1.5, 12)
    expect(contactOf(straight, [4, 3], [0, 0, 0], 0.2).gap_mm).toBeCloseTo(2.2, 12)
  })

  it('goes on round the corners at its ends', () => {
    // SOURCE hand: 3-4-5 triangle from the corner, less the radius
    const beyond = contactOf(straight, [13, 4])
    expect(beyond.gap_mm).toBeCloseTo(4, 12)
    expect(beyond.normal.x).toBeCloseTo(0.6, 12)
    expect(beyond.at).toEqual({ x_mm: 10, y_mm: 0 })
    expect(contactOf(straight, [-3, 4]).gap_mm).toBeCloseTo(4, 12)
  })

  it('is measured from a hump outwards and from a bowl inwards', () => {
    // SOURCE hand: 10 from the centre along 3-4-5; 10 − 5 − 1, and 5 − 2.5 − 1 inside the bowl
    const out = contactOf(hump, [6, 8])
    expect(out.gap_mm).toBeCloseTo(4, 12)
    expect(out.normal).toMatchObject({ x: 0.6, y: 0.8 })
    const inside = contactOf(bowl, [1.5, 2])
    expect(inside.gap_mm).toBeCloseTo(1.5, 12)
    expect(inside.normal.x).toBeCloseTo(-0.6, 12)
    expect(inside.at.x_mm).toBeCloseTo(3, 12)
  })

  it('goes on round the corners at the ends of an arc', () => {
    // SOURCE hand: past the end at (5, 0) and past that at (0, 5)
    expect(contactOf(hump, [8, -4]).gap_mm).toBeCloseTo(4, 12)
    expect(contactOf(hump, [-4, 8]).gap_mm).toBeCloseTo(4, 12)
  })

  it('is the same wherever the two parts stand together', () => {
    const dice = seeded(2)
    for (const edge of [straight, hump, bowl]) {
      for (let trial = 0; trial < 50; trial++) {
        const [x, y] = [dice.between(0.5, 4), dice.between(0.5, 4)]
        const [turn, dx, dy] = [dice.between(-3, 3), dice.between(-9, 9), dice.between(-9, 9)]
        const moved = [dx + Math.cos(turn) * x - Math.sin(turn) * y, dy + Math.sin(turn) * x + Math.cos(turn) * y] as const
        // SOURCE property: a gap does not know where the mount is
        expect(contactOf(edge, moved, [dx, dy, turn]).gap_mm).toBeCloseTo(contactOf(edge, [x, y]).gap_mm, 10)
      }
    }
  })

  it('pushes apart with the derivative of its gap', () => {
    const dice = seeded(4)
    for (const edge of [straight, hump, bowl]) {
      for (let trial = 0; trial < 40; trial++) {
        const made = contactOf(edge, [dice.between(-8, 12), dice.between(1, 9)], [0.3, -0.4, dice.between(-0.3, 0.3)])
        const gap = stopGap(made.mechanism, made.stop)
        const derivative = derivativeOf(made.mechanism, made.posture, gap)
        for (const [column, slope] of derivative.entries()) {
          const value = (step: number) => gap.value(made.posture.map((place, index) => place + (index === column + 3 ? step : 0)))
          // SOURCE other-method (central differences; the derivative by an angle is over the scale)
          const seen = (value(1e-6) - value(-1e-6)) / 2e-6
          expect(Math.abs(slope * (column % 3 === 2 ? made.mechanism.scale_mm : 1) - seen)).toBeLessThan(1e-6)
        }
      }
    }
  })
})
