/**
 * Whether two neighbouring nodes lie on one smooth path.
 *
 * With c′ the closure derivative and t the tangent, det [c′; t] is never zero on a path that has only one way on, so its sign
 * stays. It changes where two ways cross (a parallelogram laid flat) and between two paths that nearly touch (a linkage that
 * is almost a parallelogram): a step over which it changes has jumped or would have to choose.
 *
 * For a plan of dyads the determinant is the product of the steps' signed sines over the lead's share of the tangent, up to a
 * positive factor, so far from zero their signs tell it. An ordinary dead centre turns two signs at once: that of the dyad that
 * goes straight and that of the lead, which turns back.
 */
import { limits } from '../numbers/limits.ts'
import { determinantSign, factor, type Lu } from '../numbers/lu.ts'
import { closureDerivative } from './closure.ts'
import type { PlanRoom } from './plan-room.ts'
import { sideOf } from './plan-side.ts'

interface Seen {
  readonly posture: Float64Array
  readonly tangent: Float64Array
}

export interface OrientationBench {
  readonly planRoom: PlanRoom | undefined
  readonly mechanism: PlanRoom['plan']['mechanism']
  readonly tangentLu: Lu
}

/** False where the way between the two is not one path. */
export function sameOrientation(bench: OrientationBench, from: Seen, to: Seen): boolean {
  if (bench.planRoom && farFromChange(bench.planRoom, from, to)) return true
  return denseOrientation(bench, from) === denseOrientation(bench, to)
}

/** Every sign that the determinant is made of is the same at both and far from zero. */
function farFromChange({ plan }: PlanRoom, from: Seen, to: Seen): boolean {
  const lead = plan.lead ? 3 * plan.lead.part - 1 : 0
  if (!clearlySame(from.tangent[lead], to.tangent[lead])) return false
  for (const step of plan.steps) if (!clearlySame(sideOf(step, from.posture), sideOf(step, to.posture))) return false
  return true
}

function clearlySame(a: number, b: number): boolean {
  return a > 0 === b > 0 && Math.abs(a) > limits.closedSine && Math.abs(b) > limits.closedSine
}

function denseOrientation({ mechanism, tangentLu: lu }: OrientationBench, { posture, tangent }: Seen): number {
  closureDerivative(mechanism, posture, lu.factors)
  lu.factors.set(tangent, mechanism.rows_count * mechanism.columns_count)
  return factor(lu) ? determinantSign(lu) : 0
}
