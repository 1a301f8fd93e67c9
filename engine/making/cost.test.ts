import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Design, Making, Order } from '../design/design.ts'
import { readDesign } from '../design/read-design.ts'
import { shelfFinger } from '../sketches/shelf-finger.ts'
import { breakEven } from './break-even.ts'
import { batchCost, learnedSum } from './cost.ts'
import { unpriced } from './unpriced.ts'

const milled: Order = { id: 'milled', process: 'milled', parts: [0, 1], pins: [], springs: [], setUp: 200, each: 30, blank: 5 }
const washer = { id: 'washer', title: 'washer', quantity: 4, each: 0.5 }
const design: Design = { ...shelfFinger(), orders: [milled], bought: [washer] }
const making: Making = {
  set_count: 2,
  currency: 'crowns',
  wage: 60,
  assembly_min: 20,
  fitting_min: 0,
  inspection_min: 10,
  learning_ratio: 1,
  good_ratio: 1,
}

describe('the cost of a batch', () => {
  it('is set-up, pieces, material, bought items and hours', () => {
    // SOURCE hand: 10 sets of 2 are 20 fingers; 200 + 40 × 30 + 40 × 5 + 80 × 0.5 + 20 × 20/60 × 60 + 20 × 10/60 × 60 = 2240
    const cost = batchCost(design, making, 10)
    expect(cost.total).toBeCloseTo(2240, 9)
    expect(cost.perSet).toBeCloseTo(224, 9)
    expect(cost.sources.map(({ id }) => id)).toContain('orders.milled.setUp')
  })

  it('counts every coil of a spring that is wound of several', () => {
    const wound: Order = { ...milled, id: 'wound', parts: [], springs: [0], setUp: 30, each: 4, blank: 0 }
    const read = readDesign(readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8'), 'heron').value
    const [spring] = read?.springs ?? []
    if (spring?.kind !== 'torsion' || spring.wire === undefined) throw new Error('the example has a wound torsion spring')
    const springs = [{ ...spring, wire: { ...spring.wire, springs_count: 2 } }]
    const cost = batchCost({ ...design, springs, orders: [wound] }, making, 10)
    // SOURCE hand: 20 fingers of 2 coils at 4 each
    expect(cost.sources.find(({ id }) => id === 'orders.wound.each')?.amount).toBeCloseTo(160, 9)
  })

  it('counts the fingers that cannot be sold as a source of its own', () => {
    // SOURCE hand: 18 fingers at 90 % ask for 20; the two cost 2 × (2 × 35 + 4 × 0.5 + 20 + 10) = 204
    const cost = batchCost(design, { ...making, good_ratio: 0.9 }, 9)
    expect(cost.made_count).toBe(20)
    expect(cost.sources.find(({ id }) => id === 'scrap')?.amount).toBeCloseTo(204, 9)
  })

  it('makes no finger more where the share comes out whole', () => {
    // SOURCE hand: 19 of 20 are 95 %.
    expect(batchCost(design, { ...making, set_count: 19, good_ratio: 0.95 }, 1).made_count).toBe(20)
  })

  it('has sources that sum to it, and falls with the number of sets', () => {
    // SOURCE property
    const costs = [1, 3, 10, 50].map((sets) => batchCost(design, { ...making, learning_ratio: 0.9, good_ratio: 0.97 }, sets))
    for (const { sources, total } of costs) expect(sources.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(total, 9)
    for (const [index, { perSet }] of costs.entries()) if (index > 0) expect(perSet).toBeLessThan(costs[index - 1].perSet)
  })
})

describe('screws', () => {
  const read = readDesign(readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8'), 'heron').value
  if (read?.making === undefined || read.screws === undefined) throw new Error('the example states prices and screws')
  const [front, ...others] = read.screws
  const { each: _, ...unstated } = front

  it('are paid a piece', () => {
    // SOURCE hand: 3 fingers a set of 2 screws at 0.2, ten sets
    const { sources } = batchCost(read, { ...read.making, ...making, set_count: 3 }, 10)
    expect(sources.find(({ id }) => id === 'screws.front')?.amount).toBeCloseTo(12, 9)
  })

  it('are named with what else has no price', () => {
    // SOURCE hand: without the order of the pins, pins are ordered nowhere
    expect(unpriced(read)).toEqual([])
    const orders = read.orders.filter(({ id }) => id !== 'pins')
    const found = unpriced({ ...read, orders, screws: [unstated, ...others] })
    expect(found).toEqual([...read.pins.map(({ id }) => `pins.${id}`), 'screws.front'])
  })
})

describe('learning', () => {
  it('leaves the stated share at each doubling', () => {
    // SOURCE paper: Wright, J. Aeronautical Sciences 3 (1936), 122-128, from memory; hand: 0.8, 0.8², and 1 + 0.8 + 0.8^log2(3) + 0.64
    expect(learnedSum(0.8, 2) - learnedSum(0.8, 1)).toBeCloseTo(0.8, 12)
    expect(learnedSum(0.8, 4) - learnedSum(0.8, 3)).toBeCloseTo(0.64, 12)
    expect(learnedSum(0.8, 4)).toBeCloseTo(1 + 0.8 + 0.7021 + 0.64, 4)
  })
})

describe('break-even', () => {
  it('is the least batch whose sale brings in its cost', () => {
    // SOURCE hand: a set costs 204 and 200 once; at 230 the sale of 8 sets leaves 8 × 26 = 208, that of 7 leaves 182
    expect(breakEven(design, { ...making, price: 230 })?.sets_count).toBe(8)
  })

  it('never comes below what a further set costs, and is not asked for without a price', () => {
    // SOURCE hand: a further set costs 204.
    expect(breakEven(design, { ...making, price: 200 })).toEqual({ price: 200, tried_count: 500 })
    expect(breakEven(design, making)).toBeUndefined()
  })
})
