/**
 * From independent standard normal numbers to the values of sources. Each source but those of a disc takes its own number z to the quantile
 * at Φ(z), so that any way of drawing normal numbers, also a turned one, gives the stated laws.
 *
 * The two of a disc are made together: with z = (z₁, z₂) the share of the plane nearer to the middle is 1 − exp(−|z|²/2), and of the unit
 * disc r² lies nearer than r, so that r = √(1 − exp(−|z|²/2)) in the direction of z is even over the disc. The map is smooth at the middle
 * and keeps directions.
 */
import { normalCdf, normalDensity, normalQuantile } from '../../numbers/distributions/normal.ts'
import type { Law, Source } from './source.ts'

/** Laws whose values can be drawn one by one. */
export type LineLaw = Exclude<Law, { readonly kind: 'disc' }>

/** The value below which a share `u` lies. @param u between 0 and 1, both left out */
export function quantile(law: LineLaw, u: number): number {
  return quantileOf(law)(u)
}

/** As `quantile`, for many shares of one law. */
export function quantileOf(law: LineLaw): (u: number) => number {
  switch (law.kind) {
    case 'normal':
      return (u) => law.mean + law.deviation * normalQuantile(u)
    case 'truncatedNormal': {
      const { mean, deviation, least, most } = law
      const [below, above] = [normalCdf((least - mean) / deviation), normalCdf((most - mean) / deviation)]
      return (u) => Math.min(most, Math.max(least, mean + deviation * normalQuantile(below + u * (above - below))))
    }
    case 'uniform':
      return (u) => law.least + u * (law.most - law.least)
    case 'sample':
      return (u) => law.values[Math.min(law.values.length - 1, Math.floor(u * law.values.length))]
  }
}

/** Beyond this the share that is left is less than a double next to 1 can hold. */
const farthest = 8

/**
 * The values of one set.
 *
 * @param normals independent standard normal numbers, one a source
 * @returns one a source, in its unit, as `Variation.setOf` takes them
 */
export function valuesAt(sources: readonly Source[], normals: ArrayLike<number>): Float64Array {
  const values = new Float64Array(sources.length)
  valuesOf(sources)(normals, values)
  return values
}

/** As `valuesAt`, for many sets of the same sources: into an array, with what does not change worked out once. */
export function valuesOf(sources: readonly Source[]): (normals: ArrayLike<number>, out: Float64Array) => void {
  const makers = sources.map(({ law }, index) => makerOf(law, index))
  return (normals, out) => {
    for (let index = 0; index < makers.length; index++) out[index] = makers[index](normals)
  }
}

/**
 * As `valuesOf`, for many sets at a time and from the shares that their normal numbers have below them: a source that stands alone takes its own
 * quantile at once.
 *
 * @returns takes a column a source of shares between 0 and 1, both left out, and overwrites it with the values
 */
export function valuesOfShares(sources: readonly Source[]): (columns: readonly Float64Array[]) => void {
  const overwrite = sources.map(({ law }) => (law.kind === 'disc' ? undefined : quantileOf(law)))
  return (columns) => {
    for (const [index, { law }] of sources.entries()) {
      const atShare = overwrite[index]
      if (atShare) for (let set = 0; set < columns[index].length; set++) columns[index][set] = atShare(columns[index][set])
      else if (law.kind === 'disc' && law.axis === 'x') overDisc(law.deviation, columns[index], columns[index + 1])
    }
  }
}

/** @param deviation of each coordinate; absent where the law is even over the disc */
function overDisc(deviation: number | undefined, x: Float64Array, y: Float64Array): void {
  for (let set = 0; set < x.length; set++) {
    const normalX = normalQuantile(x[set])
    const normalY = normalQuantile(y[set])
    const share = deviation ?? discShare(Math.sqrt(normalX * normalX + normalY * normalY))
    x[set] = share * normalX
    y[set] = share * normalY
  }
}

/** Value of the source at a place in the list, from the normal numbers of the set. */
function makerOf(law: Law, index: number): (normals: ArrayLike<number>) => number {
  if (law.kind === 'normal') {
    const { mean, deviation } = law
    return (normals) => mean + deviation * normals[index]
  }
  if (law.kind !== 'disc') {
    const atShare = quantileOf(law)
    return (normals) => atShare(normalCdf(Math.min(farthest, Math.max(-farthest, normals[index]))))
  }
  const { axis, deviation } = law
  if (deviation !== undefined) return (normals) => deviation * normals[index]
  const first = axis === 'x' ? index : index - 1
  return (normals) => discShare(Math.sqrt(normals[first] ** 2 + normals[first + 1] ** 2)) * normals[index]
}

/** √(1 − exp(−r²/2)) / r, which tends to √½ in the middle. */
function discShare(r: number): number {
  return r > 0 ? Math.sqrt(-Math.expm1(-(r * r) / 2)) / r : Math.SQRT1_2
}

/** Mean and standard deviation of a law; of a disc those of one coordinate. */
export function momentsOf(law: Law): { readonly mean: number; readonly deviation: number } {
  switch (law.kind) {
    case 'normal':
      return law
    case 'uniform':
      return { mean: (law.least + law.most) / 2, deviation: (law.most - law.least) / Math.sqrt(12) }
    case 'disc':
      // The mean of x² over the unit disc is a quarter.
      return { mean: 0, deviation: law.deviation ?? 0.5 }
    case 'sample': {
      const mean = law.values.reduce((sum, value) => sum + value, 0) / law.values.length
      const square = law.values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / law.values.length
      return { mean, deviation: Math.sqrt(square) }
    }
    case 'truncatedNormal':
      return truncatedMoments(law)
  }
}

/** With φ and Φ at the ends a and b: the mean is μ + σ (φa − φb)/(Φb − Φa), the variance σ² (1 + (aφa − bφb)/(Φb − Φa) − (…)²). */
function truncatedMoments({ mean, deviation, least, most }: LineLaw & { readonly kind: 'truncatedNormal' }) {
  const [a, b] = [(least - mean) / deviation, (most - mean) / deviation]
  const share = normalCdf(b) - normalCdf(a)
  const shift = (normalDensity(a) - normalDensity(b)) / share
  const square = 1 + (a * normalDensity(a) - b * normalDensity(b)) / share - shift * shift
  return { mean: mean + deviation * shift, deviation: deviation * Math.sqrt(square) }
}
