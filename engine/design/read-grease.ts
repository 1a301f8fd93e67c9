import type { Design, GreasePoint, Pin, Spring, Stop } from './design.ts'
import { indicesOf } from './indices-of.ts'
import type { Reading } from './reading.ts'

interface Greased {
  readonly reading: Reading
  readonly pins: readonly Pin[]
  readonly stops: readonly Stop[]
  readonly springs: readonly Spring[]
}

/** Grease points in the order of the document; undefined when it states none. */
export function readGrease({ reading, pins, stops, springs }: Greased): Design['grease'] {
  const typed = reading.document.grease
  if (!typed) return undefined
  return Object.entries(typed).map(([id, one]): GreasePoint => {
    const place = `grease.${id}`
    const things = {
      pins: indicesOf(`${place}.pins`, one.pins, { reading, known: pins, what: 'pins' }),
      stops: indicesOf(`${place}.stops`, one.stops, { reading, known: stops, what: 'stops' }),
      springs: indicesOf(`${place}.springs`, one.springs, { reading, known: springs, what: 'springs' }),
    }
    if (things.pins.length + things.stops.length + things.springs.length === 0) {
      reading.report({ code: 'missing', place, found: 'grease on nothing', needed: 'at least one of pins, stops, springs' })
    }
    return {
      id,
      grease: reading.line(`${place}.with`, one.with),
      ...(one.amount !== undefined && { amount: reading.line(`${place}.amount`, one.amount) }),
      ...things,
    }
  })
}
