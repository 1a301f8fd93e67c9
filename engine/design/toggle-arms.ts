/** Which three pins can be a toggle A-B-C: a chain of two arms whose outer pins can move apart. */
import type { Part, Pin } from './design.ts'

/** A part that a pin is in, and whether it runs in a slot there. */
export interface Seat {
  readonly part: number
  readonly slides: boolean
}

/** Where a pin sits. A hole that was not found counts as round. */
export function seatsOf({ joins }: Pick<Pin, 'joins'>, parts: readonly Pick<Part, 'holes'>[]): readonly Seat[] {
  return joins.map(({ part, hole }) => ({ part, slides: parts[part]?.holes[hole]?.slot !== undefined }))
}

/**
 * The parts that hold A and B, and B and C, of three pins that can be a toggle; undefined for three that cannot.
 *
 * A and C sit in two further parts, as in a four-bar, or both in one of which a slot lets one of them run, as the crosshead of a
 * slider-crank does in its guide. In one part without a slot the three pins would be a rigid triangle.
 *
 * @param seats of A, B and C
 */
export function toggleArms([ofA, ofB, ofC]: readonly (readonly Seat[])[]): readonly [number, number] | undefined {
  const holds = (seats: readonly Seat[], one: number) => seats.some(({ part }) => part === one)
  const arms = ofB.flatMap(({ part: ab }) =>
    ofB.filter(({ part: bc }) => bc !== ab && holds(ofA, ab) && holds(ofC, bc)).map(({ part: bc }) => [ab, bc] as const),
  )
  return arms.find(([ab, bc]) => {
    const outside = (seats: readonly Seat[]) => seats.filter(({ part }) => part !== ab && part !== bc)
    return outside(ofA).some((one) => outside(ofC).some((other) => one.part !== other.part || one.slides !== other.slides))
  })
}
