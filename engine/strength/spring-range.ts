import type { Spring } from '../design/design.ts'
import { springAction } from '../forces/loads.ts'
import { distance } from '../motion/condition.ts'
import type { SpringRange } from './spring-strength.ts'

/** What a spring goes through on a way: its actions, and between which turns, rad, or lengths, mm. */
export interface SpringWay extends SpringRange {
  readonly from: number
  readonly to: number
}

/**
 * What a spring goes through on a way.
 *
 * @param postures of the way, at least one; @param drawn the assembled drawn posture, from which torsion springs count
 */
export function springWay(spring: Spring, postures: readonly Float64Array[], drawn: Float64Array): SpringWay {
  const place = placeOf(spring)
  const actions = postures.map((posture) => springAction(spring, posture, drawn))
  const places = postures.map(place)
  const sizes = actions.map(Math.abs)
  return {
    least: Math.min(...sizes),
    most: Math.max(...sizes),
    reverses: Math.min(...actions) < 0 && Math.max(...actions) > 0,
    from: Math.min(...places),
    to: Math.max(...places),
  }
}

function placeOf(spring: Spring): (posture: Float64Array) => number {
  if (spring.kind === 'torsion') return (posture) => posture[3 * spring.against + 2] - posture[3 * spring.on + 2]
  const length = distance(spring.from, spring.to)
  return (posture) => length.value(posture)
}
