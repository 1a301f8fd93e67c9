import { expect, it } from 'vitest'
import { isInside } from '../../engine/index.ts'
import { coveredStretches } from './covered-stretches.ts'

const box = (left: number, top: number, right: number, bottom: number) =>
  Float64Array.of(left, top, right, top, right, bottom, left, bottom)
const square = box(0, 0, 10, 10)

it('cuts an edge where a cover crosses it, and goes on round a corner, the first one too', () => {
  // SOURCE hand (a bar over the upper edge from 4 to 6)
  expect(coveredStretches(square, [box(4, -1, 6, 5)])).toEqual([
    [
      { x: 4, y: 0 },
      { x: 6, y: 0 },
    ],
  ])
  // SOURCE hand (a cover over the first corner: up the left edge from 3, round the corner, along the upper edge to 2)
  expect(coveredStretches(square, [box(-1, -1, 2, 3)])).toEqual([
    [
      { x: 0, y: 3 },
      { x: 0, y: 0 },
      { x: 2, y: 0 },
    ],
  ])
})

it('takes all of an outline that is covered, nothing of one that lies free or around its cover', () => {
  // SOURCE hand (the perimeter of the square, back to where it began)
  expect(coveredStretches(square, [box(-1, -1, 11, 11)])[0]).toHaveLength(5)
  expect(coveredStretches(square, [box(20, 0, 30, 10)])).toEqual([])
  expect(coveredStretches(square, [box(2, 2, 8, 8)])).toEqual([])
})

it('covers as much of an odd outline under two covers as points along it tell', () => {
  const outline = Float64Array.of(0, 0, 9, 1, 12, 6, 5, 4, 6, 11, -2, 7)
  const covers = [Float64Array.of(3, -2, 8, 3, 4, 9, 1, 2), Float64Array.of(5, 5, 13, 0, 11, 8)]
  let sampled = 0
  const SAMPLES = 2000
  for (let at = 0; at < outline.length; at += 2) {
    const next = (at + 2) % outline.length
    const [dx, dy] = [outline[next] - outline[at], outline[next + 1] - outline[at + 1]]
    for (let index = 0; index < SAMPLES; index++) {
      const share = (index + 0.5) / SAMPLES
      const isUnder = covers.some((cover) => isInside(cover, outline[at] + share * dx, outline[at + 1] + share * dy))
      if (isUnder) sampled += Math.hypot(dx, dy) / SAMPLES
    }
  }
  const lengths = coveredStretches(outline, covers).map((places) =>
    places.slice(1).reduce((sum, { x, y }, index) => sum + Math.hypot(x - places[index].x, y - places[index].y), 0),
  )
  // SOURCE other-method (the outline sampled at 2000 places of each edge; a cut lies within one of them)
  expect(lengths.reduce((sum, length) => sum + length, 0)).toBeCloseTo(sampled, 1)
})
