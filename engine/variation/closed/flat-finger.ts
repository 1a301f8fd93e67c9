/**
 * A finger of dyads as flat tables: which parts and pins hang together, and where each of its numbers stands in one list. Tables are made
 * once a design; sets are told apart by the list of numbers alone.
 */
import type { Design, PadForceDirection, Point, Port, Spring } from '../../design/design.ts'
import { partMass } from '../../design/mass.ts'
import { type DyadOrder, dyadsLedBy } from '../../forces/dyad-order.ts'
import { type Mechanism, mechanismOf } from '../../motion/mechanism.ts'
import { driveNumbers, type FlatDrive, flatDrive, turnsAbout } from './flat-drive.ts'
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
  const mechanism = mechanismOf(design)
  const drive = flatDrive(design)
  if ('why' in drive) return drive
  if (mechanism.joints.some(({ kind }) => kind === 'slot')) return { why: 'a pin runs in a slot' }
  if (!design.springs.every((spring) => actsOn(spring, drive.part)))
    return { why: 'a spring acts elsewhere than on the part that is driven' }
  const order = dyadsLedBy(mechanism, drive.part)
  if (!order) return { why: 'its parts do not come off two by two down to the part that is driven' }
  if (!turnsAbout(design.drive, placeIn(mechanism, order.lead)))
    return { why: 'the roller of its cable turns about no pin in the mount' }
  if (design.drive.kind === 'wrap' && keptCase(design)?.keeper.port.kind === 'drive') return { why: 'its keeper pulls the cable' }
  if (design.stops.some(({ against: { part, edge } }) => design.parts[part].edges[edge].kind !== 'straight'))
    return { why: 'a stop runs against an edge that is not straight' }
  if (design.toggles.length === 0) return { why: 'it watches no toggle' }
  return tablesOf(mechanism, { order, drive })
}

/** Whether a spring is a torsion spring between the mount and a part. */
function actsOn(spring: Spring, part: number): boolean {
  return spring.kind === 'torsion' && Math.min(spring.on, spring.against) === 0 && Math.max(spring.on, spring.against) === part
}

/** Place of a contact's pin in its own part. */
function placeIn({ joints }: Mechanism, { joint, part }: DyadOrder['lead']): Point {
  return joints[joint].a === part ? joints[joint].atA : joints[joint].atB
}

interface Led {
  readonly order: DyadOrder
  readonly drive: FlatDrive
}

function tablesOf(mechanism: Mechanism, { order, drive }: Led): FlatFinger {
  const { design, joints, parts_count } = mechanism
  const book = numberBook(mechanism)
  for (const [index, { pin }] of joints.entries())
    book.add(`the joint at pin ${design.pins[pin].id}`, (set) => jointNumbers(set, index))
  const { joint, part } = order.lead
  const jointOf = (pin: number): number => joints.findIndex((one) => one.pin === pin)
  const roomsFrom = book.length()
  for (const [index, { id }] of design.pins.entries()) book.add(`the room of pin ${id}`, (set) => roomNumbers(set.design, index))
  const roomsTo = book.length()
  const at = book.add('the drive', (set) => driveNumbers(set.design))
  const lead = { ...drive, joint, at, onMount: placeOn(mechanism, joint, 0), onLead: placeOn(mechanism, joint, part) }
  const dyads = order.dyads.toReversed().map((dyad) => flatDyad(mechanism, dyad))
  const acting = {
    stops: design.stops.map(({ id, round, against }, index) => {
      const at = book.add(`stop ${id}`, (set) => stopNumbers(set.design, index))
      return { round: round.part, against: against.part, at }
    }),
    springs: design.springs.map((spring, index) => {
      const sense = spring.kind === 'torsion' && spring.on === 0 ? -1 : 1
      return { at: book.add(`spring ${spring.id}`, (set) => springNumbers(set.design, index)), sense } as const
    }),
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
