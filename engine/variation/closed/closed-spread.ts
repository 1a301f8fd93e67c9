/**
 * Many sets in their closed posture alone: how far short of dead centre, how much return is left, between which margins they hold, and how
 * often any of it is not enough.
 */
import type { Requirement, Toggle } from '../../design/design.ts'
import { closedIn, type SetsRun, type Share } from '../shares/sets-run.ts'
import type { Variation } from '../sources/source.ts'
import { type FigureSpread, figureSpread } from '../spread/figure-spread.ts'
import type { CountedShare } from '../spread/share-interval.ts'
import { type Counted, seenIn } from '../spread/yields.ts'
import { type ClosedSamples, closedSamples } from './closed-samples.ts'
import { drawSets } from './draw-sets.ts'
import { holdFingers } from './hold-finger.ts'
import { besideMargins } from './hold-room.ts'
import type { NotStraight } from './straight-numbers.ts'
import type { Untold } from './untold.ts'

/** One toggle over the sets. */
export interface ClosedToggle {
  readonly toggle: Toggle
  /** Margins, rad. */
  readonly margin: FigureSpread
  /** What is required of the closed margin, with the share of sets that fall short of it; absent where nothing is. */
  readonly required?: { readonly bound_rad: number; readonly short: CountedShare }
}

/** Sets in their closed posture. */
export interface ClosedSpread {
  readonly samples: number
  /** Sets that had to be followed from open to closed. */
  readonly plainly_count: number
  /** Share of sets that do not come to their stop, or have no state of rest there where one is told. */
  readonly without: CountedShare
  readonly toggles: readonly ClosedToggle[]
  /** Return reserve from rest at the closed posture, N·mm a pin; absent where it is not told. */
  readonly reserve?: FigureSpread
  /** What is not told of these sets. */
  readonly untold: readonly Untold[]
  /** Share of sets that stay jammed there; those that do not close are not among them. */
  readonly jammed: CountedShare
  /** Absent where it is not told, and where nothing is kept. */
  readonly window?: ClosedWindow
}

/** Between which margins of the first toggle sets hold, and how often they do. */
export interface ClosedWindow {
  /** Margins at which sets jam from rest, and at which the first load with a keeper slips, rad; of those that do. */
  readonly jam: FigureSpread
  /** Absent where none slips. */
  readonly slip?: FigureSpread
  /** Share of sets whose load never slips, wherever the finger stands. */
  readonly never: CountedShare
  /** Share of sets that need more of the keeper than it is allowed. */
  readonly slipping: CountedShare
  /** Share of sets that stand between both. */
  readonly inside: CountedShare
}

/**
 * Looks at sets.
 *
 * @returns why not, where the short way does not serve this design
 */
export function* closedSpread(
  variation: Variation,
  { seed, samples }: { readonly seed: number; readonly samples: number },
): SetsRun<ClosedSpread | NotStraight> {
  const sampler = closedSampler(variation, seed)
  if ('why' in sampler) return sampler
  const reached = (shares: readonly Share[]) => closedSpreadOf(variation, closedIn(shares))
  return reached(yield { doing: 'closed', done: 0, of: samples, wanted: { of: 'closed', seed, samples }, reached })
}

/** Makes any range of the samples of one seed: the same range gives the same bytes wherever and whenever it is made. */
export interface ClosedSampler {
  readonly samples: (from: number, to: number) => ClosedSamples
}

/** @returns why not, where the short way does not serve this design */
export function closedSampler(variation: Variation, seed: number): ClosedSampler | NotStraight {
  const fingers = holdFingers(variation)
  if ('why' in fingers) return fingers
  const draw = drawSets(variation, seed)
  return { samples: (from, to) => closedSamples({ variation, fingers, draw, from, to }) }
}

/** What samples of closed postures amount to. @param shares that follow one another from the first sample on, in any order */
export function closedSpreadOf(variation: Variation, shares: readonly ClosedSamples[]): ClosedSpread | NotStraight {
  const numbers_count = variation.design.toggles.length + besideMargins
  const samples = Math.max(0, ...shares.map(({ to }) => to))
  const columns = Array.from({ length: numbers_count }, () => new Float64Array(samples))
  for (const { from, numbers } of shares)
    for (const [index, value] of numbers.entries())
      columns[index % numbers_count][from + Math.floor(index / numbers_count)] = value
  return spreadOfColumns(variation, columns, {
    plainly_count: shares.reduce((sum, share) => sum + share.plainly_count, 0),
    untold: shares[0]?.untold ?? [],
  })
}

function spreadOfColumns(
  { design }: Variation,
  columns: readonly Float64Array[],
  { plainly_count, untold }: Pick<ClosedSpread, 'plainly_count' | 'untold'>,
): ClosedSpread | NotStraight {
  const [margins] = columns
  const [reserves, jams, slips] = columns.slice(design.toggles.length)
  const isInside = untold.includes('reserve')
  if (margins.every(Number.isNaN)) return { why: 'no set comes to its stop' }
  const reserve = figureSpread(reserves)
  const counted: Counted = { from: 0, samples_count: reserves.length }
  const toggles = design.toggles.flatMap((toggle, index): ClosedToggle[] => {
    const margin = figureSpread(columns[index])
    if (!margin) return []
    const bound_rad = boundOf(design.requirements, toggle)
    if (bound_rad === undefined) return [{ toggle, margin }]
    const short = seenIn(counted, (sample) => !(columns[index][sample] >= bound_rad))
    return [{ toggle, margin, required: { bound_rad, short } }]
  })
  const window = windowOf(counted, { margins, jams, slips })
  return {
    ...{ samples: reserves.length, plainly_count, untold, toggles, ...(reserve && { reserve }) },
    without: seenIn(counted, (sample) => Number.isNaN(isInside ? margins[sample] : reserves[sample])),
    jammed: seenIn(counted, (sample) => (isInside ? margins[sample] <= jams[sample] : reserves[sample] <= 0)),
    ...(window && { window }),
  }
}

function windowOf(counted: Counted, { margins, jams, slips }: Readonly<Record<'margins' | 'jams' | 'slips', Float64Array>>) {
  const finite = slips.map((slip) => (Number.isFinite(slip) ? slip : Number.NaN))
  const [jam, slip] = [figureSpread(jams), figureSpread(finite)]
  const never = seenIn(counted, (sample) => slips[sample] === Number.POSITIVE_INFINITY)
  if (!jam || (!slip && never.value === 0)) return undefined
  const slipping = seenIn(counted, (sample) => margins[sample] >= slips[sample])
  const inside = seenIn(counted, (sample) => margins[sample] > jams[sample] && margins[sample] < slips[sample])
  return { jam, ...(slip && { slip }), never, slipping, inside }
}

function boundOf(requirements: readonly Requirement[], { id }: Toggle): number | undefined {
  const found = requirements.find(
    ({ figure, bound }) => figure === `closed.toggle.${id}.deadCentreMargin` && bound.kind === 'atLeast',
  )
  return found?.bound.kind === 'atLeast' ? found.bound.value : undefined
}
