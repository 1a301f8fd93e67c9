import { limits } from '../numbers/limits.ts'
import type { FrictionPair, Hole, HoleRef, Part, Pin } from './design.ts'
import type { Document } from './document.ts'
import { coatingNamed } from './read-coatings.ts'
import { materialNamed, type Rows } from './read-parts.ts'
import { readSurface } from './read-surfaces.ts'
import { readTolerance } from './read-tolerance.ts'
import type { Reading } from './reading.ts'
import { notFound, References } from './references.ts'

type TypedPin = NonNullable<Document['pins']>[string]

export interface Shelf extends Rows {
  readonly frictionPairs: ReadonlyMap<string, FrictionPair>
  readonly parts: readonly Part[]
}

/** Pins in the order of the document, each fitting its holes, no hole with two pins. */
export function readPins(shelf: Shelf): readonly Pin[] {
  const pins = Object.entries(shelf.reading.document.pins ?? {}).map(([id, typed]) => readPin(id, typed, shelf))
  reportSharedHoles(pins, shelf)
  return pins
}

/** Stands for a friction pair that has been reported; never leaves the reader. */
const noFriction: FrictionPair = {
  name: '',
  moving: { least: Number.NaN, likely: Number.NaN, most: Number.NaN },
  rest: { least: Number.NaN, likely: Number.NaN, most: Number.NaN },
  source: '',
}

/** The friction pair of that name; one of NaN when it has been reported. */
export function frictionNamed(
  place: string,
  name: string,
  { reading, frictionPairs }: Pick<Shelf, 'reading' | 'frictionPairs'>,
): FrictionPair {
  const pair = frictionPairs.get(name)
  if (!pair && !reading.wasTakenOut(`friction.${name}`)) {
    reading.unknownName(place, { typed: name, what: 'a pair of friction', known: [...frictionPairs.keys()] })
  }
  return pair ?? noFriction
}

function readPin(id: string, typed: TypedPin, shelf: Shelf): Pin {
  const { reading, parts } = shelf
  const place = `pins.${id}`
  const find = new References(reading, parts)
  const joins = typed.joins.map((hole, index) => find.hole(`${place}.joins.${index}`, hole))
  const diameter_mm = reading.size(`${place}.diameter`, typed.diameter)
  const toleranced = { place: `${place}.tolerance`, kind: 'length', nominal: diameter_mm, surface: 'shaft', reading } as const
  const material = typed.material === undefined ? undefined : materialNamed(`${place}.material`, typed.material, shelf)
  const coating = typed.coating === undefined ? undefined : coatingNamed(`${place}.coating`, typed.coating, shelf)
  const pin: Pin = {
    id,
    joins,
    diameter_mm,
    ...(typed.tolerance !== undefined && { tolerance: readTolerance(typed.tolerance, toleranced) }),
    ...(material && { material }),
    ...(coating && { coating }),
    ...readSurface(place, typed, reading),
    friction: frictionNamed(`${place}.friction`, typed.friction, shelf),
    fixedIn: readFixedIn(place, typed, { joins, find, reading }),
    shear: typed.shear ?? 'double',
    drag_Nmm: typed.drag === undefined ? 0 : reading.atLeast(`${place}.drag`, typed.drag, { kind: 'couple', least: 0 }),
  }
  reportDoubledParts(pin, shelf)
  reportHoles(pin, shelf)
  return pin
}

interface Joined {
  readonly joins: readonly HoleRef[]
  readonly find: References
  readonly reading: Reading
}

function readFixedIn(place: string, typed: TypedPin, { joins, find, reading }: Joined): number {
  if (typed.fixedIn === undefined) {
    if (joins.length > 2) {
      const found = `a pin through ${joins.length} parts without fixedIn`
      reading.report({ code: 'missing', place: `${place}.fixedIn`, found, needed: 'the part it does not turn in' })
    }
    return joins[0].part
  }
  const part = find.part(`${place}.fixedIn`, typed.fixedIn)
  const isUnsure = part === notFound || joins.some((hole) => hole.part === notFound)
  if (!isUnsure && !joins.some((hole) => hole.part === part)) {
    reading.report({
      code: 'wrong value',
      place: `${place}.fixedIn`,
      found: typed.fixedIn,
      needed: 'one of the parts that the pin joins',
    })
  }
  return part
}

function reportDoubledParts({ id, joins }: Pin, { reading, parts }: Shelf): void {
  const known = joins.map((hole) => hole.part).filter((part) => part !== notFound)
  const doubled = known.find((part, index) => known.indexOf(part) !== index)
  if (doubled !== undefined) {
    const found = `two holes of ${parts[doubled].id}`
    reading.report({ code: 'wrong value', place: `pins.${id}.joins`, found, needed: 'holes of different parts' })
  }
}

/** Fit and slots: a pin turns in its holes, may be pressed into the part it is fixed in, and runs in one slot at most. */
function reportHoles(pin: Pin, { reading, parts }: Shelf): void {
  let slots = 0
  for (const [index, { part, hole }] of pin.joins.entries()) {
    const found: Hole | undefined = parts[part]?.holes[hole]
    if (!found) continue
    const place = `pins.${pin.id}.joins.${index}`
    const isFixed = part === pin.fixedIn
    const room_mm = isFixed ? limits.pressFit_ratio * pin.diameter_mm : 0
    if (found.diameter_mm + room_mm < pin.diameter_mm) {
      reading.report({
        code: 'does not fit',
        place,
        found: `a pin of ${pin.diameter_mm} mm in a hole of ${found.diameter_mm} mm`,
        needed: isFixed
          ? `a hole at most ${100 * limits.pressFit_ratio} % smaller, for a press fit`
          : 'a hole no smaller than the pin',
      })
    }
    if (!found.slot) continue
    slots++
    if (isFixed) {
      const wayOut = 'Name another part as fixedIn.'
      reading.report({
        code: 'wrong value',
        place,
        found: 'a slot in the part that the pin is fixed in',
        needed: 'a round hole',
        wayOut,
      })
    }
  }
  if (slots > 1) {
    reading.report({
      code: 'too many',
      place: `pins.${pin.id}.joins`,
      found: `${slots} slots`,
      needed: 'at most one slot for a pin',
    })
  }
}

function reportSharedHoles(pins: readonly Pin[], { reading, parts }: Shelf): void {
  const users = new Map<string, string>()
  for (const pin of pins) {
    for (const [index, { part, hole }] of pin.joins.entries()) {
      const found = parts[part]?.holes[hole]
      if (!found) continue
      const name = `${parts[part].id}.${found.id}`
      const other = users.get(name)
      if (other !== undefined && other !== pin.id) {
        const place = `pins.${pin.id}.joins.${index}`
        reading.report({
          code: 'used twice',
          place,
          found: `the hole ${name}, in which ${other} sits`,
          needed: 'a hole of its own',
        })
      }
      users.set(name, pin.id)
    }
  }
}

/** A part without a drawn place must be placed by two round holes whose pins sit in drawn parts. */
export function reportUnplacedParts(pins: readonly Pin[], { reading, parts }: Shelf): void {
  const isMountKnown = parts.some((part) => part.role === 'mount')
  for (const [index, part] of parts.entries()) {
    if (part.drawn || !isMountKnown) continue
    const placing = pins.filter(
      (pin) =>
        pin.joins.some((hole) => hole.part === index && !part.holes[hole.hole]?.slot) &&
        pin.joins.some((hole) => hole.part !== index && (parts[hole.part]?.drawn !== undefined || hole.part === notFound)),
    )
    if (placing.length >= 2 || reading.hasBrokenIn('pins') || reading.hasBrokenIn('parts')) continue
    reading.report({
      code: 'missing',
      place: `parts.${part.id}.drawn`,
      found: `nothing, and ${placing.length} pins that place it`,
      needed: 'its place as drawn, or two pins in drawn parts',
    })
  }
}
