/** What the inspection plan says beside the limits: with what, on how many, and why. */
import {
  type Characteristic,
  type Design,
  figureNames,
  type GaugeKind,
  type Matter,
  suggestedGauge,
  type UnitSystem,
} from '../../engine/index.ts'
import { sizeText } from './plan-rows.ts'

/** One characteristic's gauge, count and reason as they are printed. */
export interface PlanAdvice {
  /** `micrometer, telling apart 0.001 mm` */
  readonly gauge: string
  /** `every piece` */
  readonly measured: string
  /** `Dead-centre margin of toggle distal, closed: 8 % of its margin` */
  readonly matters: string
}

const ON_EVERY = { piece: 'every piece', sample: 'first, middle and last of a lot', lot: 'every lot' } as const

const PERCENT = 100
/** Digits of what a gauge must tell apart: it is an order of size. */
const DIGITS = 2

/** @param matter as weighed; absent where the size touches no requirement */
export function planAdvice(
  {
    design,
    characteristic,
    matter,
  }: { readonly design: Design; readonly characteristic: Characteristic; readonly matter?: Matter },
  system: UnitSystem = 'metric',
): PlanAdvice {
  const { gauge, toTellApart, onEvery } = suggestedGauge(characteristic, matter)
  const told = sizeText(Number(toTellApart.toPrecision(DIGITS)), characteristic.unit, system)
  return {
    gauge: `${GAUGE_WORDS[gauge]}, telling apart ${told.number} ${told.unit}`,
    measured: ON_EVERY[onEvery],
    matters: matter === undefined ? 'no requirement feels it' : matterWords(design, matter),
  }
}

const GAUGE_WORDS: Readonly<Record<GaugeKind, string>> = {
  micrometer: 'micrometer',
  caliper: 'caliper',
  'pin gauges': 'pin gauges',
  'micrometer over pins': 'micrometer over pins',
  'caliper over pins': 'caliper over pins',
  'coordinates from the datum hole': 'x and y from the datum hole',
  'height gauge on a plate': 'height gauge on a plate',
  'coupon of the coater': 'coater’s coupon',
  'by agreement': 'by agreement',
}

function matterWords(design: Design, { figure, share }: Matter): string {
  const title = figureNames(design).find(({ id }) => id === figure)?.title ?? figure
  const percent = PERCENT * share
  const words = percent < 1 ? 'below 1 %' : `${Math.round(percent)} %`
  return share >= 1 ? `${title}: all of its margin` : `${title}: ${words} of its margin`
}
