import type { Point } from '../../design/design.ts'
import type { Change } from '../../design/edit/change.ts'
import type { Addition, Ask, Inputs } from './addition.ts'
import { answered, askChoice, askName, askQuantity, Calculation } from './asks.ts'
import { freeName, type Ground, holesOf, type NamedHole, onPart, putInto, typedAt, typedLength } from './ground.ts'
import { metalOfBoth } from './metal-of-both.ts'

/** What a pin goes through: a hole without a pin, or a part that gets a hole where the pin is to stand. */
interface Seat {
  readonly part: number
  readonly hole?: NamedHole
}

/** A pin through two holes that have none, or at a point of the finger as drawn, where it makes the holes that are missing. */
export function newPin(ground: Ground): Addition | undefined {
  const seats = seatsOf(ground)
  const friction = ground.design.frictionPairs.map(({ name }) => name)
  const first = firstSeats(ground, seats)
  if (!first || friction.length === 0) return undefined
  const names = [...seats.keys()]
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['pins'], 'newPin')),
    askChoice('one', names, { label: 'part or hole', typed: first.names[0] }),
    askChoice('other', names, { label: 'other part or hole', typed: first.names[1] }),
    askQuantity('x', 'length', { label: 'x as drawn', typed: typedLength(first.at.x_mm) }),
    askQuantity('y', 'length', { label: 'y as drawn', typed: typedLength(first.at.y_mm) }),
    askQuantity('diameter', 'length', { typed: firstPinTyped(ground) ?? '3 mm' }),
    askQuantity('hole', 'length', { label: 'diameter of new holes', typed: firstHoleTyped(ground) ?? `${FIRST_HOLE_mm} mm` }),
    askChoice('friction', friction),
  ]
  return { kind: 'pin', title: 'A pin through two parts', asks, propose: (inputs) => propose(ground, answered(asks, inputs)) }
}

function seatsOf(ground: Ground): ReadonlyMap<string, Seat> {
  const free = holesOf(ground).filter(({ pin }) => pin === undefined)
  return new Map<string, Seat>([
    ...free.map((hole): [string, Seat] => [hole.name, { part: hole.part, hole }]),
    ...ground.design.parts.map(({ id }, part): [string, Seat] => [id, { part }]),
  ])
}

/** What a pin is proposed for, and where. */
interface FirstSeats {
  readonly names: readonly [string, string]
  readonly at: Point
}

/**
 * Two free holes of two parts, or two parts with metal enough for a hole over each other: first those that no pin joins yet. Where none
 * have, any two, and the reader of designs says what is wrong with it.
 */
function firstSeats(ground: Ground, seats: ReadonlyMap<string, Seat>): FirstSeats | undefined {
  const isJoined = (one: number, other: number): boolean =>
    ground.design.pins.some(({ joins }) => [one, other].every((part) => joins.some((hole) => hole.part === part)))
  const pairs = [...seats].flatMap(([one, a]) =>
    [...seats]
      .filter(([, b]) => b.part > a.part && (a.hole === undefined) === (b.hole === undefined))
      .map(([other, b]) => ({ names: [one, other] as const, a, b, isNew: !isJoined(a.part, b.part) })),
  )
  const inOrder = [...pairs.filter(({ isNew }) => isNew), ...pairs.filter(({ isNew }) => !isNew)]
  for (const { names, a, b } of inOrder) {
    if (a.hole) return { names, at: middleOf(ground, names) }
    const place = metalOfBoth(ground, [a.part, b.part])
    if (place && place.edge_mm > WALL_diameters * firstHole_mm(ground)) return { names, at: place.at }
  }
  const [any] = inOrder
  return any && { names: any.names, at: middleOf(ground, any.names) }
}

/** From the middle of a proposed hole to the nearest edge, in diameters: its radius and a tenth of a diameter of metal at least. */
const WALL_diameters = 0.6

function middleOf({ posture, design }: Ground, names: readonly [string, string]): Point {
  const [one, other] = names.map((name) => design.parts.findIndex(({ id }) => id === name.split('.')[0]))
  const middle = (axis: number) => (posture[3 * one + axis] + posture[3 * other + axis]) / 2
  return { x_mm: middle(0), y_mm: middle(1) }
}

/** The hole that is proposed, mm. */
function firstHole_mm({ design }: Ground): number {
  const { part, hole } = design.pins[0]?.joins[0] ?? {}
  return part === undefined || hole === undefined ? FIRST_HOLE_mm : design.parts[part].holes[hole].diameter_mm
}

/** For a design without a pin. */
const FIRST_HOLE_mm = 3.012

/** Diameters are taken over together from the first pin and its last hole, so that they fit. */
function firstPinTyped(ground: Ground): string | undefined {
  return typedAt(ground, 'pins', ground.design.pins[0]?.id ?? '', 'diameter')
}

function firstHoleTyped(ground: Ground): string | undefined {
  const { design } = ground
  const turning = design.pins[0]?.joins.find(({ part }) => part !== design.pins[0].fixedIn)
  if (!turning) return undefined
  const part = design.parts[turning.part]
  return typedAt(ground, 'parts', part.id, 'holes', part.holes[turning.hole].id, 'diameter')
}

function propose(ground: Ground, inputs: Inputs): ReturnType<Addition['propose']> {
  const { name, one, other, diameter, friction } = inputs
  const calculation = new Calculation(ground)
  const seats = seatsOf(ground)
  const [a, b] = [calculation.named('one', seats, one), calculation.named('other', seats, other)]
  const typed = { x_mm: calculation.quantity('x', 'length', inputs.x), y_mm: calculation.quantity('y', 'length', inputs.y) }
  if (!a || !b || calculation.problems.length > 0) return { problems: calculation.problems }
  if (a.part === b.part) {
    calculation.report('other', 'wrong value', {
      found: `${ground.design.parts[a.part].id} twice`,
      needed: 'two different parts',
    })
    return { problems: calculation.problems }
  }
  const at = a.hole?.at ?? b.hole?.at ?? typed
  const [first, second] = [a, b].map((seat) => seated(ground, seat, { name, at, diameter: inputs.hole }))
  const fixedIn = ground.design.parts[a.part].id
  const pin = { joins: [first.hole, second.hole], fixedIn, diameter, friction }
  return { value: [...first.changes, ...second.changes, putInto(ground, ['pins'], [name, pin])] }
}

interface NewHole {
  readonly name: string
  readonly at: Point
  readonly diameter: string
}

function seated(
  ground: Ground,
  { part, hole }: Seat,
  { name, at, diameter }: NewHole,
): { readonly hole: string; readonly changes: readonly Change[] } {
  if (hole) return { hole: hole.name, changes: [] }
  const { id } = ground.design.parts[part]
  const place = ['parts', id, 'holes']
  const own = freeName(ground, place, name)
  const { x_mm, y_mm } = onPart(ground, part, at)
  const made = { x: typedLength(x_mm), y: typedLength(y_mm), diameter }
  return { hole: `${id}.${own}`, changes: [putInto(ground, place, [own, made])] }
}
