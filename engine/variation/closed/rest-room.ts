import type { PartForces } from './flat-load.ts'

/** A state of friction to begin with. */
export interface FlatState {
  /** +1 or −1 of each joint: the sign of its κ. */
  readonly sides: Float64Array
  /** Unit direction of the force on part b, x and y of each joint. */
  readonly directions: Float64Array
}

/** Room for a question about forces. */
export interface RestRoom extends FlatState {
  readonly load: PartForces
  readonly port: PartForces
  /** Power of the port in the motion of the finger with friction. */
  readonly portPower: { now: number }
  /** 1 for joints whose friction may stand on either side; that of the others opposes the motion about to start. */
  readonly either: Uint8Array
  /** What each part has left to carry, and how it grows with the force that is left open. */
  readonly carried: PartForces
  readonly opened: PartForces
  /** Points that the forces pass, x and y of each joint, mm. */
  readonly points: Float64Array
  /** Forces on part b, x and y of each joint, and how they grow with the one that is left open. */
  readonly forces: Float64Array
  readonly open: Float64Array
}

/** Room for a finger of so many parts and joints. */
export function restRoom({
  parts_count,
  joints_count,
}: {
  readonly parts_count: number
  readonly joints_count: number
}): RestRoom {
  const part = (): Float64Array => new Float64Array(3 * parts_count)
  const joint = (): Float64Array => new Float64Array(2 * joints_count)
  return {
    ...{ load: part(), port: part(), carried: part(), opened: part(), portPower: { now: 0 } },
    ...{ points: joint(), forces: joint(), open: joint(), directions: joint() },
    ...{ sides: new Float64Array(joints_count), either: new Uint8Array(joints_count) },
  }
}
