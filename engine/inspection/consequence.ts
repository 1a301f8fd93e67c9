/**
 * What the finger does with a size that the drawing does not allow: used as it is, reworked to the nearest size that is allowed, or scrapped and
 * made again as drawn. All three are fingers that are evaluated, each with everything else of the set as it was measured.
 */
import type { Evaluation } from '../figures/evaluation.ts'
import { type WhatMoved, whatMoved } from '../figures/what-moved.ts'
import type { Variation } from '../variation/sources/source.ts'
import type { Characteristic } from './inspection-plan.ts'
import { judgeMeasured } from './judge-measured.ts'
import { foundOf, limitsFor, type Reading, readingConformity } from './measured-set.ts'

/** What can be decided about a piece that is out of its limits. */
export type Disposition = 'use as is' | 'rework' | 'scrap'

/** What one decision comes to. */
export interface Outcome {
  readonly disposition: Disposition
  /** Absent where no finger can be built. */
  readonly evaluation?: Evaluation
  /** Against the same set with this size as drawn; absent where one of the two cannot be built, and for the piece that is made again. */
  readonly moved?: WhatMoved
}

/** A reading outside of its limits or too near to them, and what each decision comes to. */
export interface Consequence {
  readonly reading: Reading
  /** By how much it lies beyond the nearer limit, in its unit; 0 where only the gauge leaves it open. */
  readonly beyond: number
  readonly outcomes: readonly Outcome[]
}

/** Consequences of every reading of a set that is not shown to be within its limits. */
export function consequences(
  variation: Variation,
  plan: readonly Characteristic[],
  readings: readonly Reading[],
): readonly Consequence[] {
  return readings.flatMap((reading) =>
    readingConformity(reading) === 'within' ? [] : [consequenceOf({ variation, plan, readings }, reading)],
  )
}

interface Set {
  readonly variation: Variation
  readonly plan: readonly Characteristic[]
  readonly readings: readonly Reading[]
}

function consequenceOf({ variation, plan, readings }: Set, reading: Reading): Consequence {
  const evaluatedWith = (other: Reading): Evaluation | undefined =>
    judgeMeasured(
      variation,
      plan,
      readings.map((one) => (one === reading ? other : one)),
    ).evaluation
  const drawn = evaluatedWith(asDrawn(reading))
  const against = (disposition: Disposition, other: Reading): Outcome => {
    const evaluation = evaluatedWith(other)
    const moved = drawn && evaluation && whatMoved(drawn, evaluation)
    return { disposition, ...(evaluation && { evaluation }), ...(moved && { moved }) }
  }
  return {
    reading,
    beyond: beyondOf(reading),
    outcomes: [
      against('use as is', reading),
      ...('size' in reading ? [against('rework', atLimit(reading))] : []),
      { disposition: 'scrap', ...(drawn && { evaluation: drawn }) },
    ],
  }
}

function beyondOf(reading: Reading): number {
  const { least, most } = limitsFor(reading)
  const found = foundOf(reading)
  return Math.max(0, found.least - (most ?? Infinity), (least ?? -Infinity) - found.most)
}

type Sized = Extract<Reading, { readonly size: object }>

/** The size of the drawing; before the coating the middle of what the shop works to. A hole at its true place. */
function asDrawn(reading: Reading): Reading {
  const { characteristic } = reading
  if (!('size' in reading)) return { ...reading, at: characteristic.place ?? reading.at, uncertainty_mm: 0 }
  const { before, nominal } = characteristic
  const middle = reading.visit === 'before coating' && before ? (before.least + before.most) / 2 : nominal
  return { ...reading, size: { least: middle, most: middle } }
}

function atLimit(reading: Sized): Reading {
  const { least = -Infinity, most = Infinity } = limitsFor(reading)
  const middle = (reading.size.least + reading.size.most) / 2
  const size = Math.min(most, Math.max(least, middle))
  return { ...reading, size: { least: size, most: size } }
}
