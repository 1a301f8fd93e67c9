import { describe, expect, it } from 'vitest'
import type { Design, DesignSpread, Making } from '../../engine/index.ts'
import { inventedDesign } from '../test-support/invented-finger.ts'
import { costTable } from './cost-rows.ts'
import { countedCost, countedCostSentence } from './counted-cost.ts'
import { countsSentence } from './counts-words.ts'
import { makeSentence } from './make-sentence.ts'
import { partsFile } from './parts-file.ts'

const making: Making = {
  set_count: 2,
  currency: 'crowns',
  wage: 60,
  assembly_min: 30,
  fitting_min: 0,
  inspection_min: 0,
  learning_ratio: 1,
  good_ratio: 1,
  price: 100,
}
const bolt = { id: 'bolt', title: 'Bolt, "long", 3 mm', quantity: 2, each: 4, mass_kg: 0.001 }
const order = { id: 'milled', process: 'milled', parts: [0], pins: [], springs: [], setUp: 90, each: 5, blank: 0 }
const priced: Design = { ...inventedDesign, orders: [order], bought: [bolt], making }

describe('what a set costs', () => {
  it('stands by batch, and by source with the dearest first', () => {
    const table = costTable(priced, [1, 10])
    // SOURCE hand: a finger takes 5 + 2 × 4 + 30 = 43, a set of two 86; with the set-up 176 and 95
    expect(table?.batches.map(({ perSet, total }) => [perSet, total])).toEqual([
      ['176', '176'],
      ['95.00', '950'],
    ])
    expect(table?.sources.map(({ id, perSet }) => [id, ...perSet])).toEqual([
      ['making.assembly', '60.00', '60.00'],
      ['bought.bolt', '16.00', '16.00'],
      ['orders.milled.each', '10.00', '10.00'],
      ['orders.milled.setUp', '90.00', '9.00'],
    ])
  })

  it('is not spoken of where the design states no prices', () => {
    // SOURCE property
    expect(costTable(inventedDesign)).toBeUndefined()
    expect(makeSentence(inventedDesign)).toContain('states no prices')
  })
})

describe('what a set costs with the scrap that was counted', () => {
  const countedOf = (value: number) => {
    const met = { value, least: value - 0.02, most: value + 0.02, by: 'counts', samples: 64 } as const
    return { spread: { yields: { all: { met } } }, asked: { samples: 64 } } as unknown as DesignSpread
  }

  it('makes as many fingers as the share asks for', () => {
    // SOURCE hand: 20 fingers to sell at 80 % are 25 made; 90 and 25 × 43 are 1165, of 10 sets
    const cost = countedCost(priced, countedOf(0.8), [10])
    expect(cost?.batches.map(({ made_count, perSet }) => [made_count, perSet])).toEqual([[25, 116.5]])
    expect(cost && countedCostSentence(cost)).toMatch(
      /: 80\.0 % of 64 that were counted meet .* \(78\.0 to 82\.0 %\): 117 in a batch of 10\.$/,
    )
  })

  it('is none where no finger meets what is asked, or no prices are stated', () => {
    const none = countedCost(priced, countedOf(0), [10])
    // SOURCE property
    expect(none && countedCostSentence(none)).toContain('No batch can be sold')
    expect(countedCost(inventedDesign, countedOf(0.8))).toBeUndefined()
  })
})

describe('the sentence', () => {
  it('says pieces, mass, cost and the batch that pays', () => {
    // SOURCE hand: 100 a set leaves 14 over 86; 90 / 14 is 6.4, so 7 sets, which cost 90 + 7 × 86 = 692
    expect(makeSentence(priced)).toMatch(/sold for 100, a batch of 7 sets pays for itself and asks for 692 before the first/)
    expect(makeSentence(priced)).toContain('in a batch of 10 a set of 2 fingers costs 95.00 crowns')
  })

  it('claims no mass where nothing can be weighed', () => {
    const parts = inventedDesign.parts.map(({ mass_kg: _, thickness_mm: __, ...part }) => part)
    const pins = inventedDesign.pins.map(({ material: _, ...pin }) => pin)
    // SOURCE property (a sum of nothing is no mass of 0 g)
    const said = makeSentence({ ...inventedDesign, parts, pins, springs: [] })
    expect(said).toMatch(/none of which can be weighed/)
    expect(said).not.toMatch(/\d g/)
  })
})

it('two parts lists side by side are one sentence', () => {
  const same = { before_count: 21, after_count: 21, before_kg: 0.0567, after_kg: 0.0567, isAllWeighed: true, moves: [] }
  // SOURCE hand: 23 − 2 pieces; two washers of 0.04 g are 0.08 g
  expect(countsSentence(same)).toBe('A finger has 21 pieces as before, and weighs 56.7 g as before.')
  const moves = [{ title: 'Washer', before_count: 8, after_count: 6 }]
  expect(countsSentence({ ...same, before_count: 23, before_kg: 0.05678, isAllWeighed: false, moves })).toBe(
    'A finger has 21 pieces, 23 before, and weighs 56.7 g, 0.0800 g less, as far as they are weighed: Washer 6, 8 before.',
  )
})

describe('the parts list as a file', () => {
  it('quotes as RFC 4180 does and holds nothing that a spreadsheet would work out', () => {
    const odd = { ...bolt, id: 'odd', title: '=1+1' }
    const lines = partsFile({ ...priced, bought: [bolt, odd] }).split('\r\n')
    const count = priced.parts.length + priced.pins.length + priced.springs.length
    // SOURCE standard: RFC 4180, section 2 (a quote in a quoted cell is doubled; lines end with CR LF)
    expect(lines[count + 1]).toBe(`${count + 1},bought,bolt,"Bolt, ""long"", 3 mm",2,4,,,,,1`)
    expect(lines[count + 2]).toBe(`${count + 2},bought,odd, =1+1,2,4,,,,,1`)
    expect(lines).toHaveLength(count + 4)
  })
})
