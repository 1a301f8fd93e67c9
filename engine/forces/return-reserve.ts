/**
 * Return reserve: the equal drag torque at every pin that the springs can just overcome on the way open.
 *
 * The port is a couple −sign(turn) on b and its reaction on a at every joint; its power −Σ|turn| is never zero, so the
 * reserve passes through zero at the jam without a pole there, and no place of pull has to be chosen. Deep inside the jam it may
 * have poles of its own; its sign is all that is used of it there.
 *
 *   moving:    every joint's friction opposes the motion under way. Does it keep moving?
 *   from rest: every joint's friction stands anywhere in its band. Does it start, from the worst state?
 *   free:      without friction. Efficiency is moving / free.
 */
import type { Balance, Prepared } from './balance.ts'
import { againstMotion, amplitudeIn, balanceNow, prepare } from './balance.ts'
import { type ForceBench, standingAttitude, standingLoad } from './force-bench.ts'
import { emptyRow, type ForceFrame, runIn, runPattern, turnIn, turnPattern } from './force-frame.ts'
import { worstAmplitude } from './rest-state.ts'

export interface Reserve {
  /** N·mm a pin. */
  readonly free_Nmm: number
  /** Absent when no equilibrium was found in that state. */
  readonly moving?: Balance
  readonly fromRest?: Balance
  /** Direction of the weight's pull that it was taken in. */
  readonly attitude_rad?: number
}

/**
 * Unit drag at every joint against the frame's motion. A pin that runs in a slot has the drag at its rim: a torque of 1 N·mm is a force of
 * 1/r along the slot.
 */
export function dragPort(frame: ForceFrame): Float64Array {
  const row = emptyRow(frame)
  const { joints } = frame.mechanism
  for (let index = 0; index < joints.length; index++) {
    const joint = joints[index]
    if (joint.kind === 'pin') turnPattern(row, joint, -Math.sign(turnIn(frame, index)))
    else runPattern(row, joint, -Math.sign(runIn(frame, joint)) / joint.radius_mm)
  }
  return row.out
}

/** The springs alone, with weight in its worst attitude, against an equal drag at every pin. */
export interface ReturnQuestion {
  readonly prepared: Prepared
  /** Direction of the weight's pull. */
  readonly attitude_rad?: number
}

/**
 * @param frame with the motion opening
 * @returns undefined where no joint turns, so that no drag can be asked for
 */
export function returnQuestion(bench: ForceBench, frame: ForceFrame): ReturnQuestion | undefined {
  const row = standingLoad(bench, frame, 'letting go')
  const attitude_rad = standingAttitude(bench, frame, 'letting go')
  const prepared = prepare(frame, { port: dragPort(frame), load: row.out })
  if (!prepared) return undefined
  return attitude_rad === undefined ? { prepared } : { prepared, attitude_rad }
}

/** Amplitude while moving, at the most friction; its state is left in the room. N·mm a pin, undefined when none was found. */
export function movingAmplitude(bench: ForceBench, { prepared }: ReturnQuestion): number | undefined {
  return amplitudeIn(prepared, againstMotion(bench.leversOf('moving', 'most')))
}

/** Amplitude of the worst state of rest, at the most friction; its state is left in the room. N·mm a pin. */
export function restAmplitude(bench: ForceBench, { prepared }: Pick<ReturnQuestion, 'prepared'>): number | undefined {
  return worstAmplitude({ prepared, levers: bench.leversOf('rest', 'most'), towards: -1, enough: 0 })
}

/** The worst state of rest with all its forces. */
export function restReserve(bench: ForceBench, { prepared }: ReturnQuestion): Balance | undefined {
  const amplitude = restAmplitude(bench, { prepared })
  return amplitude === undefined ? undefined : balanceNow(prepared, amplitude)
}

/** Reserves at a posture in every state. @param frame with the motion opening */
export function returnReserve(bench: ForceBench, frame: ForceFrame): Reserve | undefined {
  const question = returnQuestion(bench, frame)
  if (!question) return undefined
  const { attitude_rad, prepared } = question
  const movingNow = movingAmplitude(bench, question)
  const moving = movingNow === undefined ? undefined : balanceNow(prepared, movingNow)
  const fromRest = restReserve(bench, question)
  return {
    free_Nmm: prepared.freeAmplitude,
    ...(moving && { moving }),
    ...(fromRest && { fromRest }),
    ...(attitude_rad !== undefined && { attitude_rad }),
  }
}

/** Amplitudes alone, N·mm a pin: what a sweep over the travel needs. */
export interface ReserveAmplitudes {
  readonly free: number
  readonly moving?: number | undefined
  readonly fromRest?: number | undefined
}

/** @param frame with the motion opening */
export function reserveAmplitudes(bench: ForceBench, frame: ForceFrame): ReserveAmplitudes | undefined {
  const question = returnQuestion(bench, frame)
  if (!question) return undefined
  const moving = movingAmplitude(bench, question)
  return { free: question.prepared.freeAmplitude, moving, fromRest: restAmplitude(bench, question) }
}

/** Reserve from rest of any given generalised force: what of it is left for drag at the pins. */
export function reserveUnder(bench: ForceBench, frame: ForceFrame, load: Float64Array): number | undefined {
  const prepared = prepare(frame, { port: dragPort(frame), load })
  return prepared && restAmplitude(bench, { prepared })
}
