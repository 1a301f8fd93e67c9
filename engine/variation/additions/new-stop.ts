import type { Point } from '../../design/design.ts'
import type { Addition, Ask, Inputs } from './addition.ts'
import { answered, askChoice, askName, askQuantity, Calculation } from './asks.ts'
import { freeName, type Ground, holesOf, onPart, putInto, typedPoint } from './ground.ts'

/** Half the length of a new edge. */
const halfEdge_mm = 3

/** A round end about a hole against a new straight edge of another part, which faces it across a gap as drawn. */
export function newStop(ground: Ground): Addition | undefined {
  const { design } = ground
  const holes = holesOf(ground).map(({ name }) => name)
  const friction = design.frictionPairs.map(({ name }) => name)
  const round = holes.at(-1)
  const against = design.parts.find(({ id }) => id !== round?.split('.')[0])?.id
  if (round === undefined || against === undefined || friction.length === 0) return undefined
  const asks: readonly Ask[] = [
    askName(freeName(ground, ['stops'], 'newStop')),
    askChoice('round', holes, { label: 'round end about', typed: round }),
    askQuantity('radius', 'length', { typed: '1.5 mm' }),
    askChoice(
      'against',
      design.parts.map(({ id }) => id),
      { label: 'edge of', typed: against },
    ),
    askQuantity('towards', 'angle', { label: 'direction from the round to the edge, as drawn', typed: '-90 deg' }),
    askQuantity('gap', 'length', { label: 'gap as drawn', typed: '2 mm' }),
    askChoice('friction', friction),
  ]
  return {
    kind: 'stop',
    title: 'A stop: a round end against a new edge',
    asks,
    propose: (inputs) => propose(ground, answered(asks, inputs)),
  }
}

function propose(ground: Ground, inputs: Inputs): ReturnType<Addition['propose']> {
  const { name, round, radius, against, friction } = inputs
  const calculation = new Calculation(ground)
  const hole = calculation.named('round', new Map(holesOf(ground).map((one) => [one.name, one])), round)
  const part = calculation.named('against', new Map(ground.design.parts.map(({ id }, index) => [id, index])), against)
  const reach_mm = calculation.quantity('radius', 'length', radius) + calculation.quantity('gap', 'length', inputs.gap)
  const towards_rad = calculation.quantity('towards', 'angle', inputs.towards)
  if (hole === undefined || part === undefined || calculation.problems.length > 0) return { problems: calculation.problems }
  const [from, to] = edgeFacing(hole.at, { towards_rad, reach_mm }).map((end) => typedPoint(onPart(ground, part, end)))
  const section = ['parts', against, 'edges']
  const edge = freeName(ground, section, name)
  const [roundPart, roundHole] = round.split('.')
  const stop = { round: { part: roundPart, hole: roundHole, radius }, against: `${against}.${edge}`, friction }
  return { value: [putInto(ground, section, [edge, { from, to }]), putInto(ground, ['stops'], [name, stop])] }
}

interface Facing {
  readonly towards_rad: number
  /** From the centre to the edge. */
  readonly reach_mm: number
}

/**
 * Ends of a straight edge that faces a centre: it lies across the direction `towards`, its solid behind it.
 *
 *     centre ───towards──▶ │░   from below to above where `towards` is to the right: the solid lies to the right of from → to
 */
export function edgeFacing({ x_mm, y_mm }: Point, { towards_rad, reach_mm }: Facing): readonly [Point, Point] {
  const [c, s] = [Math.cos(towards_rad), Math.sin(towards_rad)]
  const end = (along_mm: number): Point => ({
    x_mm: x_mm + reach_mm * c + along_mm * s,
    y_mm: y_mm + reach_mm * s - along_mm * c,
  })
  return [end(halfEdge_mm), end(-halfEdge_mm)]
}
