/**
 * Points of the Sobol' sequence: each dimension alone, and many pairs of them, are filled far more evenly than by chance.
 *
 * Bit b of the Gray code of a point's number switches direction number b of each dimension on (exclusive or). The direction numbers follow
 * from a primitive polynomial and a few first ones (S. Joe and F. Y. Kuo 2008, see the table):
 *
 *     V_j = c_1 V_(j−1) ⊕ … ⊕ c_(t−1) V_(j−t+1) ⊕ V_(j−t) ⊕ (V_(j−t) >> t)
 *
 * Scrambling keeps what is even about them and makes every point uniform, so that independent scramblings tell the error: the digits of
 * each dimension go through a random lower triangular matrix over 0 and 1 and a random shift (J. Matoušek, Journal of Complexity 14, 1998,
 * from memory), which costs nothing, because it is done to the direction numbers once.
 */
import tables from '../../tables/sobol-directions.json' with { type: 'json' }
import { randomWords } from './random-words.ts'

const bits = 32
/** Of a word with one bit, its place is this less the zeros before it. */
const lowestBit = 31
const words = 2 ** bits
const [{ dimensions: rows }] = tables

/** Dimensions that the table has. */
export const sobolDimensions = rows.length + 1

/** A sequence of points in the open unit cube; any of them at any time. */
export interface PointSequence {
  readonly dimensions: number
  /** Point of a number from 0 to 2³² − 1, one entry a dimension, each between 0 and 1, both left out. */
  readonly fill: (number: number, out: Float64Array) => void
}

/** The sequence as published. Its point 0 is the origin, set half of the last digit inwards. @param dimensions at most `sobolDimensions` */
export function sobolSequence(dimensions: number): PointSequence {
  return sequenceOf(Array.from({ length: dimensions }, (_, dimension) => ({ directions: directionsOf(dimension), shift: 0 })))
}

/** Which scrambling: another replicate of one seed is independent of the first. */
export interface Scrambling {
  readonly dimensions: number
  readonly seed: number
  readonly replicate: number
}

/** A scrambled sequence. Dimensions beyond the table's are filled by chance alone. */
export function scrambledSobol({ dimensions, seed, replicate }: Scrambling): PointSequence {
  const even = sequenceOf(
    Array.from({ length: Math.min(dimensions, sobolDimensions) }, (_, dimension) =>
      scrambled(directionsOf(dimension), randomWords(seed, replicate, dimension)),
    ),
  )
  return { dimensions, fill: (number, out) => fillByChance({ even, seed, replicate }, number, out) }
}

interface Column {
  readonly directions: Uint32Array
  readonly shift: number
}

function sequenceOf(columns: readonly Column[]): PointSequence {
  const at = Uint32Array.from(columns, ({ shift }) => shift)
  // Digit by digit, because what a digit switches is wanted of all dimensions at once.
  const directions = new Uint32Array(bits * columns.length)
  for (const [dimension, column] of columns.entries())
    for (let bit = 0; bit < bits; bit++) directions[bit * columns.length + dimension] = column.directions[bit]
  let grayAt = 0
  const fill = (number: number, out: Float64Array): void => {
    const gray = number ^ (number >>> 1)
    // Only the bits that differ from the point before are switched: from one point to the next it is one.
    const changed = gray ^ grayAt
    grayAt = gray
    for (let rest = changed; rest !== 0; rest &= rest - 1) {
      const begin = at.length * (lowestBit - Math.clz32(rest & -rest))
      for (let dimension = 0; dimension < at.length; dimension++) at[dimension] ^= directions[begin + dimension]
    }
    for (let dimension = 0; dimension < at.length; dimension++) out[dimension] = (at[dimension] + 0.5) / words
  }
  return { dimensions: columns.length, fill }
}

interface Padded {
  readonly even: PointSequence
  readonly seed: number
  readonly replicate: number
}

function fillByChance({ even, seed, replicate }: Padded, number: number, out: Float64Array): void {
  even.fill(number, out)
  if (out.length <= even.dimensions) return
  const next = randomWords(seed, replicate, sobolDimensions, number)
  for (let dimension = even.dimensions; dimension < out.length; dimension++) out[dimension] = (next() + 0.5) / words
}

/** Direction numbers of a dimension, counted from 0, as binary fractions of 32 digits. */
function directionsOf(dimension: number): Uint32Array {
  const directions = new Uint32Array(bits)
  if (dimension === 0) return directions.map((_, bit) => 2 ** (bits - 1 - bit))
  const [polynomial, ...first] = rows[dimension - 1]
  const degree = first.length
  for (let bit = 0; bit < bits; bit++) {
    if (bit < degree) {
      directions[bit] = first[bit] * 2 ** (bits - 1 - bit)
      continue
    }
    let word = directions[bit - degree] ^ (directions[bit - degree] >>> degree)
    for (let back = 1; back < degree; back++) if ((polynomial >> (degree - back)) & 1) word ^= directions[bit - back]
    directions[bit] = word
  }
  return directions
}

function scrambled(directions: Uint32Array, next: () => number): Column {
  // Digit b of the result is digit b plus a random choice of those before it: the matrix is triangular with ones on its diagonal.
  const mixes = Array.from({ length: bits }, (_, digit) => {
    const own = 2 ** (bits - 1 - digit)
    return digit === 0 ? own : (own | (next() & ~(2 * own - 1))) >>> 0
  })
  const mixed = directions.map((word) => mixes.reduce((out, mix, digit) => out | (parity(word & mix) << (bits - 1 - digit)), 0))
  return { directions: mixed, shift: next() }
}

function parity(word: number): number {
  let folded = word ^ (word >>> 16)
  for (const shift of [8, 4, 2, 1]) folded ^= folded >>> shift
  return folded & 1
}
