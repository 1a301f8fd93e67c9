import { parseQuantity, type QuantityKind } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { Checked } from './problem.ts'

/**
 * Reads one quantity that is typed outside of a document: a field of the page, an option of the command line.
 * The same reader as in a document, but without dimensions to refer to.
 *
 * @param typed such as `1/4 in`, `60 deg` or `10 lbf * 12 in`
 * @returns the value in the inside unit of `kind` (mm, rad, N, N·mm, N/mm, N·mm/rad, MPa, kg, kg/mm³, 1), always finite
 *          and within the limits; or one problem without a place
 */
export function readQuantity(typed: string, kind: QuantityKind): Checked<number> {
  const { value, fault } = parseQuantity(typed, kind)
  if (!fault) return { value }
  const { code, column, found, needed, wayOut } = fault
  return {
    problems: [{ code, place: '', found: `${quoted(typed)}, at column ${column} ${found}`, needed, ...(wayOut && { wayOut }) }],
  }
}
