import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { batchCost } from './cost.ts'
import { costWorkings } from './cost-workings.ts'

const design = readDesign(readFileSync(new URL('../../designs/heron.json', import.meta.url), 'utf8'), 'heron').value
if (design?.making === undefined) throw new Error('the example states prices')
const { making } = design
const batches = [1, 10, 50]
const workings = costWorkings(design, making, batches)
const step = (id: string, name: RegExp) => workings.get(id)?.steps.find((one) => name.test(one.name))?.values ?? []

it('the workings of a cost table end in its numbers, and every source has one', () => {
  for (const [column, sets] of batches.entries()) {
    const { sources, perSet, total, made_count } = batchCost(design, making, sets)
    // SOURCE property
    expect(sources.filter(({ id }) => !workings.has(id))).toEqual([])
    for (const { id, amount } of sources) expect(workings.get(id)?.steps.at(-1)?.values[column]).toBeCloseTo(amount / sets, 9)
    for (const [id, value] of [
      ['perSet', perSet],
      ['total', total],
      ['made', made_count],
    ] as const)
      expect(workings.get(id)?.steps.at(-1)?.values[column]).toBeCloseTo(value, 9)
  }
})

it('the working of a source is its formula with what the document states', () => {
  // SOURCE hand: 3 fingers a set, 4 parts at 34 each; 10 sets are 30 fingers, 120 pieces, 4080, and 408 a set
  expect(workings.get('orders.phalanges.each')?.inputs.map(({ value, place }) => [value, place])).toEqual([
    [3, 'making.set'],
    [4, undefined],
    [34, 'orders.phalanges.each'],
  ])
  expect([step('orders.phalanges.each', /pieces/)[1], step('orders.phalanges.each', /batch/)[1]]).toEqual([120, 4080])
  // SOURCE hand: learning of 90 %, 1 + 0.9 + 0.9^log2(3) for the three of one set; 30 min of it at 36 an hour
  const times = 1 + 0.9 + 0.9 ** Math.log2(3)
  expect(step('making.assembly', /times/)[0]).toBeCloseTo(times, 9)
  expect(step('making.assembly', /set$/)[0]).toBeCloseTo(times * 18, 9)
  // SOURCE hand: 30 of 95 % good are 31.6, so 32
  expect(step('made', /made/)[1]).toBe(32)
})

it('the batch that pays for itself is the first whose sale brings in what it costs', () => {
  const costs = step('pays', /costs/)
  const brings = step('pays', /brings/)
  // SOURCE property
  expect(brings.at(-1)).toBeGreaterThanOrEqual(costs.at(-1) ?? Number.NaN)
  if (brings.length > 1) expect(brings[0]).toBeLessThan(costs[0])
})
