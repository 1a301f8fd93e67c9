/** Coefficients for g = 7 (C. Lanczos's series in the fit that P. Godfrey published, from memory). */
const lanczos = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
] as const

const g = 7
const logRootOfTwoPi = 0.5 * Math.log(2 * Math.PI)

/** Natural logarithm of the gamma function, to about 15 digits. @param x positive */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x)
  let sum: number = lanczos[0]
  for (let term = 1; term < lanczos.length; term++) sum += lanczos[term] / (x - 1 + term)
  const base = x + g - 0.5
  return logRootOfTwoPi + (x - 0.5) * Math.log(base) - base + Math.log(sum)
}
