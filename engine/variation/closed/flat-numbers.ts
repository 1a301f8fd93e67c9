/** The numbers of a finger that its closed end and its forces hang on, in one list: read from a design, or written for a set. */
import type { Design, LoadCase, PadForceDirection } from '../../design/design.ts'
import { partMass } from '../../design/mass.ts'
import { GRAVITY_M_S2 } from '../../forces/loads.ts'
import { type Mechanism, mechanismOf } from '../../motion/mechanism.ts'
import type { NumberList } from './straight-numbers.ts'

/**
 * Numbers of a joint: x, y on its part a, x, y on its part b, radius (mm), most friction at rest, least friction moving, drag (N·mm).
 * These are the offsets of the last four.
 */
export const ofJoint = { radius: 4, mostAtRest: 5, leastMoving: 6, drag: 7 } as const
/** How many numbers a joint has. */
export const numbersOfJoint = 8

/** Of a stop: x, y of the round in its part, radius, gap, and both ends of the edge in its part, mm. */
export const ofStop = { radius: 2, gap: 3, from: 4, to: 6 } as const

/** Of a torsion spring on the part that is driven: N·mm, N·mm/rad, share. */
export const ofSpring = { preload: 0, rate: 1, ownFriction: 2 } as const

/** Of a force: x, y in its frame (N), and x, y of the place on its part (mm). */
export const ofForce = { place: 2 } as const
/** Of a weight: N, and x, y of the place on its part (mm). */
export const ofWeight = { place: 1 } as const

/** A list that grows entry by entry; each entry has as many numbers in every set as it has as drawn. */
export interface NumberBook {
  /** @returns where its numbers begin */
  readonly add: (words: string, read: (mechanism: Mechanism) => readonly number[]) => number
  readonly length: () => number
  readonly list: NumberList
}

/** An empty list. @param drawn the design as drawn, put together */
export function numberBook(drawn: Mechanism): NumberBook {
  const entries: { readonly words: string; readonly read: (mechanism: Mechanism) => readonly number[] }[] = []
  const wordsByNumber: string[] = []
  return {
    add: (words, read) => {
      const begins = wordsByNumber.length
      entries.push({ words, read })
      wordsByNumber.push(...read(drawn).map(() => words))
      return begins
    },
    length: () => wordsByNumber.length,
    list: {
      read: (design) => {
        const mechanism = mechanismOf(design)
        return entries.flatMap(({ read }) => read(mechanism))
      },
      wordsOf: (index) => wordsByNumber[index],
    },
  }
}

/** Numbers of a joint, by its place in the mechanism. */
export function jointNumbers({ joints, design }: Mechanism, index: number): readonly number[] {
  const { atA, atB, radius_mm, pin } = joints[index]
  const { friction, drag_Nmm } = design.pins[pin]
  return [atA.x_mm, atA.y_mm, atB.x_mm, atB.y_mm, radius_mm, friction.rest.most, friction.moving.least, drag_Nmm]
}

/** How much thinner a pin is than each of its holes, mm. */
export function roomNumbers({ pins, parts }: Design, index: number): readonly number[] {
  const { joins, diameter_mm } = pins[index]
  return joins.map(({ part, hole }) => parts[part].holes[hole].diameter_mm - diameter_mm)
}

/** NaN where its edge is not straight. */
export function stopNumbers({ stops, parts }: Design, index: number): readonly number[] {
  const { round, against, gap_mm } = stops[index]
  const edge = parts[against.part].edges[against.edge]
  const { from, to } = edge.kind === 'straight' ? edge : { from: nowhere, to: nowhere }
  return [round.at.x_mm, round.at.y_mm, round.radius_mm, gap_mm, from.x_mm, from.y_mm, to.x_mm, to.y_mm]
}

const nowhere = { x_mm: Number.NaN, y_mm: Number.NaN }

/** NaN where it is no torsion spring. */
export function springNumbers({ springs }: Design, index: number): readonly number[] {
  const spring = springs[index]
  if (spring.kind !== 'torsion') return [Number.NaN, Number.NaN, Number.NaN]
  return [spring.preload_Nmm, spring.rate_Nmm_rad, spring.ownFriction_ratio]
}

/** NaN where it has no mass. */
export function weightNumbers({ parts }: Design, part: number): readonly number[] {
  const mass = partMass(parts[part])
  return mass
    ? [mass.mass_kg * GRAVITY_M_S2, mass.centreOfMass.x_mm, mass.centreOfMass.y_mm]
    : [Number.NaN, Number.NaN, Number.NaN]
}

/** @param force_N of the force, 1 for a unit of it */
export function forceNumbers(
  { parts }: Design,
  { part, pad, direction_rad }: PadForceDirection,
  force_N: number,
): readonly number[] {
  const { at } = parts[part].pads[pad]
  return [force_N * Math.cos(direction_rad), force_N * Math.sin(direction_rad), at.x_mm, at.y_mm]
}

/** The load case that a window is told of: the first that has a keeper. */
export function keptCase({ loadCases }: Pick<Design, 'loadCases'>): (LoadCase & Required<Pick<LoadCase, 'keeper'>>) | undefined {
  return loadCases.find((one): one is LoadCase & Required<Pick<LoadCase, 'keeper'>> => one.keeper !== undefined)
}
