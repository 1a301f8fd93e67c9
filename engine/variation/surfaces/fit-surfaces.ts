/**
 * Surfaces through judged sets, by weighted least squares: number ≈ Σ coefficient · term.
 *
 * How far a surface misses is told by sets that it has not seen: with h the leverage of a set, its miss in a fit without it is that of the fit
 * with it over 1 − h (D. M. Allen 1974, from memory).
 */
import { factor, type Lu, makeLu, solve } from '../../numbers/lu.ts'
import { addScaled, dot } from '../../numbers/row.ts'
import { type Quadratic, quadraticOf } from './quadratic.ts'
import { fillTerms, type Terms, termsCount } from './terms.ts'

/** Sets that surfaces go through. */
export interface FitAsked {
  readonly terms: Terms
  /** Set by set, one a source, in deviations from its mean. */
  readonly inputs: readonly ArrayLike<number>[]
  /** One a set. */
  readonly weights: Float64Array
  /** Number by number, one a set. */
  readonly columns: readonly Float64Array[]
  /** Sets whose misses are asked for. */
  readonly missed: readonly number[]
}

/** A surface of one number. */
export interface Surface extends Quadratic {
  /** One a set that was asked for: its number less what a surface without that set says. */
  readonly misses: Float64Array
}

/** Holds directions in which the sets do not differ, in shares of what all sets weigh: a source that does not vary, products that others add up to. */
const held_ratio = 1e-9

/** A leverage nearer to 1 than this belongs to a set that no other set speaks for. */
const unspoken_ratio = 1e-6

/** One surface a number. */
export function fitSurfaces({ terms, inputs, weights, columns, missed }: FitAsked): readonly Surface[] {
  const rows = inputs.map((input) => rowOf(terms, input))
  const lu = normalMatrix(rows, weights)
  // What is held on its diagonal has a pivot in every column.
  if (!factor(lu)) throw new Error('surfaces: a set has a source without a value')
  const leverages = missed.map((set) => weights[set] * dot(rows[set], solved(lu, rows[set])))
  return columns.map((values) => {
    const right = new Float64Array(lu.size)
    for (const [set, row] of rows.entries()) addScaled(right, row, weights[set] * values[set])
    const coefficients = solved(lu, right)
    const misses = Float64Array.from(
      missed,
      (set, index) => (values[set] - dot(rows[set], coefficients)) / Math.max(unspoken_ratio, 1 - leverages[index]),
    )
    return { ...quadraticOf(terms, coefficients), misses }
  })
}

function rowOf(terms: Terms, input: ArrayLike<number>): Float64Array {
  const row = new Float64Array(termsCount(terms))
  fillTerms(terms, input, row)
  return row
}

function normalMatrix(rows: readonly Float64Array[], weights: Float64Array): Lu {
  const size = rows[0].length
  const lu = makeLu(size)
  const { factors } = lu
  for (const [set, row] of rows.entries())
    for (let i = 0; i < size; i++) {
      const scaled = weights[set] * row[i]
      for (let j = 0; j <= i; j++) factors[i * size + j] += scaled * row[j]
    }
  const held = held_ratio * weights.reduce((sum, weight) => sum + weight, 0)
  for (let i = 0; i < size; i++) {
    factors[i * size + i] += held
    for (let j = 0; j < i; j++) factors[j * size + i] = factors[i * size + j]
  }
  return lu
}

function solved(lu: Lu, right: Float64Array): Float64Array {
  const out = right.slice()
  solve(lu, out)
  return out
}
