import type { Design } from './design.ts'
import type { Reading } from './reading.ts'

/** Below 1 a part would be called enough that fails under its load. */
const LEAST_factor = 1

/** By how much a strength must exceed its stress; undefined when the document does not say. */
export function readFactors(reading: Reading): Design['factors'] {
  const typed = reading.document.factors
  if (!typed) return undefined
  const least = { kind: 'number', least: LEAST_factor } as const
  return {
    yield: reading.atLeast('factors.yield', typed.yield, least),
    ultimate: reading.atLeast('factors.ultimate', typed.ultimate, least),
    reason: reading.text('factors.reason', typed.reason),
  }
}
