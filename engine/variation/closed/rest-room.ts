import { type Column, columns, type Pair, type PartForce, pairs, partForces } from './columns.ts'

/** A state of friction to begin with, the same for all sets. */
export interface FlatState {
  /** +1 or −1 of each joint: the sign of its κ. */
  readonly sides: Float64Array
  /** Unit direction of the force on part b, x and y of each joint. */
  readonly directions: Float64Array
}

/** Room for a question about forces of a block of sets. */
export interface RestRoom {
  /** As `FlatState` has them, one a joint. */
  readonly sides: readonly Column[]
  readonly directions: readonly Pair[]
  /** What acts on each part, and a unit of what is asked for. */
  readonly load: readonly PartForce[]
  readonly port: readonly PartForce[]
  /** Power of both in the motion of the finger with friction. */
  readonly loadPower: Column
  readonly portPower: Column
  /** What is asked for: how many of the unit. */
  readonly amplitude: Column
  /** Largest square of a change of direction in the last round, weighed by its force. */
  readonly change: Column
  /** Not 0 for joints whose friction may stand on either side; that of the others opposes the motion about to start. */
  readonly either: readonly Column[]
  /** What each part has left to carry, and how it grows with the force that is left open. */
  readonly carried: readonly PartForce[]
  readonly opened: readonly PartForce[]
  /** Points that the forces pass, mm. */
  readonly points: readonly Pair[]
  /** Forces on part b of each joint, and how they grow with the one that is left open. */
  readonly forces: readonly Pair[]
  readonly open: readonly Pair[]
  /** The force at q of the dyad that is taken off, on its first part; and how many of the open force there are. */
  readonly atQ: Pair
  readonly openCount: Column
  /** Largest force of a joint, N. */
  readonly largest: Column
  /** Sign of a pin's drag on part b of its joint, and the fastest relative turn of a pin. */
  readonly signs: Column
  readonly fastest: Column
}

/** How large a room is. */
export interface RestSize {
  readonly parts_count: number
  readonly joints_count: number
  readonly sets_count: number
}

/** Room for a finger of so many parts and joints. */
export function restRoom({ parts_count, joints_count, sets_count }: RestSize): RestRoom {
  const forces = () => partForces(parts_count, sets_count)
  const [loadPower, portPower, amplitude, change, largest, signs, fastest, openCount] = columns(8, sets_count)
  const joints = () => pairs(joints_count, sets_count)
  return {
    ...{ load: forces(), port: forces(), carried: forces(), opened: forces() },
    ...{ loadPower, portPower, amplitude, change },
    ...{ points: joints(), forces: joints(), open: joints(), directions: joints() },
    ...{ sides: columns(joints_count, sets_count), either: columns(joints_count, sets_count) },
    ...{ largest, signs, fastest, openCount, atQ: pairs(1, sets_count)[0] },
  }
}
