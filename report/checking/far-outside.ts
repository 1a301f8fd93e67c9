import { foundOf, limitsFor, type Reading } from '../../engine/index.ts'
import type { BenchRow } from './bench-row.ts'
import { foundText } from './plan-rows.ts'

/** Tolerances by which a reading may miss a limit before it is asked about: a slip of a digit misses by far more, a bad part by less. */
const FAR_tolerances = 5

/** What is asked about a reading that lies so far outside of its limits that it was likely mistyped; undefined for any other. */
export function farOutside(reading: Reading): string | undefined {
  if (!isFarOutside(reading)) return undefined
  return `${foundText(reading)} is far outside of what the drawing allows. Press Enter once more if it was read so.`
}

/** What is asked about a table before it is kept: its readings that were likely mistyped, one a line. */
export function farOutsideRows(rows: readonly BenchRow[]): readonly string[] {
  return rows.flatMap(({ row, serial, reading }) => {
    if (reading === undefined || !isFarOutside(reading)) return []
    const { number, words } = reading.characteristic
    return [`row ${row}, ${serial}, no. ${number} ${words}: ${foundText(reading)} is far outside of what the drawing allows`]
  })
}

function isFarOutside(reading: Reading): boolean {
  const { least, most } = limitsFor(reading)
  const found = foundOf(reading)
  const width = most === undefined ? 0 : most - (least ?? 0)
  const beyond = Math.max((least ?? Number.NEGATIVE_INFINITY) - found.most, found.least - (most ?? Number.POSITIVE_INFINITY))
  return beyond > FAR_tolerances * width
}
