/**
 * Return reserve: the equal drag torque at every pin that the springs can just overcome on the way open.
 *
 * The port is a couple −sign(turn) on b and its reaction on a at every joint; its power −Σ|turn| is never zero, so the
 * reserve passes smoothly through zero at the jam and goes on below it: it is not a pole and does not depend on a chosen
 * place of pull.
 *
 *   moving:    every joint's friction opposes the motion under way. Does it keep moving?
 *   from rest: every joint's friction stands anywhere in its band. Does it start, from the worst state?
 *   free:      without friction. Efficiency is moving / free.
 */
import type { Balance, Prepared } from './balance.ts'
import { againstMotion, balanceIn, prepare } from './balance.ts'
import { addWorstWeight, type ForceBench, type FrictionLevel, standingLoad } from './force-bench.ts'
import { emptyRow, type ForceFrame, turnPattern } from './force-frame.ts'
import { worstRest } from './rest-state.ts'

export interface Reserve {
  /** N·mm a pin. */
  readonly free_Nmm: number
  /** Absent when no equilibrium was found in that state. */
  readonly moving?: Balance
  readonly fromRest?: Balance
  /** Direction of the weight's pull that it was taken in. */
  readonly attitude_rad?: number
}

/** Unit drag at every joint against the frame's motion. */
export function dragPort(frame: ForceFrame): Float64Array {
  const row = emptyRow(frame)
  for (const [index, joint] of frame.mechanism.joints.entries()) turnPattern(row, joint, -Math.sign(frame.turns[index]))
  return row.out
}

/**
 * Reserve at a posture with the springs alone (and weight in its worst attitude).
 *
 * @param frame with the motion opening
 * @returns undefined where no joint turns, so that no drag can be asked for
 */
export function returnReserve(bench: ForceBench, frame: ForceFrame, level: FrictionLevel = 'most'): Reserve | undefined {
  const row = standingLoad(bench, frame, 'opening')
  const attitude_rad = addWorstWeight(bench, frame, row, 'hinders')
  const reserve = reserveUnder(bench, frame, { load: row.out, level })
  return reserve && attitude_rad !== undefined ? { ...reserve, attitude_rad } : reserve
}

/** Reserve of any given generalised force: what of it is left for drag at the pins. */
export function reserveUnder(
  bench: ForceBench,
  frame: ForceFrame,
  asked: { readonly load: Float64Array; readonly level: FrictionLevel },
): Reserve | undefined {
  const prepared = prepare(frame, { port: dragPort(frame), load: asked.load })
  if (!prepared) return undefined
  const moving = movingState(prepared, bench.leversOf('moving', asked.level))
  const fromRest = worstRest({ prepared, levers: bench.leversOf('rest', asked.level), towards: -1 })
  return { free_Nmm: prepared.freeAmplitude, ...(moving && { moving }), ...(fromRest && { fromRest }) }
}

/** Every joint's friction against the motion. */
export function movingState(prepared: Prepared, levers: Float64Array): Balance | undefined {
  return balanceIn(prepared, againstMotion(levers))
}
