/**
 * What pushes on the side of a finger ask of a place further in.
 *
 *            p ●  F out of the plane           about s the push turns with F |p − s|; its axis lies in the plane, across p − s
 *             ╱
 *            ╱  p − s                          m = Σ F (p − s): along m the pin's forces point, about the axis across m it is held
 *         s ●
 */
import type { Point } from '../design/design.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import { placed } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'
import type { Pressed } from './pressed.ts'
import { type SideHinge, sideChain } from './side-chain.ts'

/** A finger that is leant on: a load case with pushes out of the plane, in one of the postures that it acts in. */
export interface Leant {
  readonly state: Pressed
  readonly pushes: readonly LeantPush[]
}

/** A push with the hinges that hand it on, outermost first. */
export interface LeantPush {
  /** The part that is pushed, and where in its frame. */
  readonly part: number
  readonly pad: Point
  /** The same place in the mount frame. */
  readonly at: Point
  readonly force_N: number
  readonly chain: readonly SideHinge[]
}

/** A load case in one posture, as a finger that is leant on. */
export function leantIn({ design }: Mechanism, state: Pressed): Leant {
  const loadCase = design.loadCases.find(({ id }) => id === state.loadCase)
  const pushes = (loadCase?.sideways ?? []).map(({ part, pad: padIndex, force_N }) => {
    const pad = design.parts[part].pads[padIndex].at
    return { part, pad, at: placed(state.posture, part, pad), force_N, chain: sideChain(design, part) }
  })
  return { state, pushes }
}

/** What pushes ask of a place. */
export interface SideMoment {
  /** m of the picture, mount frame, N·mm. */
  readonly moment: Vector
  /** Their sum, N. */
  readonly force_N: number
}

/** Moment of pushes about a place in the mount frame. */
export function sideMoment(pushes: readonly LeantPush[], about: Point): SideMoment {
  let x = 0
  let y = 0
  let force = 0
  for (const { at, force_N } of pushes) {
    x += force_N * (at.x_mm - about.x_mm)
    y += force_N * (at.y_mm - about.y_mm)
    force += force_N
  }
  return { moment: { x, y }, force_N: force }
}
