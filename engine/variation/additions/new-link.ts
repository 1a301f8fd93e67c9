import type { Change, JsonValue } from '../../design/edit/change.ts'
import { valueAt } from '../../design/edit/value-at.ts'
import { limits } from '../../numbers/limits.ts'
import type { Addition, Ask, Inputs } from './addition.ts'
import { answered, askChoice, askName, askQuantity, Calculation } from './asks.ts'
import { freeName, type Ground, holesOf, type NamedHole, putInto, typedAt, typedLength } from './ground.ts'
import { firstMaterial, slenderOutline } from './plate.ts'

/** A link of two pins between two holes, as long as these are apart as drawn. A pin that sits in a hole goes through the link too. */
export function newLink(ground: Ground): Addition | undefined {
  const holes = holesOf(ground)
  const first = firstPair(holes)
  const friction = ground.design.frictionPairs.map(({ name }) => name)
  if (!first || friction.length === 0) return undefined
  const names = holes.map(({ name }) => name)
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['parts'], 'newLink')),
    askChoice('from', names, { typed: first[0].name }),
    askChoice('to', names, { typed: first[1].name }),
    askQuantity('diameter', 'length', {
      label: 'pin diameter',
      typed: typedAt(ground, 'pins', firstPin(ground), 'diameter') ?? '3 mm',
    }),
    askChoice('friction', friction),
  ]
  return { kind: 'link', title: 'A link between two holes', asks, propose: (inputs) => propose(ground, answered(asks, inputs)) }
}

const firstPin = ({ design }: Ground): string => design.pins[0]?.id ?? ''

/** Holes of two parts that no pin joins and that are apart: first those without a pin, then from the mount to the far end. */
function firstPair(holes: readonly NamedHole[]): readonly [NamedHole, NamedHole] | undefined {
  const free = holes.filter(({ pin }) => pin === undefined)
  for (const from of [...free, ...holes]) {
    const to = [...free, ...holes.toReversed()].find((one) => areLinkable(from, one))
    if (to) return [from, to]
  }
  return undefined
}

function areLinkable(from: NamedHole, to: NamedHole): boolean {
  const isOtherPin = from.pin === undefined || from.pin !== to.pin
  return from.part !== to.part && isOtherPin && distance_mm(from, to) >= 1
}

function distance_mm({ at }: NamedHole, other: NamedHole): number {
  return Math.hypot(at.x_mm - other.at.x_mm, at.y_mm - other.at.y_mm)
}

function propose(ground: Ground, { name, from, to, diameter, friction }: Inputs): ReturnType<Addition['propose']> {
  const calculation = new Calculation(ground)
  const byName = new Map(holesOf(ground).map((hole) => [hole.name, hole]))
  const ends = [calculation.named('from', byName, from), calculation.named('to', byName, to)] as const
  const [near, far] = ends
  if (!near || !far) return { problems: calculation.problems }
  const length_mm = distance_mm(near, far)
  if (length_mm < limits.sizeLeast_mm) {
    calculation.report('to', 'too small', { found: 'two holes at one place', needed: `at least ${limits.sizeLeast_mm} mm apart` })
    return { problems: calculation.problems }
  }
  const link = linkPart(ground, [near, far], diameter)
  const pins = (
    [
      ['near', near],
      ['far', far],
    ] as const
  ).flatMap(([end, hole]) =>
    pinAt(ground, hole, { own: `${name}.${end}`, name: `${name}${end === 'near' ? 'Near' : 'Far'}`, diameter, friction }),
  )
  return { value: [putInto(ground, ['parts'], [name, link]), ...pins] }
}

function linkPart(ground: Ground, [near, far]: readonly [NamedHole, NamedHole], diameter: string): JsonValue {
  const length = typedLength(distance_mm(near, far))
  const isPlaced = [near, far].every(({ part }) => ground.design.parts[part].drawn !== undefined)
  const turn = Math.atan2(far.at.y_mm - near.at.y_mm, far.at.x_mm - near.at.x_mm)
  return {
    role: 'link',
    ...firstMaterial(ground),
    outline: slenderOutline(length),
    holes: {
      near: { x: '0 mm', y: '0 mm', diameter: holeFor(ground, near) ?? diameter },
      far: { x: length, y: '0 mm', diameter: holeFor(ground, far) ?? diameter },
    },
    ...(!isPlaced && { drawn: { x: typedLength(near.at.x_mm), y: typedLength(near.at.y_mm), turn: `${turn} rad` } }),
  }
}

/** The link's hole is as wide as the widest that the pin goes through: one of the others may be pressed on it. */
function holeFor({ desk, design }: Ground, { pin }: NamedHole): JsonValue | undefined {
  if (pin === undefined) return undefined
  const holes = design.pins[pin].joins.map(({ part, hole }) => ({
    part: design.parts[part].id,
    hole: design.parts[part].holes[hole],
  }))
  const widest = holes.reduce((most, one) => (one.hole.diameter_mm > most.hole.diameter_mm ? one : most))
  return valueAt(desk.document, ['parts', widest.part, 'holes', widest.hole.id, 'diameter'])
}

interface NewPin {
  readonly own: string
  readonly name: string
  readonly diameter: string
  readonly friction: string
}

/** The pin that sits in the hole goes through the link as well; a hole without one gets a pin. */
function pinAt(ground: Ground, hole: NamedHole, { own, name, diameter, friction }: NewPin): readonly Change[] {
  const { design } = ground
  const owner = design.parts[hole.part].id
  if (hole.pin === undefined) {
    const pin = { joins: [hole.name, own], fixedIn: owner, diameter, friction }
    return [putInto(ground, ['pins'], [freeName(ground, ['pins'], name), pin])]
  }
  const { id, joins, fixedIn } = design.pins[hole.pin]
  const through: Change = { kind: 'set', place: ['pins', id, 'joins', joins.length], value: own }
  const isFixed = typedAt(ground, 'pins', id, 'fixedIn') !== undefined
  return isFixed ? [through] : [through, { kind: 'set', place: ['pins', id, 'fixedIn'], value: design.parts[fixedIn].id }]
}
