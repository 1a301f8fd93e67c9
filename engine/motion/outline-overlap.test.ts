import { describe, expect, it } from 'vitest'
import { seeded } from '../sketches/seeded.ts'
import { boxesMeet, boxOf, overlapOf } from './outline-overlap.ts'

const rectangle = (left: number, bottom: number, right: number, top: number) =>
  Float64Array.from([left, bottom, right, bottom, right, top, left, top])

/** The same outline the other way round. */
function reversed(outline: Float64Array): Float64Array {
  const points = Array.from({ length: outline.length / 2 }, (_, index) => [outline[2 * index], outline[2 * index + 1]])
  return Float64Array.from(points.reverse().flat())
}

describe('the overlap of two outlines', () => {
  it('is nothing where they are apart or only touch', () => {
    const a = rectangle(0, 0, 10, 10)
    for (const b of [rectangle(12, 0, 20, 10), rectangle(10, 0, 20, 10), rectangle(10, 10, 20, 20), rectangle(2, -5, 5, 0)]) {
      expect(overlapOf(a, b).depth_mm).toBe(0)
      expect(overlapOf(b, a).depth_mm).toBe(0)
    }
  })

  it('is how far a corner stands inside the other', () => {
    // SOURCE hand: the corner at (7, 6) stands 3 inside the right side and 4 below the top
    expect(overlapOf(rectangle(0, 0, 10, 10), rectangle(7, 6, 20, 20)).depth_mm).toBe(3)
    const wedge = Float64Array.from([5, 8, 12, 20, -2, 20])
    // SOURCE hand: the point of the wedge stands 2 below the top
    expect(overlapOf(rectangle(0, 0, 10, 10), wedge)).toEqual({ depth_mm: 2, x_mm: 5, y_mm: 8 })
  })

  it('is seen where two bars cross without a corner inside', () => {
    // SOURCE hand: bars 4 and 6 wide; the middle of an edge of the wide one lies 2 inside the narrow one, and 3 the other way
    const { depth_mm } = overlapOf(rectangle(-20, -2, 20, 2), rectangle(-3, -20, 3, 20))
    expect(depth_mm).toBe(3)
  })

  it('is seen where one lies wholly in the other', () => {
    // SOURCE hand: the small one’s farthest corner (4, 4) is 4 from two sides
    expect(overlapOf(rectangle(0, 0, 20, 20), rectangle(2, 2, 4, 4)).depth_mm).toBe(4)
  })

  it('leaves the mouth of a hollow outline free', () => {
    const fork = Float64Array.from([0, 0, 30, 0, 30, 10, 10, 10, 10, 20, 30, 20, 30, 30, 0, 30])
    expect(overlapOf(fork, rectangle(12, 11, 40, 19)).depth_mm).toBe(0)
    // SOURCE hand: 1.5 into the lower prong
    expect(overlapOf(fork, rectangle(12, 8.5, 40, 19)).depth_mm).toBe(1.5)
  })

  it('does not depend on order, direction or place', () => {
    const dice = seeded(6)
    let deep = 0
    for (let trial = 0; trial < 300; trial++) {
      const blob = () =>
        Float64Array.from(
          Array.from({ length: 7 }, (_, index) => {
            const radius = dice.between(3, 10)
            const angle = (2 * Math.PI * index) / 7
            return [radius * Math.cos(angle), radius * Math.sin(angle)]
          }).flat(),
        )
      const a = blob()
      const by = [dice.between(-14, 14), dice.between(-14, 14)]
      const b = blob().map((value, index) => value + by[index % 2])
      const { depth_mm } = overlapOf(a, b)
      const [c, s] = [Math.cos(0.7), Math.sin(0.7)]
      const turned = (outline: Float64Array) =>
        outline.map((value, index) => (index % 2 === 0 ? c * value - s * outline[index + 1] : s * outline[index - 1] + c * value))
      // SOURCE property: an overlap is between two shapes, not between their lists of corners
      for (const other of [overlapOf(b, a), overlapOf(reversed(a), b), overlapOf(turned(a), turned(b))]) {
        expect(other.depth_mm).toBeCloseTo(depth_mm, 9)
      }
      // The raster steps over slivers.
      const shares = sharesPoint(a, b)
      if (shares) expect(depth_mm).toBeGreaterThan(0)
      if (depth_mm > 0.3) expect(shares).toBe(true)
      if (depth_mm > 0) deep++
    }
    expect(deep).toBeGreaterThan(100)
  })
})

/** SOURCE other-method: a raster of points a twentieth of a millimetre apart, each inside both by the winding angle. */
function sharesPoint(a: Float64Array, b: Float64Array): boolean {
  const [one, other] = [boxOf(a), boxOf(b)]
  if (!boxesMeet(one, other)) return false
  for (let x = Math.max(one.left, other.left); x <= Math.min(one.right, other.right); x += 0.05) {
    for (let y = Math.max(one.bottom, other.bottom); y <= Math.min(one.top, other.top); y += 0.05) {
      if (winds(a, x, y) && winds(b, x, y)) return true
    }
  }
  return false
}

function winds(outline: Float64Array, x: number, y: number): boolean {
  let turn = 0
  for (let at = 0; at < outline.length; at += 2) {
    const next = (at + 2) % outline.length
    const [px, py, qx, qy] = [outline[at] - x, outline[at + 1] - y, outline[next] - x, outline[next + 1] - y]
    turn += Math.atan2(px * qy - py * qx, px * qx + py * qy)
  }
  return Math.abs(turn) > Math.PI
}
