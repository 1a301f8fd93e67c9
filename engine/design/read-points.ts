import type { Point } from './design.ts'
import type { Reading } from './reading.ts'

/** Most that an arc or a range of directions may span: a turn, with room for the rounding of a turn typed in two ways. */
export const wholeTurn_rad = 2 * Math.PI + 1e-9

/** A point typed as an object with x and y. */
export function readXY(place: string, { x, y }: { readonly x: string; readonly y: string }, reading: Reading): Point {
  return { x_mm: reading.quantity(`${place}.x`, x, 'length'), y_mm: reading.quantity(`${place}.y`, y, 'length') }
}

/** A point typed as a pair. */
export function readPair(place: string, [x, y]: readonly [string, string], reading: Reading): Point {
  return { x_mm: reading.quantity(`${place}.0`, x, 'length'), y_mm: reading.quantity(`${place}.1`, y, 'length') }
}
