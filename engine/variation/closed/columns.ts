/**
 * Numbers of many sets side by side: a column has one entry a set. Work goes column by column, so that a table is looked up once for all sets of
 * a block, and the processor has one set's roots and divisions to wait for while it does another's.
 */

/** One number of every set of a block. */
export type Column = Float64Array

/** A place or a vector of every set: mm, or N. */
export interface Pair {
  readonly x: Column
  readonly y: Column
}

/** What a part carries in every set: x and y (N), and the moment about the mount's origin (N·mm). */
export interface PartForce extends Pair {
  readonly moment: Column
}

/** How a part moves in every set: its turn, and x and y of the velocity of its point at the mount's origin. */
export interface PartMotion extends Pair {
  readonly turn: Column
}

/** So many pairs. */
export function pairs(count: number, sets_count: number): readonly Pair[] {
  return Array.from({ length: count }, () => ({ x: new Float64Array(sets_count), y: new Float64Array(sets_count) }))
}

/** So many columns. */
export function columns(count: number, sets_count: number): readonly Column[] {
  return Array.from({ length: count }, () => new Float64Array(sets_count))
}

/** A force a part, all nothing. */
export function partForces(parts_count: number, sets_count: number): readonly PartForce[] {
  return pairs(parts_count, sets_count).map((pair) => ({ ...pair, moment: new Float64Array(sets_count) }))
}

/** A motion a part; none moves. */
export function partMotions(parts_count: number, sets_count: number): readonly PartMotion[] {
  return pairs(parts_count, sets_count).map((pair) => ({ ...pair, turn: new Float64Array(sets_count) }))
}
