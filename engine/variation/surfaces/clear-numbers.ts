/**
 * Numbers that come nowhere near nothing. A first surface of every number, of sources and their squares, through the first judged sets; where
 * even the least that it takes with each source by itself at its worst stays clear of nothing by many times what the surface
 * misses, the number is not looked at further.
 */
import { valuesAt } from '../sources/law.ts'
import type { Source } from '../sources/source.ts'
import { inDeviations } from '../spread/contributions.ts'
import type { DrawnSets } from './drawn-sets.ts'
import { fitSurfaces, type Surface } from './fit-surfaces.ts'
import { missOf, type StandingNumber, saidOf } from './standing-number.ts'
import type { NumberBehind } from './surface-problem.ts'
import { planeOf } from './terms.ts'

/** A number that stays clear. */
export interface ClearNumber {
  readonly behind: NumberBehind
  readonly place: number
  /** How often the surface's miss goes into the least that it takes; without end where nothing presses it at all. */
  readonly misses: number
}

/** All numbers, parted. */
export interface Parted {
  readonly clear: readonly ClearNumber[]
  readonly near: readonly StandingNumber[]
}

/** First sets, judged. */
export interface FirstJudged {
  readonly sources: readonly Source[]
  readonly numbers: readonly NumberBehind[]
  readonly inputs: readonly Float64Array[]
  /** Number by number, one a set; +∞ in all sets or in none. */
  readonly columns: readonly Float64Array[]
}

/** A number that stays so many misses clear is not looked at: twice where a surface is believed. */
const clear_misses = 8

/** The same of a plane, which does not bend where the number may. */
const plane_misses = 16

/** Normal numbers between which a source is looked at: one set in a hundred thousand has it beyond. */
const farthest = 4.5

/** Parts the numbers. */
export function partNumbers({ sources, numbers, inputs, columns }: FirstJudged): Parted {
  const terms = planeOf(sources.length)
  const weights = new Float64Array(inputs.length).fill(1)
  const surfaces = fitSurfaces({ terms, inputs, weights, columns: columns.map(finite), missed: [...inputs.keys()] })
  const ranges = rangesOf(sources)
  const clear: ClearNumber[] = []
  const near: StandingNumber[] = []
  for (const [place, behind] of numbers.entries()) {
    const { [place]: surface } = surfaces
    const miss = missOf(surface, finite(columns[place]))
    const misses = columns[place][0] === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : leastOver(surface, ranges) / miss
    if (misses > plane_misses) clear.push({ behind, place, misses })
    else near.push({ behind, place, miss, surface })
  }
  return { clear, near }
}

/** Parts numbers once more, by better surfaces: how near they come to nothing over the drawn sets. */
export function partOverDrawn(standing: readonly StandingNumber[], drawn: DrawnSets): Parted {
  const clear: ClearNumber[] = []
  const near: StandingNumber[] = []
  for (const one of standing) {
    const { predicted, miss } = saidOf(one, drawn)
    const misses = predicted.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY) / miss
    if (misses > clear_misses) clear.push({ behind: one.behind, place: one.place, misses })
    else near.push(one)
  }
  return { clear, near }
}

/** What nothing presses has no number to go through. */
function finite(column: Float64Array): Float64Array {
  return column[0] === Number.POSITIVE_INFINITY ? new Float64Array(column.length) : column
}

interface Range {
  readonly least: number
  readonly most: number
}

/** Of each source, in deviations from its mean. */
function rangesOf(sources: readonly Source[]): readonly Range[] {
  const ends = [-farthest, farthest].map((normal) =>
    sources.map((_, source) =>
      valuesAt(
        sources,
        Float64Array.from(sources, (_, other) => (other === source ? normal : 0)),
      ),
    ),
  )
  const [least, most] = ends.map((sets) => inDeviations(sources, sets))
  return sources.map((_, source) => ({ least: least[source][source], most: most[source][source] }))
}

/** The least of a plane, each source over its range. */
function leastOver({ constant, slopes }: Surface, ranges: readonly Range[]): number {
  return ranges.reduce((sum, { least, most }, source) => sum + Math.min(slopes[source] * least, slopes[source] * most), constant)
}
