import { expect, it } from 'vitest'
import type { Part } from '../design/design.ts'
import { sectionsOf } from './section.ts'

const point = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const bar: Part = {
  id: 'bar',
  name: 'bar',
  role: 'other',
  outline: [point(-5, -4), point(53, -4), point(53, 6), point(-5, 6)],
  holes: [
    { id: 'middle', at: point(24, 1), diameter_mm: 3 },
    { id: 'edge', at: point(12, 6), diameter_mm: 4 },
  ],
  edges: [],
  pads: [],
}

it('measures a bar across its line, less the holes that the cut meets', () => {
  const sections = sectionsOf(bar, { from: point(0, 0), to: point(48, 0) })
  const at = (x: number) => sections.find(({ at: place }) => Math.abs(place.x_mm - x) < 1e-9)
  // SOURCE hand (10 high; through a hole of 3: 7; through half of a hole of 4 on the edge: 8; middle of −4 and 6 is 1 off the line; second moment
  // 10³/12 = 83.33, with the hole in the middle (1000 − 27)/12 = 81.08; farthest 5)
  expect(at(4)).toMatchObject({ height_mm: expect.closeTo(10, 12), off_mm: expect.closeTo(1, 12) })
  expect(at(4)).toMatchObject({ stiffness_mm3: expect.closeTo(83.33, 2), reach_mm: expect.closeTo(5, 12) })
  expect(at(24)).toMatchObject({ height_mm: expect.closeTo(7, 9), stiffness_mm3: expect.closeTo(81.08, 2) })
  expect(at(12)?.height_mm).toBeCloseTo(8, 12)
  expect(sections).toHaveLength(23)
})

it('meets an angled part wherever it lies on the cut', () => {
  const angle = { ...bar, holes: [], outline: [point(0, 0), point(40, 0), point(40, 4), point(4, 4), point(4, 30), point(0, 30)] }
  const [middle] = sectionsOf(angle, { from: point(2, 28), to: point(38, 2) }).filter(({ at }) => Math.abs(at.x_mm - 20) < 1e-9)
  // SOURCE hand (the line's middle 20, 15 lies outside; the cut along (26, 36) leaves through y 4 and y 0: 4 × √(26² + 36²)/36 = 4.934 of material)
  expect(middle.height_mm).toBeCloseTo(4.934, 3)
  expect(middle.off_mm).toBeLessThan(-10)
})

it('has no cuts along a line without length', () => {
  expect(sectionsOf(bar, { from: point(1, 1), to: point(1, 1) })).toEqual([])
})

it('does not mind how the part is turned', () => {
  const turned = (angle: number) => (place: { x_mm: number; y_mm: number }) =>
    point(
      Math.cos(angle) * place.x_mm - Math.sin(angle) * place.y_mm,
      Math.sin(angle) * place.x_mm + Math.cos(angle) * place.y_mm,
    )
  const turn = turned(0.83)
  const other = { ...bar, outline: bar.outline.map(turn), holes: bar.holes.map((hole) => ({ ...hole, at: turn(hole.at) })) }
  const before = sectionsOf(bar, { from: point(0, 0), to: point(48, 0) })
  const after = sectionsOf(other, { from: point(0, 0), to: turn(point(48, 0)) })
  // SOURCE property (the same part looked at from elsewhere)
  for (const [index, { height_mm }] of after.entries()) expect(height_mm).toBeCloseTo(before[index].height_mm, 6)
})
