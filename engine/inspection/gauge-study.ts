/**
 * How much of what a gauge says is the gauge: repeatability, reproducibility and the parts themselves, from a crossed study.
 *
 * Every appraiser measures every part the same number of times. The sums of squares of a two-way table with repeats give the variances
 * (D. Montgomery, Introduction to Statistical Quality Control, gauge chapter, from memory): with p parts, o appraisers, r repeats
 *
 *     σ²_repeat = MS_e      σ²_oxp = (MS_op − MS_e)/r      σ²_o = (MS_o − MS_op)/(p r)      σ²_p = (MS_p − MS_op)/(o r)
 *
 * none below 0. With one appraiser there is no reproducibility to speak of, and none is given.
 */
import { fisherAbove } from '../numbers/distributions/fisher.ts'

/** Readings by part, by appraiser, repeats. All of one length, at least two parts and two repeats. */
export type Study = readonly (readonly (readonly number[])[])[]

export interface SumOfSquares {
  readonly squares: number
  readonly freedom: number
}

export interface GaugeStudy {
  readonly parts: SumOfSquares
  /** Absent with a single appraiser. */
  readonly appraisers?: SumOfSquares
  readonly together?: SumOfSquares
  readonly repeats: SumOfSquares
  /** How likely the parts would differ by appraiser as they do if they did not: small means that appraisers measure some parts differently. */
  readonly togetherByChance?: number
  /** Variances; their sum is that of a single reading of any part. */
  readonly variance: { readonly repeat: number; readonly appraiser?: number; readonly together?: number; readonly part: number }
  /** Standard deviation of the gauge with who reads it. */
  readonly gauge: number
  /** Steps of size that the gauge can tell apart among these parts: √2 σ_part / σ_gauge. */
  readonly toldApart: number
}

/** @throws when the study is not crossed: our own fault, since the door checks it */
export function gaugeStudy(study: Study): GaugeStudy {
  const shape = { parts: study.length, appraisers: study[0].length, repeats: study[0][0].length }
  const isCrossed = study.every((part) => part.length === shape.appraisers && part.every((own) => own.length === shape.repeats))
  if (!isCrossed || shape.parts < 2 || shape.repeats < 2) throw new Error('a gauge study needs every part, appraiser and repeat')
  return shape.appraisers === 1 ? ofOne(study, shape) : ofSeveral(study, shape)
}

interface Shape {
  readonly parts: number
  readonly appraisers: number
  readonly repeats: number
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
const squaresAbout = (values: readonly number[], middle: number): number =>
  values.reduce((sum, value) => sum + (value - middle) ** 2, 0)

function repeatsOf(study: Study, { parts, appraisers, repeats }: Shape): SumOfSquares {
  const cells = study.flat()
  return {
    squares: cells.reduce((sum, cell) => sum + squaresAbout(cell, mean(cell)), 0),
    freedom: parts * appraisers * (repeats - 1),
  }
}

function partsOf(study: Study, { parts, appraisers, repeats }: Shape): SumOfSquares {
  const means = study.map((part) => mean(part.flat()))
  return { squares: appraisers * repeats * squaresAbout(means, mean(means)), freedom: parts - 1 }
}

const meanSquare = ({ squares, freedom }: SumOfSquares): number => squares / freedom

function ofOne(study: Study, shape: Shape): GaugeStudy {
  const [parts, repeats] = [partsOf(study, shape), repeatsOf(study, shape)]
  const repeat = meanSquare(repeats)
  const part = Math.max(0, (meanSquare(parts) - repeat) / shape.repeats)
  return { parts, repeats, variance: { repeat, part }, ...told(repeat, part) }
}

function ofSeveral(study: Study, shape: Shape): GaugeStudy {
  const [parts, repeats] = [partsOf(study, shape), repeatsOf(study, shape)]
  const means = Array.from({ length: shape.appraisers }, (_, appraiser) => mean(study.flatMap((part) => part[appraiser])))
  const all = mean(means)
  const appraisers = { squares: shape.parts * shape.repeats * squaresAbout(means, all), freedom: shape.appraisers - 1 }
  const cells = shape.repeats * squaresAbout(study.flat().map(mean), all)
  const together = {
    squares: Math.max(0, cells - parts.squares - appraisers.squares),
    freedom: parts.freedom * appraisers.freedom,
  }
  const [repeat, crossed] = [meanSquare(repeats), meanSquare(together)]
  const variance = {
    repeat,
    together: Math.max(0, (crossed - repeat) / shape.repeats),
    appraiser: Math.max(0, (meanSquare(appraisers) - crossed) / (shape.parts * shape.repeats)),
    part: Math.max(0, (meanSquare(parts) - crossed) / (shape.appraisers * shape.repeats)),
  }
  const togetherByChance = fisherAbove([together.freedom, repeats.freedom], crossed / repeat)
  const gauge = repeat + variance.together + variance.appraiser
  return { parts, appraisers, together, repeats, togetherByChance, variance, ...told(gauge, variance.part) }
}

function told(gaugeVariance: number, partVariance: number): Pick<GaugeStudy, 'gauge' | 'toldApart'> {
  const gauge = Math.sqrt(gaugeVariance)
  return { gauge, toldApart: gauge > 0 ? (Math.SQRT2 * Math.sqrt(partVariance)) / gauge : Infinity }
}

/** Deviations across which a gauge is commonly said to spread. SOURCE trade. */
const DEVIATIONS_ACROSS = 6

/** Share of a tolerance that six deviations of the gauge take: a tenth is good, a third is too much (SOURCE trade, from memory). */
export function shareOfTolerance({ gauge }: GaugeStudy, tolerance: number): number {
  return (DEVIATIONS_ACROSS * gauge) / tolerance
}
