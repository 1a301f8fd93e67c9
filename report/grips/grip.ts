/** A thing of the drawing that can be looked at, and moved where numbers that somebody typed stand behind its place. */
import type { Bound, Change, Design, Handle, Lever, Point, Posture } from '../../engine/index.ts'

/** Where a hand took hold of a thing and where it is now, in the mount frame, mm. */
export interface Drag {
  readonly from: Point
  readonly to: Point
}

/** A row of the tables that says more about a thing. */
export interface GripRow {
  /** Place in the document, joined by points. */
  readonly id: string
  readonly words: string
}

/** One thing that can be taken hold of. */
export interface Grip {
  readonly id: string
  /** What it is and where it stands, in words. */
  readonly says: string
  /** Centre in the mount frame, mm. */
  readonly at: Point
  /** Turned away from the centre by so many px in this direction (counter-clockwise from x), where something else stands there. */
  readonly beside?: { readonly px: number; readonly direction_rad: number }
  readonly rows: readonly GripRow[]
  /** How it is moved; absent for what cannot be. */
  readonly hand?: Hand
  /** What a drag changes besides the place itself, or why there is none, in words. */
  readonly note?: string
}

/** The changes that moving asks for; none where it moves by less than half a step. */
export interface Hand {
  readonly drag: (drag: Drag, size: StepSize) => readonly Change[]
  /** By one step along the drawing's own directions: right or left, up or down. */
  readonly nudge: (arrow: Arrow, size: StepSize) => readonly Change[]
}

/** One of right, left, up and down, as x and y of length 1. */
export type Arrow = readonly [number, number]

/** The shop's step, or a tenth of it. */
export type StepSize = 'step' | 'fine'

/** The shop's steps: what a drag moves by. */
export const steps: Readonly<Record<StepSize, { readonly length_mm: number; readonly angle_rad: number }>> = {
  step: { length_mm: 0.1, angle_rad: Math.PI / 180 },
  fine: { length_mm: 0.01, angle_rad: Math.PI / 1800 },
}

/** What grips are found in: a design at a posture, and the numbers behind its places. */
export interface GripScene {
  readonly design: Design
  readonly posture: Posture
  readonly lever: (handle: Handle) => Lever | Bound
}

/** Whether a value can be moved. */
export function isLever(found: Lever | Bound): found is Lever {
  return 'place' in found
}

/** An amount in whole steps. */
export function inSteps(amount: number, step: number): number {
  return Math.round(amount / step) * step
}
