import { limits } from '../numbers/limits.ts'
import type { Part } from './design.ts'
import type { Reading } from './reading.ts'

/** Where something lies across the finger's width, slice by slice. */
export function readSlices(
  place: string,
  typed: readonly (readonly [string, string])[],
  reading: Reading,
): NonNullable<Part['across']> {
  return typed.map(([from, to], index) => {
    const here = `${place}.${index}`
    const from_mm = reading.quantity(`${here}.0`, from, 'length')
    const to_mm = reading.quantity(`${here}.1`, to, 'length')
    if (to_mm - from_mm < limits.sizeLeast_mm) {
      const needed = `to above from by at least ${limits.sizeLeast_mm} mm`
      reading.report({ code: 'wrong order', place: here, found: `from ${from} to ${to}`, needed })
    }
    return { from_mm, to_mm }
  })
}
