/** Springs: of torsion on a pin, of tension between two holes. */
import type { Addition, Ask, Inputs } from './addition.ts'
import { answered, askChoice, askName, askQuantity, Calculation } from './asks.ts'
import { freeName, type Ground, holesOf, type NamedHole, putInto, typedLength } from './ground.ts'

/** A torsion spring on a pin, between two of its parts: on the drive's pin at first. */
export function newTorsionSpring(ground: Ground): Addition | undefined {
  const { design } = ground
  const { drive, pins, parts } = design
  if (pins.length === 0) return undefined
  const pin = pins[drive.kind === 'turn' ? drive.pin : 0]
  const against = drive.kind === 'turn' ? drive.against : pin.fixedIn
  const on = pin.joins.find(({ part }) => part !== against)?.part ?? 0
  const partIds = parts.map(({ id }) => id)
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['springs'], 'newSpring')),
    askChoice(
      'pin',
      pins.map(({ id }) => id),
      { typed: pin.id },
    ),
    askChoice('on', partIds, { label: 'turns towards open', typed: partIds[on] }),
    askChoice('against', partIds, { typed: partIds[against] }),
    askQuantity('rate', 'torsionRate', { typed: '0.5 N*mm/deg' }),
    askQuantity('preload', 'couple', { label: 'preload as drawn', typed: '20 N*mm' }),
  ]
  const propose: Addition['propose'] = (inputs) => {
    const { name, ...spring } = answered(asks, inputs)
    return { value: [putInto(ground, ['springs'], [name, { kind: 'torsion', ...spring }])] }
  }
  return { kind: 'torsion spring', title: 'A torsion spring on a pin', asks, propose }
}

/** Pull of a new tension spring as drawn and its rate: it is stretched by the one over the other. */
const pull = { force: '2 N', rate: '1 N/mm' }
/** Two holes nearer than this leave no room for a spring that is stretched by 2 mm. */
const roomLeast_mm = 4

/** A tension spring between two holes, whose free length follows from its pull as drawn. */
export function newTensionSpring(ground: Ground): Addition | undefined {
  const holes = holesOf(ground)
  const names = holes.map(({ name }) => name)
  const first = holes.flatMap((from) =>
    holes.filter((to) => to.part !== from.part && apart_mm(from, to) > roomLeast_mm).map((to) => [from, to]),
  )[0]
  if (!first) return undefined
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['springs'], 'newSpring')),
    askChoice('from', names, { typed: first[0].name }),
    askChoice('to', names, { typed: first[1].name }),
    askQuantity('rate', 'springRate', { typed: pull.rate }),
    askQuantity('pull', 'force', { label: 'pull as drawn', typed: pull.force }),
  ]
  return {
    kind: 'tension spring',
    title: 'A tension spring between two holes',
    asks,
    propose: (inputs) => propose(ground, answered(asks, inputs)),
  }
}

function apart_mm(one: NamedHole, other: NamedHole): number {
  return Math.hypot(one.at.x_mm - other.at.x_mm, one.at.y_mm - other.at.y_mm)
}

function propose(ground: Ground, { name, from, to, rate, pull: typed }: Inputs): ReturnType<Addition['propose']> {
  const calculation = new Calculation(ground)
  const byName = new Map(holesOf(ground).map((hole) => [hole.name, hole]))
  const [one, other] = [calculation.named('from', byName, from), calculation.named('to', byName, to)]
  const stretch_mm = calculation.quantity('pull', 'force', typed) / calculation.quantity('rate', 'springRate', rate)
  if (!one || !other || calculation.problems.length > 0) return { problems: calculation.problems }
  const free_mm = apart_mm(one, other) - stretch_mm
  if (!(free_mm > 0) || !Number.isFinite(free_mm)) {
    const found = `a spring stretched by ${Number(stretch_mm.toPrecision(3))} mm between holes ${typedLength(apart_mm(one, other))} apart`
    calculation.report('pull', 'too large', { found, needed: 'a stretch shorter than the way between its ends' })
    return { problems: calculation.problems }
  }
  const spring = { kind: 'tension', from: endOf(from), to: endOf(to), rate, freeLength: typedLength(free_mm) }
  return { value: [putInto(ground, ['springs'], [name, spring])] }
}

function endOf(name: string): { readonly part: string; readonly hole: string } {
  const [part, hole] = name.split('.')
  return { part, hole }
}
