/**
 * What kind of thing a number measures, as powers of four base units: mm, N, s, rad.
 *
 * Force instead of mass is a base unit because the inside units are mm, N and s; mass is N·s²/mm (a tonne).
 * Angle is a base unit of its own, so that 7 is not taken for 7 rad and a torsion rate is not taken for a couple.
 */
export interface Powers {
  readonly length: number
  readonly force: number
  readonly time: number
  readonly angle: number
}

/** What a count, a ratio or a coefficient measures. */
export const plainNumber: Powers = { length: 0, force: 0, time: 0, angle: 0 }

/** Powers of a product of `a` and `b` to the `exponent`. */
export function multiplied(a: Powers, b: Powers, exponent = 1): Powers {
  return {
    length: a.length + exponent * b.length,
    force: a.force + exponent * b.force,
    time: a.time + exponent * b.time,
    angle: a.angle + exponent * b.angle,
  }
}

/** Powers of `a` to an exponent, whole or not. */
export function raised(a: Powers, exponent: number): Powers {
  return multiplied(plainNumber, a, exponent)
}

/** Powers are sums of typed exponents; two that differ by less than this are the same power typed in two ways. */
const powerTolerance = 1e-9

/** Whether two quantities are of one kind and may be added. */
export function samePowers(a: Powers, b: Powers): boolean {
  return (
    Math.abs(a.length - b.length) < powerTolerance &&
    Math.abs(a.force - b.force) < powerTolerance &&
    Math.abs(a.time - b.time) < powerTolerance &&
    Math.abs(a.angle - b.angle) < powerTolerance
  )
}

/** Unit text in base units, such as `N·mm/rad`; `1` for a plain number. */
export function powersText(powers: Powers): string {
  const bases: readonly (readonly [string, number])[] = [
    ['N', powers.force],
    ['mm', powers.length],
    ['s', powers.time],
    ['rad', powers.angle],
  ]
  const written = (unit: string, power: number) =>
    Math.abs(power - 1) < powerTolerance ? unit : `${unit}^${Number(power.toFixed(4))}`
  const above = bases.filter(([, power]) => power > powerTolerance).map(([unit, power]) => written(unit, power))
  const below = bases.filter(([, power]) => power < -powerTolerance).map(([unit, power]) => written(unit, -power))
  return [above.join('·') || '1', ...below].join('/')
}
