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
    ...(typed.scatter && { scatter: readScatter(typed.scatter, reading) }),
  }
}

type TypedScatter = NonNullable<NonNullable<Reading['document']['factors']>['scatter']>

function readScatter(typed: TypedScatter, reading: Reading): NonNullable<NonNullable<Design['factors']>['scatter']> {
  const place = 'factors.scatter'
  const scatterOf = (key: 'load' | 'strength'): number => {
    const value = reading.share(`${place}.${key}`, typed[key])
    if (value === 0)
      reading.report({ code: 'too small', place: `${place}.${key}`, found: String(typed[key]), needed: 'more than 0' })
    return value
  }
  const source = reading.text(`${place}.source`, typed.source)
  return { load_ratio: scatterOf('load'), strength_ratio: scatterOf('strength'), source }
}
