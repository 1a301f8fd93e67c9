import type { Point } from '../../design/design.ts'
import type { Change } from '../../design/edit/change.ts'
import type { Addition, Ask, Inputs } from './addition.ts'
import { answered, askChoice, askName, askQuantity, Calculation } from './asks.ts'
import { freeName, type Ground, holesOf, type NamedHole, onPart, putInto, typedAt, typedLength } from './ground.ts'

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
  const middle = middleOf(ground, first)
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['pins'], 'newPin')),
    askChoice('one', names, { label: 'part or hole', typed: first[0] }),
    askChoice('other', names, { label: 'other part or hole', typed: first[1] }),
    askQuantity('x', 'length', { label: 'x as drawn', typed: typedLength(middle.x_mm) }),
    askQuantity('y', 'length', { label: 'y as drawn', typed: typedLength(middle.y_mm) }),
    askQuantity('diameter', 'length', { typed: firstPinTyped(ground) ?? '3 mm' }),
    askQuantity('hole', 'length', { label: 'diameter of new holes', typed: firstHoleTyped(ground) ?? '3.012 mm' }),
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

/** Two free holes of two parts, or two parts that no pin joins yet. */
function firstSeats({ design }: Ground, seats: ReadonlyMap<string, Seat>): readonly [string, string] | undefined {
  const isJoined = (one: number, other: number): boolean =>
    design.pins.some(({ joins }) => [one, other].every((part) => joins.some((hole) => hole.part === part)))
  const pairs = [...seats].flatMap(([one, a]) =>
    [...seats]
      .filter(([, b]) => b.part > a.part && (a.hole === undefined) === (b.hole === undefined))
      .map(([other, b]) => ({ pair: [one, other] as const, isNew: !isJoined(a.part, b.part) })),
  )
  return (pairs.find(({ isNew }) => isNew) ?? pairs[0])?.pair
}

function middleOf({ posture, design }: Ground, names: readonly [string, string]): Point {
  const [one, other] = names.map((name) => design.parts.findIndex(({ id }) => id === name.split('.')[0]))
  const middle = (axis: number) => (posture[3 * one + axis] + posture[3 * other + axis]) / 2
  return { x_mm: middle(0), y_mm: middle(1) }
}

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
