/**
 * A finger of dyads as flat tables: which parts and pins hang together, and where each of its numbers stands in one list. Tables are made
 * once a design; sets are told apart by the list of numbers alone.
 */
import type { Design, PadForceDirection, Port } from '../../design/design.ts'
import { partMass } from '../../design/mass.ts'
import { type DyadOrder, dyadOrder } from '../../forces/dyad-order.ts'
import { type Mechanism, mechanismOf } from '../../motion/mechanism.ts'
import {
  forceNumbers,
  jointNumbers,
  keptCase,
  type NumberBook,
  numberBook,
  numbersOfJoint,
  roomNumbers,
  springNumbers,
  stopNumbers,
  weightNumbers,
} from './flat-numbers.ts'
import { limbsOf, placesOf } from './flat-places.ts'
import type { FlatCase, FlatCouple, FlatDyad, FlatFinger, FlatForce } from './flat-tables.ts'
import type { NotStraight } from './straight-numbers.ts'

/** @returns why not, where a finger is not of the kind that the tables can hold */
export function flatFinger(design: Design): FlatFinger | NotStraight {
  const { drive } = design
  const mechanism = mechanismOf(design)
  if (drive.kind !== 'turn' || drive.against !== 0) return { why: 'the drive is not a turn against the mount' }
  if (mechanism.joints.some(({ kind }) => kind === 'slot')) return { why: 'a pin runs in a slot' }
  if (!design.springs.every((spring) => spring.kind === 'torsion' && spring.on === drive.part && spring.against === 0))
    return { why: 'a spring acts elsewhere than on the part that is driven' }
  const order = dyadOrder(mechanism)
  if (order?.lead.part !== drive.part) return { why: 'its parts do not come off two by two down to the part that is driven' }
  if (design.stops.some(({ against: { part, edge } }) => design.parts[part].edges[edge].kind !== 'straight'))
    return { why: 'a stop runs against an edge that is not straight' }
  if (design.toggles.length === 0) return { why: 'it watches no toggle' }
  return tablesOf(mechanism, order)
}

function tablesOf(mechanism: Mechanism, order: DyadOrder): FlatFinger {
  const { design, joints, parts_count } = mechanism
  const book = numberBook(mechanism)
  for (const [index, { pin }] of joints.entries())
    book.add(`the joint at pin ${design.pins[pin].id}`, (set) => jointNumbers(set, index))
  const { joint, part } = order.lead
  const jointOf = (pin: number): number => joints.findIndex((one) => one.pin === pin)
  const roomsFrom = book.length()
  for (const [index, { id }] of design.pins.entries()) book.add(`the room of pin ${id}`, (set) => roomNumbers(set.design, index))
  const roomsTo = book.length()
  const lead = { part, joint, onMount: placeOn(mechanism, joint, 0), onLead: placeOn(mechanism, joint, part) }
  const dyads = order.dyads.toReversed().map((dyad) => flatDyad(mechanism, dyad))
  const acting = {
    stops: design.stops.map(({ id, round, against }, index) => {
      const at = book.add(`stop ${id}`, (set) => stopNumbers(set.design, index))
      return { round: round.part, against: against.part, at }
    }),
    springs: design.springs.map(({ id }, index) => book.add(`spring ${id}`, (set) => springNumbers(set.design, index))),
    weights: weighedParts(design).map((weighed) => {
      const words = `the weight of ${design.parts[weighed].id}`
      return { part: weighed, at: book.add(words, (set) => weightNumbers(set.design, weighed)) }
    }),
    kept: flatCase(design, book),
  }
  return {
    ...{ parts_count, joints_count: joints.length, weight: design.weight, ...acting, lead, dyads },
    rooms: { from: roomsFrom, to: roomsTo },
    a: Int32Array.from(joints, ({ a }) => a),
    b: Int32Array.from(joints, ({ b }) => b),
    limbs: limbsOf({ lead, dyads }),
    places: [...placesOf({ dyads, ...acting })],
    toggles: design.toggles.map(({ a, b, c }) => [jointOf(a), jointOf(b), jointOf(c)] as const),
    numbers: book.list,
  }
}

function weighedParts({ parts, weight }: Design): readonly number[] {
  return parts.flatMap((part, index) => (weight && index > 0 && partMass(part) ? [index] : []))
}

/** Where the place of a joint on one of its parts stands. */
function placeOn({ joints }: Mechanism, joint: number, part: number): number {
  return joint * numbersOfJoint + (joints[joint].a === part ? 0 : 2)
}

function flatDyad(mechanism: Mechanism, { outerFirst, middle, outerSecond }: DyadOrder['dyads'][number]): FlatDyad {
  const [first, second] = [outerFirst.part, outerSecond.part]
  const [p, q, s] = [outerFirst.joint, middle.joint, outerSecond.joint]
  return {
    ...{ first, second, beyondFirst: outerFirst.beyond, beyondSecond: outerSecond.beyond, p, q, s },
    ...{ pOnFirst: placeOn(mechanism, p, first), pBeyond: placeOn(mechanism, p, outerFirst.beyond) },
    ...{ qOnFirst: placeOn(mechanism, q, first), qOnSecond: placeOn(mechanism, q, second) },
    ...{ sOnSecond: placeOn(mechanism, s, second), sBeyond: placeOn(mechanism, s, outerSecond.beyond) },
    ...{ pSide: outerFirst.side, qSide: middle.side, sSide: outerSecond.side },
  }
}

function flatCase(design: Design, book: NumberBook): FlatCase | undefined {
  const drawn = keptCase(design)
  if (!drawn) return undefined
  const words = `load case ${drawn.id}`
  const force = (on: PadForceDirection, force_N: (set: Design) => number): FlatForce => {
    return { part: on.part, frame: on.frame, at: book.add(words, ({ design: set }) => forceNumbers(set, on, force_N(set))) }
  }
  const couple = (part: number, against: number, size_Nmm: (set: Design) => number): FlatCouple => {
    return { part, against, at: book.add(words, ({ design: set }) => [size_Nmm(set)]) }
  }
  const { port } = drawn.keeper
  const kept = (set: Design) => keptCase(set) ?? drawn
  return {
    forces: drawn.forces.map((one, index) => force(one, (set) => kept(set).forces[index].force_N)),
    couples: drawn.couples.map(({ part, against }, index) => couple(part, against, (set) => kept(set).couples[index].couple_Nmm)),
    keeperForces: port.kind === 'force' ? [force(port, () => 1)] : [],
    keeperCouples: port.kind === 'force' ? [] : [couple(...turnedBy(design, port), () => -1)],
    allowed: book.add(words, ({ design: set }) => [kept(set).keeper.allowed]),
  }
}

/** A couple port is clockwise on its part; that of the drive is one on the part that is driven. */
function turnedBy({ drive }: Design, port: Exclude<Port, { readonly kind: 'force' }>): readonly [number, number] {
  if (port.kind === 'couple') return [port.part, port.against]
  return drive.kind === 'turn' ? [drive.part, drive.against] : [0, 0]
}
