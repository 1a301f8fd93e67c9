import { foundOf, limitsFor, type Reading } from '../../engine/index.ts'
import { foundText } from './plan-rows.ts'

/** Tolerances by which a reading may miss a limit before it is asked about: a slip of a digit misses by far more, a bad part by less. */
const FAR_tolerances = 5

/** What is asked about a reading that lies so far outside of its limits that it was likely mistyped; undefined for any other. */
export function farOutside(reading: Reading): string | undefined {
  const { least, most } = limitsFor(reading)
  const found = foundOf(reading)
  const width = most === undefined ? 0 : most - (least ?? 0)
  const beyond = Math.max((least ?? Number.NEGATIVE_INFINITY) - found.most, found.least - (most ?? Number.POSITIVE_INFINITY))
  if (beyond <= FAR_tolerances * width) return undefined
  return `${foundText(reading)} is far outside of what the drawing allows. Press Enter once more if it was read so.`
}
