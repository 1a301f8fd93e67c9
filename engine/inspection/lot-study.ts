/**
 * What the readings of one characteristic over a lot say of the process that made it: how much of the tolerance it uses, whether anything but
 * chance was at work, what share of pieces lies where. Limits on which nothing can be shown are left out rather than guessed.
 */
import { type Capability, capability, type Limits } from './capability.ts'
import { type ControlLimits, controlLimits, outOfControl } from './control-limits.ts'
import { type Normality, normality } from './normality.ts'
import { type Sample, sampleOf } from './sample.ts'
import { type Content, twoSidedFactor } from './tolerance-factor.ts'

/** One characteristic over a lot, in its unit. */
export interface LotStudy {
  /** In the order in which the pieces were made. */
  readonly values: readonly number[]
  readonly sample: Sample
  readonly limits: Limits
  /** Absent for fewer than two readings and for readings that are all alike. */
  readonly capability?: Capability
  readonly control?: ControlLimits
  /** Places in `values` that chance does not explain. */
  readonly signals: readonly number[]
  /** Absent below eight readings. */
  readonly normality?: Normality
  /** Where `content` lies of all pieces that the process makes, if it is normal; absent below `INTERVAL_LEAST` readings. */
  readonly interval?: { readonly least: number; readonly most: number }
  readonly content: Content
}

/** Share and confidence of the interval that is told. SOURCE trade: 95 and 95 are what most tables begin with. */
export const CONTENT: Content = { share: 0.95, confidence: 0.95 }

/** Of two or three readings the interval is a dozen deviations wide and says nothing. */
export const INTERVAL_LEAST = 4

/** @param values at least one, finite, in the order of making */
export function lotStudy(values: readonly number[], limits: Limits): LotStudy {
  const sample = sampleOf(values)
  const able = capability(sample, limits)
  const control = values.length < 2 ? undefined : controlLimits(sample)
  const normal = normality(values)
  const half = values.length < INTERVAL_LEAST ? undefined : twoSidedFactor(values.length, CONTENT) * sample.deviation
  return {
    values,
    sample,
    limits,
    ...(able && { capability: able }),
    ...(control && { control }),
    signals: control ? outOfControl(values, control) : [],
    ...(normal && { normality: normal }),
    ...(half !== undefined && { interval: { least: sample.mean - half, most: sample.mean + half } }),
    content: CONTENT,
  }
}
