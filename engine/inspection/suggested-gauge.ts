/**
 * Which gauge a small workshop takes for a characteristic, and on how many pieces.
 *
 * SOURCE trade: a gauge should tell apart a tenth of the tolerance (the rule of ten of the bench), at the worst a quarter; from memory.
 */
import type { Characteristic } from './inspection-plan.ts'
import type { Matter } from './weigh-plan.ts'

/** Gauges of a workshop's bench. */
export type GaugeKind =
  | 'micrometer'
  | 'caliper'
  | 'pin gauges'
  | 'micrometer over pins'
  | 'caliper over pins'
  | 'coordinates from the datum hole'
  | 'height gauge on a plate'
  | 'coupon of the coater'
  | 'by agreement'

/** What a plan suggests for one characteristic. */
export interface Suggested {
  readonly gauge: GaugeKind
  /** What the gauge must tell apart: a tenth of what is allowed, in the unit of the characteristic. */
  readonly toTellApart: number
  readonly onEvery: 'piece' | 'sample' | 'lot'
}

/** The tenth of the tolerance that a gauge must tell apart. */
const SHARE_TO_TELL = 0.1
/** A caliper is read to 0.02 mm: what asks for less needs a micrometer. */
const CALIPER_mm = 0.02
/** Whoever takes a twentieth of a margin or more at the end of its tolerance is measured on every piece: ten such sizes take half of it. */
const SHARE_THAT_MATTERS = 0.05

/** @param matter as `weighPlan` gives it; absent where it is not known or there is none */
export function suggestedGauge(characteristic: Characteristic, matter?: Matter): Suggested {
  const { kind, least, most } = characteristic
  const width = kind === 'position' ? 2 * most : most - least
  const toTellApart = SHARE_TO_TELL * width
  const gauge = gaugeFor(characteristic, toTellApart >= CALIPER_mm)
  if (kind === 'film') return { gauge, toTellApart, onEvery: 'lot' }
  return { gauge, toTellApart, onEvery: (matter?.share ?? 0) >= SHARE_THAT_MATTERS ? 'piece' : 'sample' }
}

/** Whether it is a distance, which is taken over pins: no diameter, place, film or angle. */
export function isTakenOverPins({ kind, unit, diameter, id }: Characteristic): boolean {
  return kind === 'size' && unit === 'mm' && diameter === undefined && !id.endsWith('.diameter')
}

function gaugeFor(characteristic: Characteristic, isWide: boolean): GaugeKind {
  const { kind, unit, piece } = characteristic
  if (kind === 'film') return 'coupon of the coater'
  if (kind === 'position') return 'coordinates from the datum hole'
  if (kind === 'profile') return 'height gauge on a plate'
  if (unit !== 'mm') return 'by agreement'
  if (isTakenOverPins(characteristic)) return isWide ? 'caliper over pins' : 'micrometer over pins'
  if (piece.kind === 'pin') return isWide ? 'caliper' : 'micrometer'
  return isWide ? 'caliper' : 'pin gauges'
}
