import type { Pin, Stop } from './design.ts'
import type { Document } from './document.ts'
import { coatingNamed } from './read-coatings.ts'
import { frictionNamed, type Shelf } from './read-pins.ts'
import { readSlices } from './read-slices.ts'
import { notFound, type References } from './references.ts'

type TypedStop = NonNullable<Document['stops']>[string]

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
    ...(typed.across && { across: readSlices(`${place}.across`, typed.across, reading) }),
    ...stopCoating(place, typed, bench),
    ...(typed.profile !== undefined && {
      profileZone_mm: reading.atLeast(`${place}.profile`, typed.profile, { kind: 'length', least: 0 }),
    }),
    friction: frictionNamed(`${place}.friction`, typed.friction, bench),
    gap_mm: typed.gap === undefined ? reading.shift(`${place}.gap`) : reading.quantity(`${place}.gap`, typed.gap, 'length'),
  }
}

function stopCoating(place: string, { coating }: TypedStop, bench: Workbench): Pick<Stop, 'coating'> {
  const named = coating === undefined ? undefined : coatingNamed(`${place}.coating`, coating, bench)
  return named ? { coating: named } : {}
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
