import type { Pin, Spring, Stop } from './design.ts'
import type { Document } from './document.ts'
import { frictionNamed, type Shelf } from './read-pins.ts'
import { notFound, type References } from './references.ts'

type TypedStop = NonNullable<Document['stops']>[string]
type TypedSpring = NonNullable<Document['springs']>[string]
type TypedTorsion = TypedSpring & { readonly kind: 'torsion' }
type TypedStraight = Exclude<TypedSpring, { readonly kind: 'torsion' }>

/** What is known once the pins are read. */
export interface Workbench extends Shelf {
  readonly pins: readonly Pin[]
  readonly find: References
}

/** Stops in the order of the document; the round end and the edge are of different parts. */
export function readStops(bench: Workbench): readonly Stop[] {
  return Object.entries(bench.reading.document.stops ?? {}).map(([id, typed]) => readStop(id, typed, bench))
}

function readStop(id: string, typed: TypedStop, bench: Workbench): Stop {
  const { reading, find } = bench
  const place = `stops.${id}`
  const round = find.point(`${place}.round`, typed.round)
  const against = find.edge(`${place}.against`, typed.against)
  reportSamePart(place, { parts: [round.part, against.part], needed: 'a round end and an edge of different parts' }, bench)
  return {
    id,
    round: { ...round, radius_mm: reading.size(`${place}.round.radius`, typed.round.radius) },
    against,
    friction: frictionNamed(`${place}.friction`, typed.friction, bench),
    gap_mm: typed.gap === undefined ? 0 : reading.quantity(`${place}.gap`, typed.gap, 'length'),
  }
}

/** Something that acts between two parts needs two of them. */
export function reportSamePart(
  place: string,
  { parts: [a, b], needed }: { readonly parts: readonly [number, number]; readonly needed: string },
  { reading, parts }: Shelf,
): void {
  if (a === b && a !== notFound) reading.report({ code: 'wrong value', place, found: `${parts[a].id} twice`, needed })
}

/** A pin that has to join two given parts. */
export function reportUnjoined(
  place: string,
  { pin, parts: [a, b] }: { readonly pin: number; readonly parts: readonly [number, number] },
  { reading, parts, pins }: Workbench,
): void {
  if (pin === notFound || a === notFound || b === notFound || a === b) return
  const joined = pins[pin].joins.map((hole) => hole.part)
  if (joined.includes(notFound) || (joined.includes(a) && joined.includes(b))) return
  reading.report({
    code: 'wrong value',
    place,
    found: `${pins[pin].id}, which joins ${joined.map((part) => parts[part].id).join(' and ')}`,
    needed: `a pin that joins ${parts[a].id} and ${parts[b].id}`,
  })
}

/** Springs in the order of the document; each acts between two parts. */
export function readSprings(bench: Workbench): readonly Spring[] {
  return Object.entries(bench.reading.document.springs ?? {}).map(([id, typed]) =>
    typed.kind === 'torsion' ? readTorsion(id, typed, bench) : readStraight(id, typed, bench),
  )
}

function readTorsion(id: string, typed: TypedTorsion, bench: Workbench): Spring {
  const { reading, find } = bench
  const place = `springs.${id}`
  const pin = find.pin(`${place}.pin`, typed.pin)
  const on = find.part(`${place}.on`, typed.on)
  const against = find.part(`${place}.against`, typed.against)
  reportSamePart(place, { parts: [on, against], needed: 'a spring between two parts' }, bench)
  reportUnjoined(`${place}.pin`, { pin, parts: [on, against] }, bench)
  return {
    id,
    kind: 'torsion',
    pin,
    on,
    against,
    rate_Nmm_rad: reading.atLeast(`${place}.rate`, typed.rate, { kind: 'torsionRate', least: 0 }),
    preload_Nmm: reading.quantity(`${place}.preload`, typed.preload, 'couple'),
    ownFriction_ratio: typed.ownFriction === undefined ? 0 : reading.share(`${place}.ownFriction`, typed.ownFriction),
  }
}

function readStraight(id: string, typed: TypedStraight, bench: Workbench): Spring {
  const { reading, find } = bench
  const place = `springs.${id}`
  const from = find.point(`${place}.from`, typed.from)
  const to = find.point(`${place}.to`, typed.to)
  reportSamePart(place, { parts: [from.part, to.part], needed: 'a spring between two parts' }, bench)
  const initial = 'initial' in typed ? typed.initial : undefined
  return {
    id,
    kind: typed.kind,
    from,
    to,
    rate_N_mm: reading.above0(`${place}.rate`, typed.rate, 'springRate'),
    freeLength_mm: reading.size(`${place}.freeLength`, typed.freeLength),
    initial_N: initial === undefined ? 0 : reading.atLeast(`${place}.initial`, initial, { kind: 'force', least: 0 }),
    ownFriction_ratio: typed.ownFriction === undefined ? 0 : reading.share(`${place}.ownFriction`, typed.ownFriction),
  }
}
