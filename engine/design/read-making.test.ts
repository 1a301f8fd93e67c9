import { describe, expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { documentText } from './test-support/full-document.ts'

const readWith = (changes: Readonly<Record<string, unknown>>) => readDesign(documentText(changes))
const problemsOf = (changes: Readonly<Record<string, unknown>>) => readWith(changes).problems ?? []

describe('orders, bought items and hours', () => {
  it('come with the indices of what they are for and the usual values where none is typed', () => {
    const design = readWith({ 'making.learning': undefined, 'making.price': undefined }).value
    // SOURCE hand: the test document
    expect(design?.orders[0]).toMatchObject({ id: 'milled', pins: [], setUp: 150, each: 40, blank: 3.5 })
    expect(design?.orders[0].parts.map((part) => design.parts[part].id)).toEqual(['mount', 'proximal'])
    expect(design?.bought[0]).toMatchObject({ quantity: 4, mass_kg: 5e-5 })
    expect(design?.making).toMatchObject({ set_count: 3, learning_ratio: 1, good_ratio: 0.95 })
    expect(design?.making).not.toHaveProperty('price')
  })

  it('may be left out', () => {
    const design = readWith({ orders: undefined, bought: undefined, making: undefined }).value
    // SOURCE hand
    expect(design).toMatchObject({ orders: [], bought: [] })
    expect(design?.making).toBeUndefined()
  })

  it.each([
    // SOURCE hand: just outside of each bound, and names that lead nowhere
    ['orders.milled.parts', ['mount', 'proximall'], 'orders.milled.parts.1', 'unknown name'],
    ['orders.milled.parts', ['mount', 'mount'], 'orders.milled.parts.1', 'too many'],
    ['orders.milled.parts', [], 'orders.milled', 'missing'],
    ['orders.milled.each', -1, 'orders.milled.each', 'too small'],
    ['bought.washer.quantity', 1.5, 'bought.washer.quantity', 'wrong value'],
    ['bought.washer.quantity', 0, 'bought.washer.quantity', 'too small'],
    ['making.set', 0, 'making.set', 'too small'],
    ['making.learning', '50 %', 'making.learning', 'too small'],
    ['making.learning', '101 %', 'making.learning', 'too large'],
    ['making.goodShare', 0, 'making.goodShare', 'too small'],
    ['making.currency', undefined, 'making.currency', 'missing'],
  ])('are refused where %s is %j', (place, typed, where, code) => {
    expect(problemsOf({ [place]: typed })).toEqual([expect.objectContaining({ place: where, code })])
  })

  it('name what was taken out without a further problem', () => {
    // SOURCE property: one fault, one problem
    expect(problemsOf({ 'springs.push.rate': 3 }).map(({ place }) => place)).toEqual(['springs.push.rate'])
  })
})
