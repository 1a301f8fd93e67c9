/** Many sets in their closed posture alone: how far short of dead centre, how much return is left, and how often either is not enough. */
import type { Requirement, Toggle } from '../../design/design.ts'
import type { Source, Variation } from '../sources/source.ts'
import { type FigureSpread, figureSpread } from '../spread/figure-spread.ts'
import type { CountedShare } from '../spread/share-interval.ts'
import { seenIn } from '../spread/yields.ts'
import { closedFingers } from './closed-finger.ts'
import { closedSamples } from './closed-samples.ts'
import type { NotStraight } from './live-design.ts'

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
  /** Share of sets that do not come to their stop, or have no state of rest there. */
  readonly without: CountedShare
  readonly toggles: readonly ClosedToggle[]
  /** Return reserve from rest at the closed posture, N·mm a pin. */
  readonly reserve: FigureSpread
  /** Share of sets that stay jammed there; those that do not close are not among them. */
  readonly jammed: CountedShare
}

/** Samples that are worked out between two reports: a tenth of a second or so. */
const chunk_samples = 4096

/**
 * Looks at sets; yields how many are done.
 *
 * @returns why not, where the short way does not serve this design
 */
export function* closedSpread(
  variation: Variation,
  { seed, samples }: { readonly seed: number; readonly samples: number },
): Generator<number, ClosedSpread | NotStraight> {
  const fingers = closedFingers(variation)
  if ('why' in fingers) return fingers
  const { numbers_count } = fingers
  const cloud = { dimensions: variation.sources.filter(ofSets).length, seed }
  const columns = Array.from({ length: numbers_count }, () => new Float64Array(samples))
  let plainly_count = 0
  for (let from = 0; from < samples; from += chunk_samples) {
    const to = Math.min(samples, from + chunk_samples)
    const share = closedSamples({ variation, fingers, cloud, from, to })
    plainly_count += share.plainly_count
    for (const [index, value] of share.numbers.entries())
      columns[index % numbers_count][from + Math.floor(index / numbers_count)] = value
    yield to
  }
  return spreadOfColumns(variation, columns, plainly_count)
}

const ofSets = ({ of }: Source): boolean => of === 'sets'

function spreadOfColumns(
  { design }: Variation,
  columns: readonly Float64Array[],
  plainly_count: number,
): ClosedSpread | NotStraight {
  const reserves = columns[columns.length - 1]
  const reserve = figureSpread(reserves)
  if (!reserve) return { why: 'no set comes to its stop' }
  const counted = { from: 0, samples_count: reserves.length }
  const toggles = design.toggles.flatMap((toggle, index): ClosedToggle[] => {
    const margin = figureSpread(columns[index])
    if (!margin) return []
    const bound_rad = boundOf(design.requirements, toggle)
    if (bound_rad === undefined) return [{ toggle, margin }]
    const short = seenIn(counted, (sample) => !(columns[index][sample] >= bound_rad))
    return [{ toggle, margin, required: { bound_rad, short } }]
  })
  return {
    ...{ samples: reserves.length, plainly_count, toggles, reserve },
    without: seenIn(counted, (sample) => Number.isNaN(reserves[sample])),
    jammed: seenIn(counted, (sample) => reserves[sample] <= 0),
  }
}

function boundOf(requirements: readonly Requirement[], { id }: Toggle): number | undefined {
  const found = requirements.find(
    ({ figure, bound }) => figure === `closed.toggle.${id}.deadCentreMargin` && bound.kind === 'atLeast',
  )
  return found?.bound.kind === 'atLeast' ? found.bound.value : undefined
}
