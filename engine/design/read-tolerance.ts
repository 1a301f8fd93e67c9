import { kindWords, type QuantityKind } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { Tolerance } from './design.ts'
import type { Document } from './document.ts'
import type { Reading } from './reading.ts'

type TypedTolerance = NonNullable<NonNullable<Document['pins']>[string]['tolerance']>

/** Zones by name: fundamental deviation (capitals for holes, small letters for shafts; no i, l, o, q, w) and grade 01 to 18. */
const holeZone = /^(?:[ABCDEFGHJKMNPRSTUVXYZ]|CD|EF|FG|JS|ZA|ZB|ZC)(?:01|0|[1-9]|1[0-8])$/
const shaftZone = /^(?:[abcdefghjkmnprstuvxyz]|cd|ef|fg|js|za|zb|zc)(?:01|0|[1-9]|1[0-8])$/

interface Toleranced {
  readonly place: string
  readonly kind: QuantityKind
  /** In the inside unit of `kind`. */
  readonly nominal: number
  readonly surface: 'hole' | 'shaft' | 'any'
  readonly reading: Reading
}

/**
 * Tolerance of a size. Limits are stored as deviations from the nominal, in the inside unit of its kind.
 * SOURCE standard ISO 286-1:2010 for the letters and grades of zones; from memory.
 */
export function readTolerance(typed: TypedTolerance, sized: Toleranced): Tolerance {
  if (typeof typed === 'string') return readZone(typed, sized)
  const { place, kind, nominal, reading } = sized
  if ('plus' in typed) {
    const plus = reading.atLeast(`${place}.plus`, typed.plus, { kind, least: 0 })
    const minus = reading.atLeast(`${place}.minus`, typed.minus, { kind, least: 0 })
    return { kind: 'limits', lower: 0 - minus, upper: plus }
  }
  const from = reading.quantity(`${place}.from`, typed.from, kind)
  const to = reading.quantity(`${place}.to`, typed.to, kind)
  if (from > to) {
    reading.report({ code: 'wrong order', place, found: `from ${typed.from} to ${typed.to}`, needed: 'from no larger than to' })
  }
  return { kind: 'limits', lower: from - nominal, upper: to - nominal }
}

function readZone(zone: string, { place, kind, surface, reading }: Toleranced): Tolerance {
  const isHole = holeZone.test(zone)
  const isShaft = shaftZone.test(zone)
  if (kind !== 'length') {
    reading.report({
      code: 'wrong unit',
      place,
      found: `the zone ${quoted(zone)} on ${kindWords(kind)}`,
      needed: 'a zone only on a length',
    })
  } else if (!isHole && !isShaft) {
    reading.report({ code: 'unknown name', place, found: quoted(zone), needed: 'an ISO 286 zone: H7 for a hole, h6 for a shaft' })
  } else if (surface === 'hole' && !isHole) {
    reading.report({
      code: 'wrong value',
      place,
      found: `the shaft’s zone ${quoted(zone)} on a hole`,
      needed: 'a zone in capitals, such as H7',
    })
  } else if (surface === 'shaft' && !isShaft) {
    reading.report({
      code: 'wrong value',
      place,
      found: `the hole’s zone ${quoted(zone)} on a pin`,
      needed: 'a zone in small letters, such as h6',
    })
  }
  return { kind: 'zone', zone }
}
