/** Where the sets stand between jam and slip at each friction: counted sets, sorted by the friction that moves the window most. */
import type { FrictionPair } from '../../design/design.ts'
import { coefficientAt } from '../sources/friction-sources.ts'
import { valuesAt } from '../sources/law.ts'
import { cloudOf } from './cloud.ts'
import type { DesignSpread } from './design-spread.ts'
import { columnOf } from './samples.ts'
import type { WindowSpread } from './window-spread.ts'

/** Least, middle and most of an angle over the sets of a slice, rad. */
export interface AngleBand {
  readonly least: number
  readonly middle: number
  readonly most: number
}

/** Sets whose friction lies within a slice. */
export interface FrictionSlice {
  /** Coefficients at rest at both ends. */
  readonly from: number
  readonly to: number
  readonly sets_count: number
  readonly margin: AngleBand
  readonly jam: AngleBand
  /** Absent where hardly any set of the slice slips, wherever it stands. */
  readonly slip?: AngleBand
}

/** The window against the friction of one pair. */
export interface AgainstFriction {
  readonly pair: FrictionPair
  readonly slices: readonly FrictionSlice[]
}

/** Slices that the range of friction is cut into: enough to see a slope, few enough to hold some sets each. */
const slices_count = 10

/** Sets that are sorted at most: beyond it nothing more could be seen. */
const sorted_samples = 4096

/** A slice with fewer sets has no spread to show. */
const setsLeast = 3

/** @returns undefined without a window, and where no friction with a range moves it, or too few sets were counted to say */
export function againstFriction(told: DesignSpread): AgainstFriction | undefined {
  const { spread, design, figures } = told
  if (!spread.window) return undefined
  const source = leadingFriction(told, spread.window)
  const pair = design.frictionPairs.find(({ name }) => source !== undefined && told.sources[source].id === `friction.${name}`)
  if (source === undefined || !pair) return undefined
  const { margin, jam, slip } = spread.window.watched
  const columns = [margin, jam, slip].map((figure) => columnOf(spread.samples, figure, figures.length))
  const values = valuesOfSource(told, source)
  const slices = Array.from({ length: slices_count }, (_, slice) => {
    const [from, to] = [slice, slice + 1].map((edge) => -1 + (2 * edge) / slices_count)
    const sets = [...values.keys()].filter((set) => values[set] >= from && (values[set] < to || to === 1))
    return { from: coefficientAt(pair.rest, from), to: coefficientAt(pair.rest, to), bands: bandsOf(columns, sets) }
  })
  return {
    pair,
    slices: slices.flatMap(({ from, to, bands }) => (bands ? [{ from, to, ...bands }] : [])),
  }
}

/** The friction with the largest shares of the variance of jam and slip. */
function leadingFriction({ sources, spread }: DesignSpread, { watched }: WindowSpread): number | undefined {
  const told = [watched.jam, watched.slip].flatMap((figure) => spread.figures[figure].contributions ?? [])
  if (told.length === 0) return undefined
  const shareOf = (source: number): number => told.reduce((sum, { shares }) => sum + shares[source], 0)
  const frictions = [...sources.keys()].filter((source) => sources[source].id.startsWith('friction.'))
  const [first] = frictions.sort((one, other) => shareOf(other) - shareOf(one))
  return first !== undefined && shareOf(first) > 0 ? first : undefined
}

function valuesOfSource({ spread, sources }: DesignSpread, source: number): Float64Array {
  const { fill } = cloudOf(spread.plan.cloud)
  const normals = new Float64Array(sources.length)
  return Float64Array.from({ length: Math.min(spread.samples.failures.length, sorted_samples) }, (_, set) => {
    fill(spread.samples.from + set, normals)
    return valuesAt(sources, normals)[source]
  })
}

function bandsOf(
  [margins, jams, slips]: readonly Float64Array[],
  sets: readonly number[],
): Pick<FrictionSlice, 'margin' | 'jam' | 'slip' | 'sets_count'> | undefined {
  const whole = sets.filter((set) => Number.isFinite(margins[set]) && Number.isFinite(jams[set]))
  const [margin, jam, slip] = [margins, jams, slips].map((column) => bandOf(whole.map((set) => column[set])))
  return margin && jam && { margin, jam, ...(slip && { slip }), sets_count: whole.length }
}

function bandOf(angles: readonly number[]): AngleBand | undefined {
  const ascending = angles.filter(Number.isFinite).sort((one, other) => one - other)
  if (ascending.length < setsLeast) return undefined
  return { least: ascending[0], middle: ascending[Math.floor(ascending.length / 2)], most: ascending[ascending.length - 1] }
}
