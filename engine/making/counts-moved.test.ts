import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { costMoved } from './cost-moved.ts'
import { countsMoved } from './counts-moved.ts'

const text = readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8')
const designOf = (
  change: (document: { bought: Record<string, { quantity?: number; mass?: string }>; making?: { currency: string } }) => void,
) => {
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

it('costs are told apart by source, and not at all where one side states none or in another currency', () => {
  const before = designOf(() => {})
  const after = designOf(({ bought }) => {
    bought.washer.quantity = 4
    Reflect.deleteProperty(bought, 'grease')
  })
  const moved = costMoved(before, after, [1, 10])
  if (moved.kind !== 'compared') throw new Error(moved.kind)
  const [one, ten] = moved.batches
  // SOURCE hand: 3 fingers a set: 3 × 2 washers of 0.15, and 3 dabs of 0.1; of 32 fingers for 30 two are lost: a tenth of 2 × 0.3 and 2 × 0.1 a set
  expect(ten.moves.map(({ id, before: was, after: is }) => [id, Number((was - is).toFixed(9))])).toEqual([
    ['bought.washer', 0.9],
    ['bought.grease', 0.3],
    ['scrap', 0.08],
  ])
  for (const { before: was, after: is, moves } of [one, ten]) {
    // SOURCE property
    expect(moves.reduce((sum, move) => sum + move.after - move.before, 0)).toBeCloseTo(is - was, 9)
  }
  const unpriced = designOf((document) => Reflect.deleteProperty(document, 'making'))
  const crowned = designOf(({ making }) => Object.assign(making ?? {}, { currency: 'pence' }))
  expect(costMoved(unpriced, after, [1])).toEqual({ kind: 'unpriced', which: 'before' })
  expect(costMoved(before, crowned, [1])).toMatchObject({ kind: 'other currency', after: 'pence' })
})
