import { expect, it } from 'vitest'
import type { Working } from '../../figures/evaluation.ts'
import { figureSpread } from '../spread/figure-spread.ts'
import { shareOf } from '../spread/share-interval.ts'
import { countedYieldWorking } from './counted-yield-working.ts'
import { quantileWorking } from './figure-workings.ts'
import { frictionWorking } from './friction-working.ts'
import { gainWorking } from './gain-working.ts'
import { shareWorking } from './share-working.ts'
import { surfaceWorking } from './surface-working.ts'

const lineOf = ({ inputs, steps }: Working, name: string) => [...inputs, ...steps].find((line) => line.name === name)?.value

/** Sixteen scramblings of 64 sets, some of which meet it. */
const counted = (hits: readonly number[]) => shareOf({ hits, of: new Array<number>(16).fill(64) })

it('the working of a counted share carries the deviation from which its interval follows', () => {
  const share = counted([60, 56, 60, 56, 60, 56, 60, 56, 60, 56, 60, 56, 60, 56, 60, 56])
  const working = shareWorking(share, 'Counted.')
  // SOURCE hand: eight shares of 60/64 and eight of 56/64 lie 1/32 from their mean: s = √(16/15)/32
  expect(lineOf(working, 's, deviation of the sixteen shares')).toBeCloseTo(Math.sqrt(16 / 15) / 32, 12)
  // SOURCE hand (16 × 58)
  expect(lineOf(working, 'k, of them of this kind')).toBe(928)
})

it('where hardly any set fell short the working names the exact interval of a count, and no deviation', () => {
  const share = counted(new Array<number>(16).fill(64))
  const working = shareWorking(share, 'Counted.')
  // SOURCE property
  expect(lineOf(working, 's, deviation of the sixteen shares')).toBeUndefined()
  expect(working.source).toContain('Clopper')
  const none = counted(new Array<number>(16).fill(0))
  const told = countedYieldWorking({ met: share, short: none, undecided: none }, 0.999)
  // SOURCE hand (1024 sets, none short: 0.025^(1/1024) = 0.9964 is below 99.9 %)
  expect(lineOf(told, 'verdict')).toBe('undecided')
  expect(lineOf(told, 'interval from')).toBeCloseTo(0.025 ** (1 / 1024), 9)
})

it('the working of a change carries the share after it, and that of a figure its quantiles', () => {
  const gain = gainWorking({ value: 0.02, least: 0.01, most: 0.03, before: 0.95, samples: 512 })
  // SOURCE hand (95 % and 2 %)
  expect(lineOf(gain, 'share after')).toBeCloseTo(0.97, 12)
  const spread = figureSpread(Float64Array.from([3, 1, 2, Number.NaN]))
  if (!spread) throw new Error('no value was counted')
  const figure = quantileWorking(spread, 'mm')
  // SOURCE hand (the middle of 1, 2 and 3, one set without a value)
  expect(lineOf(figure, '50 % lie below')).toBe(2)
  expect(lineOf(figure, 'sets without one')).toBe(1)
})

it('the working by surfaces names what is in doubt with its miss and the nearest clear number; that of friction what falls short beyond', () => {
  const behind = { requirement: 0, words: 'Margin of the shelf', isWhole: true }
  const share = { value: 0.9589, least: 0.958, most: 0.9598 }
  const surfaces = {
    ...{ all: share, requirements: [share], judged_count: 176, rows_count: 8192, near: [{ behind, miss: 0.002 }] },
    clear: [{ behind: { ...behind, words: 'Margin of a pin' }, place: 1, misses: 9.7 }],
  }
  const working = surfaceWorking(surfaces, share)
  // SOURCE property
  expect(lineOf(working, 'σ, miss of Margin of the shelf')).toBe(0.002)
  expect(lineOf(working, 'sets judged')).toBe(176)
  expect(lineOf(working, 'nearest of them: Margin of a pin, times its miss')).toBe(9)
  const range = { least: 0.05, likely: 0.1, most: 0.2 }
  const ends = { least: { moving: 0.04, rest: 0.05, beyond: ['holds'] }, most: { moving: 0.3, rest: 0.4, beyond: [] } }
  const friction = frictionWorking({ pair: 'film', ...ends }, { name: 'film', moving: range, rest: range, source: 'invented' })
  expect(lineOf(friction, 'beyond the least')).toBe('holds')
  expect(lineOf(friction, 'beyond the most')).toBe('nothing falls short')
})
