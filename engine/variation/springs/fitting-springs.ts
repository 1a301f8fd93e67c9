/** Springs that could stand in the place of one of a design: they give what it gives now, in the room that the design states for it. */
import { closingsOver } from '../../design/closings.ts'
import type { Design, Spring } from '../../design/design.ts'
import type { Checked, Problem } from '../../design/problem.ts'
import { evaluate } from '../../evaluate.ts'
import { assemble } from '../../motion/assemble.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import { springsThatFit } from '../../strength/fitting/springs-that-fit.ts'
import type { FittingSpring, WantedSpring } from '../../strength/fitting/wanted-spring.ts'
import { type SpringWay, springWay } from '../../strength/spring-range.ts'

/** What was asked for and what was found. */
export interface FittingSprings {
  readonly spring: Spring
  readonly wanted: WantedSpring
  /** The largest least margin first; one whose margin is below zero does not hold. */
  readonly springs: readonly FittingSpring[]
  /** Coils that were judged. */
  readonly judged_count: number
}

/** Springs for the place of one of a design, or why none can be looked for. @param index of the spring in the design */
export function fittingSprings(design: Design, index: number): Checked<FittingSprings> {
  const spring = design.springs[index]
  const evaluation = evaluate(design)
  const drawn = assemble(mechanismOf(design)).posture
  if (!evaluation.travel || !drawn) return { problems: evaluation.problems }
  const postures = evaluation.travel.postures.map(({ poses }) => poses)
  const way = springWay(spring, postures, drawn)
  const wanted = wantedOf(design, spring, way)
  if ('found' in wanted) return { problems: [wanted] }
  return { value: { spring, wanted, ...springsThatFit(wanted) } }
}

function wantedOf(design: Design, spring: Spring, way: SpringWay): WantedSpring | Problem {
  const place = `springs.${spring.id}`
  const { least, most } = way
  if (!spring.room) {
    const needed = spring.kind === 'torsion' ? 'the room that there is: outside and width' : 'the room that there is: outside'
    return { code: 'missing', place: `${place}.room`, found: 'nothing', needed }
  }
  if (way.reverses || most - least < ROUNDING * most || most === 0) {
    const found = way.reverses ? 'an action that changes its sense on the travel' : 'the same action all over the travel'
    return { code: 'wrong value', place, found, needed: 'a spring that is wound, pressed or pulled further on the way' }
  }
  const cycles = design.use && closingsOver(design.use)
  if (spring.kind !== 'torsion') return wantedStraight({ ...spring, room: spring.room }, way, cycles)
  const over_mm = spring.wire?.arbour_mm ?? design.pins[spring.pin].diameter_mm
  const torques = { least_Nmm: least, most_Nmm: most, apart_rad: way.to - way.from }
  return { kind: 'torsion', ...torques, over_mm, ...spring.room, legs_mm: spring.wire?.legs_mm ?? 0, cycles }
}

/** Of an action that does not change only this much is left, by the closing of loops. */
const ROUNDING = 1e-9

type StraightSpring = Exclude<Spring, { readonly kind: 'torsion' }>

function wantedStraight(
  spring: StraightSpring & { readonly room: NonNullable<StraightSpring['room']> },
  { least, most, from, to }: SpringWay,
  cycles: number | undefined,
): WantedSpring {
  const [atLeast_mm, atMost_mm] = spring.kind === 'tension' ? [from, to] : [to, from]
  const asked = { least_N: least, most_N: most, atLeast_mm, atMost_mm, ...spring.room, cycles }
  if (spring.kind === 'tension') return { kind: 'tension', ...asked }
  return { kind: 'compression', ...asked, seats: spring.wire?.seats }
}
