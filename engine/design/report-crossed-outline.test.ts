import { expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { documentText } from './test-support/full-document.ts'

const outlined = (...corners: readonly (readonly [number, number])[]) => {
  const outline = corners.map(([x, y]) => [`${x} mm`, `${y} mm`])
  return (readDesign(documentText({ 'parts.slider.outline': outline })).problems ?? []).filter(({ place }) =>
    place.includes('outline'),
  )
}

it('an outline whose sides cross is refused with the first two of them', () => {
  // SOURCE hand: the sides from corner 2 to 3 and from 4 to 1 meet in the middle
  const [problem, ...more] = outlined([0, 0], [10, 0], [2, 7], [10, 9])
  expect(more).toEqual([])
  expect(problem).toMatchObject({ place: 'parts.slider.outline.3', code: 'wrong order' })
  expect(problem.found).toContain('from corner 2 to 3 by that from corner 4 to 1')
})

it('an outline is taken in either sense, notched, and where its sides only touch', () => {
  const square = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ] as const
  // SOURCE property (a square either way round, a square with a notch whose point touches the side across, a square closed by its first corner again)
  expect(outlined(...square)).toEqual([])
  expect(outlined(...square.toReversed())).toEqual([])
  expect(outlined([0, 0], [10, 0], [10, 10], [5, 0], [0, 10])).toEqual([])
  expect(outlined(...square, [0, 0])).toEqual([])
})
