/**
 * Angle by which a toggle A-B-C is short of straight.
 *
 *      A ●────────● B        u = B − A on the part that holds both, w = C − B likewise
 *                  ╲ δ       δ = side · (direction of w − direction of u)
 *                   ● C      0 straight (dead centre), negative once B has crossed the line A-C
 *
 * u and w are fixed in their parts, so δ is the difference of two turns and a constant: it counts on past half a turn by
 * itself, no digit is lost near dead centre, and with play in the pins it still is the angle between the two parts.
 */
import type { Pin, Point, Toggle } from '../design/design.ts'
import type { Mechanism } from './mechanism.ts'

export interface ToggleAngle {
  /** Part that holds A and B. */
  readonly first: number
  /** Part that holds B and C. */
  readonly second: number
  /** Direction of w less direction of u when both parts are parallel to the mount, rad. */
  readonly between_rad: number
}

/** Cannot fail: toggles are checked when the design is read. */
export function toggleAngle(mechanism: Mechanism, toggle: Toggle): ToggleAngle {
  const { pins, parts } = mechanism.design
  const first = commonPart(pins[toggle.a], pins[toggle.b])
  const second = commonPart(pins[toggle.b], pins[toggle.c])
  const hole = (part: number, pin: number): Point => {
    const ref = pins[pin].joins.find((join) => join.part === part) ?? pins[pin].joins[0]
    return parts[part].holes[ref.hole].at
  }
  const u = direction(hole(first, toggle.a), hole(first, toggle.b))
  const w = direction(hole(second, toggle.b), hole(second, toggle.c))
  return { first, second, between_rad: toggle.folded ? w + Math.PI - u : w - u }
}

function commonPart(one: Pin, other: Pin): number {
  const shared = one.joins.find((join) => other.joins.some((candidate) => candidate.part === join.part))
  return (shared ?? one.joins[0]).part
}

function direction(from: Point, to: Point): number {
  return Math.atan2(to.y_mm - from.y_mm, to.x_mm - from.x_mm)
}

function bendOf(angle: ToggleAngle, posture: Float64Array): number {
  return posture[3 * angle.second + 2] - posture[3 * angle.first + 2] + angle.between_rad
}

export interface WatchedToggle {
  readonly angle: ToggleAngle
  /** +1 or −1: on which side it bends at the nominal drawn posture; kept for all postures and samples. */
  readonly side: 1 | -1
  /** Whole turns taken off, so that the drawn posture has a margin between −π and π. */
  readonly offset_rad: number
}

/** Takes side and turns at the nominal drawn posture. */
export function watchToggle(mechanism: Mechanism, toggle: Toggle, drawn: Float64Array): WatchedToggle {
  const angle = toggleAngle(mechanism, toggle)
  const bend = bendOf(angle, drawn)
  const offset_rad = 2 * Math.PI * Math.round(bend / (2 * Math.PI))
  return { angle, side: bend - offset_rad < 0 ? -1 : 1, offset_rad }
}

/** @returns rad at any posture. For a `folded` toggle the angle from the folded-back position, by the same sign rule. */
export function toggleMargin(watched: WatchedToggle, posture: Float64Array): number {
  return watched.side * (bendOf(watched.angle, posture) - watched.offset_rad)
}

/** Adds the derivative of a margin: unit couples that would open it. `scale` multiplies. */
export function toggleCouples(watched: WatchedToggle): readonly { readonly part: number; readonly couple: number }[] {
  return [
    { part: watched.angle.second, couple: watched.side },
    { part: watched.angle.first, couple: -watched.side },
  ]
}
