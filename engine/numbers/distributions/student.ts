/** Student's t distribution, by the beta distribution of t²/(ν + t²). */
import { betaCdf, betaQuantile } from './incomplete-beta.ts'

/** Share below t. @param freedom degrees of freedom ν, positive */
export function studentCdf(freedom: number, t: number): number {
  const outside = betaCdf({ a: freedom / 2, b: 0.5 }, freedom / (freedom + t * t))
  return t < 0 ? outside / 2 : 1 - outside / 2
}

/** The t below which a share p lies. @param freedom degrees of freedom ν, positive. @param p between 0 and 1, both left out */
export function studentQuantile(freedom: number, p: number): number {
  if (p < 0.5) return -studentQuantile(freedom, 1 - p)
  const outside = betaQuantile({ a: freedom / 2, b: 0.5 }, 2 * (1 - p))
  return Math.sqrt((freedom * (1 - outside)) / outside)
}
