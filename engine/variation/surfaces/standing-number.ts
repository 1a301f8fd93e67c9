/** A number that may come near nothing, with the surface that follows it: made anew whenever sets were judged, closest where it matters. */
import { limits } from '../../numbers/limits.ts'
import type { Said } from './doubts.ts'
import type { DrawnSets } from './drawn-sets.ts'
import { fitSurfaces, type Surface } from './fit-surfaces.ts'
import type { NumberBehind } from './surface-problem.ts'
import { pairsOf, sumAlong, type Terms } from './terms.ts'

/** A number and its surface. */
export interface StandingNumber {
  readonly behind: NumberBehind
  /** Place in the list of numbers. */
  readonly place: number
  /** Places of the sources, the most telling first. */
  readonly leading: readonly number[]
  readonly surface: Surface
  /** What the surface misses near nothing, root mean square, in the number's unit. */
  readonly miss: number
}

/** Sets that were judged: their inputs, and the value of one number in each. */
export interface JudgedNumber {
  readonly inputs: readonly Float64Array[]
  readonly values: Float64Array
}

/** Sources that are multiplied with each other at the most: more products than that no surface of a few hundred sets can tell. */
const leading_most = 12

/** Terms for each set that a surface goes through at the most. */
const filled_ratio = 0.7

/** Sets within so many misses of nothing tell how far the surface misses there, and weigh most in it. */
const near_misses = 3

/** Of the number's size: a surface that is all but exact needs no nearness. */
const near_ratio = 1e-3

/** Fewer near sets than this do not tell it. */
const near_sets_least = 8

/** Of its size over the sets no number is found closer. */
const found_ratio = 1e-9

/** The number with a surface through all sets that were judged. @param now as it stood; its miss says which sets are near */
export function refitted(now: StandingNumber, { inputs, values }: JudgedNumber): StandingNumber {
  const near = Math.max(near_misses * now.miss, near_ratio * rms(values))
  const weights = values.map((value) => 1 / (1 + (value / near) ** 2))
  const terms = termsFor(now.leading, inputs.length)
  const missed = [...values.keys()].filter((set) => Math.abs(values[set]) < near_misses * now.miss)
  const [surface] = fitSurfaces({ terms, inputs, weights, columns: [values], missed })
  const miss = missed.length < near_sets_least ? now.miss : missOf(surface, values)
  return { ...now, surface, miss }
}

/** What the surface of a number says of drawn sets. */
export function saidOf({ behind: { requirement, isWhole }, surface, miss }: StandingNumber, drawn: DrawnSets): Said {
  const { columns, leading, steps, row_sets } = drawn
  const { level, slope, bend } = sumAlong(surface, columns, leading)
  const predicted = new Float64Array(steps.length)
  for (let row = 0, set = 0; row < level.length; row++)
    for (const end = set + row_sets; set < end; set++) predicted[set] = level[row] + steps[set] * (slope[row] + bend * steps[set])
  return { requirement, isWhole, predicted, miss }
}

/** Root mean square of what a surface misses, not taken smaller than numbers are found. */
export function missOf({ misses }: Pick<Surface, 'misses'>, values: Float64Array): number {
  return Math.max(rms(misses), found_ratio * Math.max(...values.map(Math.abs)), limits.surfaceMissLeast)
}

function termsFor(leading: readonly number[], sets_count: number): Terms {
  const sources_count = leading.length
  const room = Math.max(0, filled_ratio * sets_count - 1 - 2 * sources_count)
  // n sources make n (n − 1)/2 pairs.
  const count = Math.min(leading_most, Math.floor((1 + Math.sqrt(1 + 8 * room)) / 2))
  return { sources_count, pairs: pairsOf(leading.slice(0, count)) }
}

function rms(values: Float64Array): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length)
}
