import { expect, it } from 'vitest'
import { verdictOfBoth } from './verdict-of-both.ts'

const share = (value: number, least: number, most: number) => ({ value, least, most, by: 'replicates', samples: 512 }) as const
/** 96 % of sets, of which nobody knows whether they are 95 or 97. */
const counted = { met: share(0.96, 0.95, 0.97), short: share(0.04, 0.03, 0.05) }

it('leaves the verdict to the count, and what that leaves open to surfaces', () => {
  // SOURCE property
  expect(verdictOfBoth(counted, undefined, 0.96)).toBe('undecided')
  expect(verdictOfBoth(counted, share(0.962, 0.961, 0.963), 0.96)).toBe('met')
  expect(verdictOfBoth(counted, share(0.958, 0.957, 0.959), 0.96)).toBe('short')
  expect(verdictOfBoth(counted, share(0.96, 0.959, 0.961), 0.96)).toBe('undecided')
  expect(verdictOfBoth(counted, share(0.958, 0.957, 0.959), 0.94)).toBe('met')
})

it('does not hear surfaces that say what the count rules out', () => {
  // SOURCE property
  expect(verdictOfBoth(counted, share(0.98, 0.979, 0.981), 0.96)).toBe('undecided')
  expect(verdictOfBoth(counted, share(0.94, 0.939, 0.941), 0.96)).toBe('undecided')
})
