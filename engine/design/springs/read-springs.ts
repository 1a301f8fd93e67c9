/** Springs of the document: by rate and preload, by wire and coil, or by both, which then have to agree. */
import { quoted } from '../../numbers/quote.ts'
import type { PartPoint, Spring } from '../design.ts'
import type { Document } from '../document.ts'
import { reportSamePart, reportUnjoined, type Workbench } from '../read-joints.ts'
import type { Reading } from '../reading.ts'
import { helicalRate, tensionTurns, torsionRate } from './coil.ts'
import { readStraightRoom, readTorsionRoom } from './read-room.ts'
import { activeCoils, readCompressionWire, readTensionWire, readTorsionWire } from './read-wire.ts'
import { readWithin } from './read-within.ts'
import type { CompressionWire, TensionWire, TorsionWire } from './spring-wire.ts'
import { wireModuli } from './wire-rows.ts'

type TypedSpring = NonNullable<Document['springs']>[string]
type TypedTorsion = TypedSpring & { readonly kind: 'torsion' }
type TypedStraight = Exclude<TypedSpring, { readonly kind: 'torsion' }>

/** Makers wind small springs to about this; common practice of the trade, no published source. */
const WITHIN_ratio = 0.1

/** Springs in the order of the document; each acts between two parts. */
export function readSprings(bench: Workbench): readonly Spring[] {
  return Object.entries(bench.reading.document.springs ?? {}).map(([id, typed]) =>
    typed.kind === 'torsion' ? readTorsion(id, typed, bench) : readStraight(id, typed, bench),
  )
}

/** Rate of all springs of this wire together, N·mm per rad. */
export function rateOfTorsionWire(wire: TorsionWire): number {
  return wire.springs_count * torsionRate({ ...wire, modulus_MPa: wireModuli(wire.material, wire.wire_mm).modulus_MPa })
}

/** Rate of a compression spring, N/mm. */
export function rateOfCompressionWire(wire: CompressionWire): number {
  return helicalRate({ ...wire, ...wireModuli(wire.material, wire.wire_mm), activeTurns: activeCoils(wire) })
}

/** Rate of a tension spring, N/mm. */
export function rateOfTensionWire(wire: TensionWire): number {
  const moduli = wireModuli(wire.material, wire.wire_mm)
  return helicalRate({ ...wire, ...moduli, activeTurns: tensionTurns(wire.bodyTurns, moduli) })
}

function readTorsion(id: string, typed: TypedTorsion, bench: Workbench): Spring {
  const { reading, find } = bench
  const place = `springs.${id}`
  const pin = find.pin(`${place}.pin`, typed.pin)
  const on = find.part(`${place}.on`, typed.on)
  const against = find.part(`${place}.against`, typed.against)
  reportSamePart(place, { parts: [on, against], needed: 'a spring between two parts' }, bench)
  reportUnjoined(`${place}.pin`, { pin, parts: [on, against] }, bench)
  const pin_mm = bench.pins[pin]?.diameter_mm ?? Number.NaN
  const wire = typed.wire && readTorsionWire(typed.wire, pin_mm, { place: `${place}.wire`, reading })
  const rate_Nmm_rad = torsionRateOf(typed, wire, { place, reading })
  const bodyTurns = wire?.bodyTurns ?? 0
  const room = typed.room && readTorsionRoom(typed.room, { place, reading, wire, bodyTurns })
  return {
    id,
    kind: 'torsion',
    pin,
    on,
    against,
    rate_Nmm_rad,
    preload_Nmm: preloadOf(typed, rate_Nmm_rad, { place, reading }),
    ...readWithin<'rate' | 'preload'>(place, typed.within, reading),
    ownFriction_ratio: typed.ownFriction === undefined ? 0 : reading.share(`${place}.ownFriction`, typed.ownFriction),
    ...(wire && { wire }),
    ...(room && { room }),
  }
}

interface Where {
  readonly place: string
  readonly reading: Reading
}

function torsionRateOf({ rate, wire: typed }: TypedTorsion, wire: TorsionWire | undefined, where: Where): number {
  const { place, reading } = where
  const stated = rate === undefined ? undefined : reading.atLeast(`${place}.rate`, rate, { kind: 'torsionRate', least: 0 })
  const wound = wire && rateOfTorsionWire(wire)
  return agreed({ stated, wound, key: 'rate', typed: rate, within: typed?.within, shown: perDegree }, where)
}

function preloadOf({ preload, wire }: TypedTorsion, rate_Nmm_rad: number, where: Where): number {
  const { place, reading } = where
  const stated = preload === undefined ? undefined : reading.quantity(`${place}.preload`, preload, 'couple')
  const woundUp = wire?.woundUp === undefined ? undefined : reading.quantity(`${place}.wire.woundUp`, wire.woundUp, 'angle')
  const wound = woundUp === undefined ? undefined : rate_Nmm_rad * woundUp
  return agreed(
    { stated, wound, key: 'preload', typed: preload, within: wire?.within, shown: (value) => `${short(value)} N·mm` },
    where,
  )
}

const short = (value: number): string => `${Number(value.toPrecision(4))}`
const perDegree = (value: number): string => `${short((value * Math.PI) / 180)} N·mm/deg`

interface Two {
  readonly stated: number | undefined
  /** By the wire. */
  readonly wound: number | undefined
  readonly key: 'rate' | 'preload'
  readonly typed: string | undefined
  readonly within: string | number | undefined
  readonly shown: (value: number) => string
}

/** What is stated, once it agrees with what the wire gives; or the one of them that there is. */
function agreed({ stated, wound, key, typed, within, shown }: Two, { place, reading }: Where): number {
  const share = within === undefined ? WITHIN_ratio : reading.share(`${place}.wire.within`, within)
  const at = `${place}.${key}`
  if (stated !== undefined && wound !== undefined && Math.abs(stated - wound) > share * Math.abs(wound)) {
    const found = `${quoted(typed ?? '')}, and ${shown(wound)} by the wire`
    const wayOut = `Change the coil, or leave ${key} out and it follows from the wire.`
    reading.report({ code: 'contradiction', place: at, found, needed: `two that agree within ${short(100 * share)} %`, wayOut })
  }
  if (stated === undefined && wound === undefined) {
    const from = key === 'rate' ? 'wire' : 'wire.woundUp'
    reading.report({ code: 'missing', place: at, found: `neither ${key} nor ${from}`, needed: 'one of the two' })
  }
  return stated ?? wound ?? Number.NaN
}

function readStraight(id: string, typed: TypedStraight, bench: Workbench): Spring {
  const { reading, find } = bench
  const place = `springs.${id}`
  const from = find.point(`${place}.from`, typed.from)
  const to = find.point(`${place}.to`, typed.to)
  reportSamePart(place, { parts: [from.part, to.part], needed: 'a spring between two parts' }, bench)
  const freeLength_mm = reading.size(`${place}.freeLength`, typed.freeLength)
  const ownFriction_ratio = typed.ownFriction === undefined ? 0 : reading.share(`${place}.ownFriction`, typed.ownFriction)
  const ends = { id, from, to, freeLength_mm, ownFriction_ratio }
  return typed.kind === 'tension'
    ? readTension(typed, ends, { place, reading })
    : readCompression(typed, ends, { place, reading })
}

interface Ends {
  readonly id: string
  readonly from: PartPoint
  readonly to: PartPoint
  readonly freeLength_mm: number
  readonly ownFriction_ratio: number
}

function readTension(typed: TypedStraight & { kind: 'tension' }, ends: Ends, where: Where): Spring {
  const { place, reading } = where
  const { initial } = typed
  const initial_N = initial === undefined ? 0 : reading.atLeast(`${place}.initial`, initial, { kind: 'force', least: 0 })
  const spring = { free_mm: ends.freeLength_mm, initial_N }
  const wire = typed.wire && readTensionWire(typed.wire, spring, { place: `${place}.wire`, reading })
  const rate_N_mm = straightRateOf(typed, wire && rateOfTensionWire(wire), where)
  const within = readWithin<'rate' | 'initial'>(place, typed.within, reading)
  const room = typed.room && readStraightRoom(typed.room, { ...where, wire })
  return { ...ends, kind: 'tension', rate_N_mm, initial_N, ...within, ...(wire && { wire }), ...(room && { room }) }
}

function readCompression(typed: TypedStraight & { kind: 'compression' }, ends: Ends, where: Where): Spring {
  const { place, reading } = where
  const wire = typed.wire && readCompressionWire(typed.wire, ends.freeLength_mm, { place: `${place}.wire`, reading })
  const rate_N_mm = straightRateOf(typed, wire && rateOfCompressionWire(wire), where)
  const within = readWithin<'rate'>(place, typed.within, reading)
  const room = typed.room && readStraightRoom(typed.room, { ...where, wire })
  return { ...ends, kind: 'compression', rate_N_mm, initial_N: 0, ...within, ...(wire && { wire }), ...(room && { room }) }
}

function straightRateOf({ rate, wire }: TypedStraight, wound: number | undefined, where: Where): number {
  const stated = rate === undefined ? undefined : where.reading.above0(`${where.place}.rate`, rate, 'springRate')
  return agreed(
    { stated, wound, key: 'rate', typed: rate, within: wire?.within, shown: (value) => `${short(value)} N/mm` },
    where,
  )
}
