/** A number that may come near nothing, with the surface that follows it: made anew whenever sets were judged, closest where it matters. */
import { limits } from '../../numbers/limits.ts'
import type { Said } from './doubts.ts'
import type { DrawnSets } from './drawn-sets.ts'
import { fitSurfaces, type Surface } from './fit-surfaces.ts'
import { valuesAlong } from './quadratic.ts'
import type { NumberBehind } from './surface-problem.ts'
import { parabolasOf, planeOf, type Terms, tellingTerms, termsCount } from './terms.ts'

/** A number and its surface. */
export interface StandingNumber {
  readonly behind: NumberBehind
  /** Place in the list of numbers. */
  readonly place: number
  readonly surface: Surface
  /** What the surface misses near nothing, root mean square, in the number's unit. */
  readonly miss: number
}

/** Sets that were judged: their inputs, and the value of one number in each. */
export interface JudgedNumber {
  readonly inputs: readonly Float64Array[]
  readonly values: Float64Array
}

/** Terms for each set that a surface goes through at the most. */
const filled_ratio = 0.6

/** Sets within so many misses of nothing tell how far the surface misses there. */
const near_misses = 3

/** At so many misses from nothing a set weighs half. */
const weighing_misses = 5

/** Of the number's size: a surface that is all but exact needs no nearness. */
const near_ratio = 1e-3

/** Deviations of the set that is farthest off. */
const farthest_misses = 3

/** Fewer near sets than this do not tell it. */
const near_sets_least = 8

/** Of its size over the sets no number is found closer. */
const found_ratio = 1e-9

/** The number with a surface through all sets that were judged. @param now as it stood; its miss says which sets are near */
export function refitted(now: StandingNumber, { inputs, values }: JudgedNumber): StandingNumber {
  const near = Math.max(weighing_misses * now.miss, near_ratio * rms(values))
  const weights = values.map((value) => 1 / (1 + (value / near) ** 2))
  const nearest = [...values.keys()].filter((set) => Math.abs(values[set]) < near_misses * now.miss)
  const missed = nearest.length < near_sets_least ? [...values.keys()] : nearest
  const surfaceOf = (terms: Terms, missed: readonly number[]): Surface =>
    fitSurfaces({ terms, inputs, weights, columns: [values], missed })[0]
  const room = Math.floor(filled_ratio * inputs.length)
  const outline = surfaceOf(outlineTerms(inputs[0].length, room), [])
  const surface = surfaceOf(termsFor(outline, room), missed)
  return { ...now, surface, miss: missOf(surface, values) }
}

/** What the surface of a number says of drawn sets. */
export function saidOf({ behind: { requirement, isWhole }, surface, miss }: StandingNumber, drawn: DrawnSets): Said {
  const { columns, leading, steps, row_sets } = drawn
  const { level, slope, bend } = valuesAlong(surface, columns, leading)
  const predicted = new Float64Array(steps.length)
  for (let row = 0, set = 0; row < level.length; row++)
    for (const end = set + row_sets; set < end; set++) predicted[set] = level[row] + steps[set] * (slope[row] + bend * steps[set])
  return { requirement, isWhole, predicted, miss }
}

/**
 * Root mean square of what a surface misses, or a third of the most that it misses: among some dozens of sets hardly one is farther off than three
 * deviations, unless the surface has places that it does not know. Not taken smaller than numbers are found.
 */
export function missOf({ misses }: Pick<Surface, 'misses'>, values: Float64Array): number {
  const most = misses.reduce((sofar, miss) => Math.max(sofar, Math.abs(miss)), 0)
  return Math.max(rms(misses), most / farthest_misses, found_ratio * Math.max(...values.map(Math.abs)), limits.surfaceMissLeast)
}

/** How far each source moves a number: what it does straight, and what it does by itself in bending. */
export function movesOf({ slopes, bends }: Surface): Float64Array {
  return slopes.map((slope, source) => Math.hypot(slope, bends[source][source]))
}

/** Terms that tell what leads up the number, and how far each source moves it. */
function outlineTerms(sources_count: number, room: number): Terms {
  const parabolas = parabolasOf(sources_count)
  return termsCount(parabolas) <= room ? parabolas : planeOf(sources_count)
}

function termsFor(found: Surface, room: number): Terms {
  const length = Math.hypot(...found.slopes)
  const slope = length > 0 ? found.slopes.map((one) => one / length) : found.slopes
  return tellingTerms(slope, movesOf(found), room)
}

function rms(values: Float64Array): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length)
}
