import { limits } from '../numbers/limits.ts'
import type { Edge, Hole, Point } from './design.ts'
import type { Document } from './document.ts'
import { readPair, readXY, wholeTurn_rad } from './read-points.ts'
import { readRoughness, readSurface } from './read-surfaces.ts'
import { readTolerance } from './read-tolerance.ts'
import type { Reading } from './reading.ts'

type TypedPart = NonNullable<Document['parts']>[string]
type TypedHole = NonNullable<TypedPart['holes']>[string]
type TypedEdge = NonNullable<TypedPart['edges']>[string]

interface PlacedReading {
  readonly place: string
  readonly reading: Reading
}

/** An opening of a part, by its id. @param place of the hole */
export function readHole(id: string, typed: TypedHole, { place, reading }: PlacedReading): Hole {
  const diameter_mm = reading.size(`${place}.diameter`, typed.diameter)
  const { position } = typed
  const zone_mm =
    position === undefined ? undefined : reading.atLeast(`${place}.position`, position, { kind: 'length', least: 0 })
  const toleranced = { place: `${place}.tolerance`, kind: 'length', nominal: diameter_mm, surface: 'hole', reading } as const
  return {
    id,
    at: inZone(readXY(place, typed, reading), { place, zone_mm, diameter_mm, reading }),
    diameter_mm,
    ...(typed.tolerance !== undefined && { tolerance: readTolerance(typed.tolerance, toleranced) }),
    ...(zone_mm !== undefined && { positionZone_mm: zone_mm }),
    ...(typed.positionBonus && { hasPositionBonus: bonusOf(place, typed, reading) }),
    ...(typed.datum && { isDatum: datumOf(place, typed, reading) }),
    ...readSurface(place, typed, reading),
    ...(typed.slot && {
      slot: {
        length_mm: reading.size(`${place}.slot.length`, typed.slot.length),
        along_rad: reading.quantity(`${place}.slot.along`, typed.slot.along, 'angle'),
      },
    }),
  }
}

interface InZone {
  readonly place: string
  readonly zone_mm: number | undefined
  readonly diameter_mm: number
  readonly reading: Reading
}

/** The centre as this set has it. */
function inZone(at: Point, { place, zone_mm = 0, diameter_mm, reading }: InZone): Point {
  const within = reading.zonePlace(place)
  if (!within) return at
  const bonus_mm = within.leastSize_mm === undefined ? 0 : Math.max(0, diameter_mm - within.leastSize_mm)
  const radius_mm = (zone_mm + bonus_mm) / 2
  return { x_mm: at.x_mm + radius_mm * within.x, y_mm: at.y_mm + radius_mm * within.y }
}

function bonusOf(place: string, { position }: TypedHole, reading: Reading): true {
  if (position === undefined) {
    const found = 'a bonus without a zone'
    reading.report({ code: 'missing', place: `${place}.position`, found, needed: 'the zone that the bonus is added to' })
  }
  return true
}

function datumOf(place: string, { position }: TypedHole, reading: Reading): true {
  if (position !== undefined) {
    const found = 'a zone of the hole that places are measured from'
    reading.report({ code: 'wrong value', place: `${place}.position`, found, needed: 'none: a datum is in its own place' })
  }
  return true
}

function surfaceOf(place: string, typed: TypedEdge, reading: Reading): Pick<Edge, 'profileZone_mm' | 'roughness_mm'> {
  const { profile } = typed
  return {
    ...(profile !== undefined && { profileZone_mm: reading.atLeast(`${place}.profile`, profile, { kind: 'length', least: 0 }) }),
    ...readRoughness(place, typed.roughness, reading),
  }
}

/** A boundary of a part for stops, by its id. @param place of the edge */
export function readEdge(id: string, typed: TypedEdge, { place, reading }: PlacedReading): Edge {
  if (!('centre' in typed)) {
    const from = readPair(`${place}.from`, typed.from, reading)
    const to = readPair(`${place}.to`, typed.to, reading)
    const length_mm = Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm)
    if (length_mm < limits.sizeLeast_mm) {
      reading.report({
        code: 'too small',
        place,
        found: `an edge ${length_mm} mm long`,
        needed: `at least ${limits.sizeLeast_mm} mm`,
      })
    }
    return { id, kind: 'straight', from, to, ...surfaceOf(place, typed, reading) }
  }
  const from_rad = reading.quantity(`${place}.from`, typed.from, 'angle')
  const to_rad = reading.quantity(`${place}.to`, typed.to, 'angle')
  if (to_rad <= from_rad || to_rad - from_rad > wholeTurn_rad) {
    reading.report({
      code: 'wrong order',
      place: `${place}.to`,
      found: `from ${typed.from} to ${typed.to}`,
      needed: 'to above from, by at most a turn (360 deg)',
    })
  }
  return {
    id,
    kind: 'arc',
    centre: readPair(`${place}.centre`, typed.centre, reading),
    radius_mm: reading.size(`${place}.radius`, typed.radius),
    from_rad,
    to_rad,
    solid: typed.solid,
    ...surfaceOf(place, typed, reading),
  }
}
