import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { countsMoved } from './counts-moved.ts'

const text = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')
const designOf = (change: (document: { bought: Record<string, { quantity?: number; mass?: string }> }) => void) => {
  const document = JSON.parse(text)
  change(document)
  const { value } = readDesign(JSON.stringify(document), 'heron')
  if (value === undefined) throw new Error('refused')
  return value
}

it('parts lists are told apart by kind and id, with what is new, gone, more and fewer', () => {
  const before = designOf(() => {})
  const after = designOf(({ bought }) => {
    bought.washer.quantity = 4
    Reflect.deleteProperty(bought, 'grease')
    bought.ring = { ...bought.washer, quantity: 3 }
  })
  const moved = countsMoved(before, after)
  // SOURCE hand: two washers of 0.04 g go and three rings of the same come, so that the finger is 0.04 g heavier; the grease, one piece, goes
  expect(moved.after_count - moved.before_count).toBe(-2 + 3 - 1)
  expect(moved.after_kg - moved.before_kg).toBeCloseTo(4e-5, 12)
  expect(moved.moves.map(({ before_count, after_count }) => [before_count, after_count])).toEqual([
    [6, 4],
    [0, 3],
    [1, 0],
  ])
  // SOURCE property
  expect(countsMoved(before, before).moves).toEqual([])
})
