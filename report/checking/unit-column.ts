import type { BenchCells } from './bench-columns.ts'

/** A number without a unit; its decimals may still be commas. */
const BARE = /^[-+]?[\d.,]+$/
const BETWEEN = /(\s+(?:to|over|between|and)\s+|\.\.)/

/**
 * Puts the unit that stands in a column of its own to every number of the row that has none.
 *
 * @returns undefined where a number has another unit already: which of them holds cannot be told
 */
export function withUnit(cells: BenchCells): BenchCells | undefined {
  const { unit } = cells
  if (unit === '') return cells
  const ends = [cells.x, cells.y, ...cells.found.split(BETWEEN).filter((_, index) => index % 2 === 0)]
  const isOther = ends.some((typed) => typed !== '' && !BARE.test(typed) && !typed.endsWith(unit))
  if (isOther) return undefined
  const united = (typed: string): string => (BARE.test(typed) ? `${typed} ${unit}` : typed)
  return {
    ...cells,
    found: cells.found.split(BETWEEN).map(united).join(''),
    x: united(cells.x),
    y: united(cells.y),
    uncertainty: united(cells.uncertainty),
  }
}
