/**
 * What each source contributes to the variance of a figure.
 *
 * The figure is fitted by a sum over the sources, f = c + Σ b_i x_i + rest, with x_i the value of source i in deviations from its mean, by
 * least squares over the samples. The x_i are uncorrelated with variance 1, so the variance of the fitted part is Σ b_i², and
 *
 *     share of source i = b_i² / (Σ b_j² + Var rest),     rest = 1 − Σ shares
 *
 * The rest is what is curved, what only acts together with another source, and what jumps. A fit of noise makes each b_i² too large by the
 * variance of b_i, which is taken off; what that leaves below nothing is nothing.
 */
import { factor, makeLu, solve } from '../../numbers/lu.ts'
import { momentsOf } from '../sources/law.ts'
import type { Source } from '../sources/source.ts'

/** Shares of the variance of one figure; they and the rest sum to 1. */
export interface Contributions {
  /** One a source, 0 to 1. */
  readonly shares: readonly number[]
  /** Change of the figure with one deviation of each source, in the figure's unit: the fitted b_i. */
  readonly effects: readonly number[]
  readonly rest: number
}

/** Sources and figure of samples. */
export interface Fitted {
  /** Sample by sample, one a source, in deviations from its mean: as `inDeviations` gives them. */
  readonly inputs: readonly Float64Array[]
  /** NaN where the figure has no value. */
  readonly values: Float64Array
}

/** Samples for each unknown of the fit, below which it says little. */
const samplesForEach = 3

/** Figures are found to about this share of themselves: what they differ by less is the rounding of the arithmetic, and nobody's doing. */
const foundTo_ratio = 1e-9

/** @returns undefined where too few samples have a value, or none differs */
export function contributionsOf({ inputs, values }: Fitted): Contributions | undefined {
  const used = [...values.keys()].filter((sample) => !Number.isNaN(values[sample]))
  const sources = inputs[0]?.length ?? 0
  if (used.length < samplesForEach * (sources + 1)) return undefined
  const mean = used.reduce((sum, sample) => sum + values[sample], 0) / used.length
  const square = used.reduce((sum, sample) => sum + (values[sample] - mean) ** 2, 0)
  if (!(Math.sqrt(square / used.length) > foundTo_ratio * Math.abs(mean))) return undefined
  const fitted = fitOf({ inputs, values }, used, mean)
  if (!fitted) return undefined
  const left = used.reduce((sum, sample) => sum + (values[sample] - mean - fittedAt(fitted, inputs[sample])) ** 2, 0)
  const noise = left / (used.length - sources - 1) / used.length
  const effects = [...fitted.subarray(0, sources)]
  const squares = effects.map((effect) => Math.max(0, effect * effect - noise))
  const variance = squares.reduce((sum, one) => sum + one, 0) + noise * used.length
  const shares = squares.map((one) => one / variance)
  return { shares, effects, rest: (noise * used.length) / variance }
}

/** Effects of the sources, and last the constant. */
function fitOf({ inputs, values }: Fitted, used: readonly number[], mean: number): Float64Array | undefined {
  const size = inputs[0].length + 1
  const lu = makeLu(size)
  const right = new Float64Array(size)
  const row = new Float64Array(size).fill(1)
  for (const sample of used) {
    row.set(inputs[sample])
    for (let i = 0; i < size; i++) {
      right[i] += row[i] * (values[sample] - mean)
      for (let j = 0; j < size; j++) lu.factors[i * size + j] += row[i] * row[j]
    }
  }
  if (!factor(lu)) return undefined
  solve(lu, right)
  return right
}

function fittedAt(fitted: Float64Array, inputs: Float64Array): number {
  let sum = fitted[inputs.length]
  for (let source = 0; source < inputs.length; source++) sum += fitted[source] * inputs[source]
  return sum
}

/** Values of sources, sample by sample, in deviations of each source's law from its mean; a source that does not vary stays at nothing. */
export function inDeviations(sources: readonly Source[], values: readonly Float64Array[]): readonly Float64Array[] {
  const moments = sources.map(({ law }) => momentsOf(law))
  return values.map((sample) =>
    sample.map((value, source) => {
      const { mean, deviation } = moments[source]
      return deviation > 0 ? (value - mean) / deviation : 0
    }),
  )
}
