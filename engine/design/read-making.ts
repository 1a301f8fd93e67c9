import type { BoughtItem, Making, Order, Part, Pin, Spring } from './design.ts'
import { indicesOf } from './indices-of.ts'
import type { Reading } from './reading.ts'

interface Bench {
  readonly reading: Reading
  readonly parts: readonly Part[]
  readonly pins: readonly Pin[]
  readonly springs: readonly Spring[]
}

/** The orders of a document, in its order. A thing that stands in several is ordered in several steps, such as milling and coating. */
export function readOrders(bench: Bench): readonly Order[] {
  const { reading } = bench
  return Object.entries(reading.document.orders ?? {}).map(([id, typed]) => {
    const place = `orders.${id}`
    const things = {
      parts: indicesOf(`${place}.parts`, typed.parts, { reading, known: bench.parts, what: 'parts' }),
      pins: indicesOf(`${place}.pins`, typed.pins, { reading, known: bench.pins, what: 'pins' }),
      springs: indicesOf(`${place}.springs`, typed.springs, { reading, known: bench.springs, what: 'springs' }),
    }
    if (things.parts.length + things.pins.length + things.springs.length === 0) {
      reading.report({ code: 'missing', place, found: 'an order for nothing', needed: 'at least one of parts, pins, springs' })
    }
    return {
      id,
      process: reading.line(`${place}.process`, typed.process),
      ...things,
      setUp: money(`${place}.setUp`, typed.setUp ?? 0, reading),
      each: money(`${place}.each`, typed.each, reading),
      blank: money(`${place}.blank`, typed.blank ?? 0, reading),
    }
  })
}

/** Bought items of a document, in its order. */
export function readBought(reading: Reading): readonly BoughtItem[] {
  return Object.entries(reading.document.bought ?? {}).map(([id, typed]) => {
    const place = `bought.${id}`
    return {
      id,
      title: reading.line(`${place}.title`, typed.title),
      quantity: wholeFrom1(`${place}.quantity`, typed.quantity, reading),
      each: money(`${place}.each`, typed.each, reading),
      ...(typed.mass !== undefined && { mass_kg: reading.atLeast(`${place}.mass`, typed.mass, { kind: 'mass', least: 0 }) }),
    }
  })
}

/** What the document says of making; undefined where it says nothing. */
export function readMaking(reading: Reading): Making | undefined {
  const typed = reading.document.making
  if (typed === undefined) return undefined
  const minutes = (key: 'assembly' | 'fitting' | 'inspection') => money(`making.${key}`, typed[key] ?? 0, reading)
  return {
    set_count: wholeFrom1('making.set', typed.set ?? 1, reading),
    currency: reading.line('making.currency', typed.currency),
    wage: money('making.wage', typed.wage ?? 0, reading),
    assembly_min: minutes('assembly'),
    fitting_min: minutes('fitting'),
    inspection_min: minutes('inspection'),
    learning_ratio: shareAbove('making.learning', typed.learning ?? 1, { reading, above: LEAST_LEARNING }),
    good_ratio: shareAbove('making.goodShare', typed.goodShare ?? 1, { reading, above: 0 }),
    ...(typed.price !== undefined && { price: money('making.price', typed.price, reading) }),
  }
}

/** With half of the minutes left at each doubling the sum of all minutes stands still: no work learns faster. */
const LEAST_LEARNING = 0.5

function money(place: string, typed: string | number, reading: Reading): number {
  return reading.atLeast(place, typed, { kind: 'number', least: 0 })
}

function wholeFrom1(place: string, typed: string | number, reading: Reading): number {
  const value = reading.atLeast(place, typed, { kind: 'number', least: 1 })
  if (Number.isFinite(value) && !Number.isInteger(value)) {
    reading.report({ code: 'wrong value', place, found: String(typed), needed: 'a whole number' })
  }
  return value
}

function shareAbove(
  place: string,
  typed: string | number,
  { reading, above }: { readonly reading: Reading; readonly above: number },
): number {
  const value = reading.quantity(place, typed, 'number')
  if (value <= above || value > 1) {
    const needed = `a share above ${100 * above} % and at most 100 %`
    reading.report({ code: value > 1 ? 'too large' : 'too small', place, found: String(typed), needed })
  }
  return value
}
