import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../numbers/distributions/normal.ts'
import { type LineLaw, momentsOf, quantile, valuesAt } from './law.ts'
import type { Law, Source } from './source.ts'

const source = (law: Law): Source => ({ id: 'x', words: 'x', unit: 'mm', nominal: 0, law, least: -1, most: 1, of: 'sets' })
const values = (laws: readonly Law[], normals: readonly number[]) => [...valuesAt(laws.map(source), normals)]

const uniform: LineLaw = { kind: 'uniform', least: 2, most: 5 }
const normal: LineLaw = { kind: 'normal', mean: 10, deviation: 0.5 }
const truncated: LineLaw = { kind: 'truncatedNormal', mean: 10, deviation: 0.5, least: 9.5, most: 11.5 }
const sample: LineLaw = { kind: 'sample', values: [1, 2, 4, 8] }
const disc = (axis: 'x' | 'y'): Law => ({ kind: 'disc', axis })

/** Mean and deviation by the midpoint rule over the quantiles: another road than the closed forms. */
function momentsByQuantiles(law: LineLaw, count = 20_000) {
  let [sum, squares] = [0, 0]
  for (let index = 0; index < count; index++) {
    const value = quantile(law, (index + 0.5) / count)
    sum += value
    squares += value * value
  }
  return { mean: sum / count, deviation: Math.sqrt(squares / count - (sum / count) ** 2) }
}

describe('quantiles', () => {
  it('of the normal law are those of the published table', () => {
    // SOURCE book (table of the normal distribution in any handbook of statistics, from memory: 97.5 % lie below 1.959964, 99.9 % below 3.090232)
    expect((quantile(normal, 0.975) - 10) / 0.5).toBeCloseTo(1.959964, 6)
    expect((quantile(normal, 0.999) - 10) / 0.5).toBeCloseTo(3.090232, 6)
  })

  it('run from limit to limit where there are some', () => {
    // SOURCE hand (a quarter of the way from 2 to 5)
    expect(quantile(uniform, 0.25)).toBe(2.75)
    expect(quantile(truncated, 1e-12)).toBeCloseTo(9.5, 6)
    expect(quantile(truncated, 1 - 1e-12)).toBeCloseTo(11.5, 4)
    expect([0.01, 0.26, 0.51, 0.99].map((u) => quantile(sample, u))).toEqual([1, 2, 4, 8])
  })

  it('of the cut normal law leave the stated share below', () => {
    // SOURCE property (the share below is that of the whole law between the limits)
    const share = (x: number) => normalCdf((x - 10) / 0.5)
    const x = quantile(truncated, 0.3)
    expect((share(x) - share(9.5)) / (share(11.5) - share(9.5))).toBeCloseTo(0.3, 12)
  })
})

describe('moments', () => {
  it.each([uniform, normal, truncated, sample])('of $kind are those of its quantiles', (law) => {
    // SOURCE other-method (midpoint rule over the quantiles)
    const byQuantiles = momentsByQuantiles(law)
    expect(momentsOf(law).mean).toBeCloseTo(byQuantiles.mean, 3)
    expect(momentsOf(law).deviation).toBeCloseTo(byQuantiles.deviation, 3)
  })

  it('of a normal law cut at three deviations: 0.98658 of its deviation', () => {
    // SOURCE hand (1 − 2·3 φ(3) / (2 Φ(3) − 1) = 1 − 6 · 0.004431848 / 0.997300204 = 0.973337, its root 0.986578)
    const { mean, deviation } = momentsOf({ kind: 'truncatedNormal', mean: 0, deviation: 1, least: -3, most: 3 })
    expect(mean).toBeCloseTo(0, 12)
    expect(deviation).toBeCloseTo(0.986578, 6)
  })
})

describe('values from normal numbers', () => {
  it('stand at the quantile of their share', () => {
    // SOURCE property (Φ(0) = ½; the shares of z and of the value are equal)
    expect(values([uniform, normal, truncated], [0, 0, 0])).toEqual([3.5, 10, quantile(truncated, 0.5)])
    expect(values([uniform], [1.2])[0]).toBeCloseTo(quantile(uniform, normalCdf(1.2)), 12)
    expect(values([normal], [-7.5])[0]).toBe(6.25)
    expect(values([uniform, sample], [50, 50])).toEqual([expect.closeTo(5, 12), 8])
  })

  it('of a disc keep the direction and put as much nearer the middle as the normal numbers have', () => {
    // SOURCE hand (|z|² = 2 ln 2 has half of the plane inside; half of the disc lies within r = √½)
    const z = Math.sqrt(2 * Math.LN2)
    const [x, y] = values([disc('x'), disc('y')], [0.6 * z, 0.8 * z])
    expect(Math.hypot(x, y)).toBeCloseTo(Math.SQRT1_2, 12)
    expect(y / x).toBeCloseTo(4 / 3, 12)
    expect(values([disc('x'), disc('y')], [0, 0])).toEqual([0, 0])
    expect(Math.hypot(...values([normal, disc('x'), disc('y')], [0, 30, -40]).slice(1))).toBeCloseTo(1, 12)
  })

  it('of a disc are even over it', () => {
    // SOURCE property (of an even disc a share r² lies within r, and the mean of x² is ¼); midpoints of the shares in both normal numbers
    const count = 200
    const z = Array.from({ length: count }, (_, index) =>
      quantile({ kind: 'normal', mean: 0, deviation: 1 }, (index + 0.5) / count),
    )
    const points = z.flatMap((first) => z.map((second) => values([disc('x'), disc('y')], [first, second])))
    const share = points.filter(([x, y]) => Math.hypot(x, y) < 0.5).length / points.length
    const square = points.reduce((sum, [x]) => sum + x * x, 0) / points.length
    expect(share).toBeCloseTo(0.25, 2)
    expect(Math.sqrt(square)).toBeCloseTo(momentsOf(disc('x')).deviation, 2)
  })

  it('of normal places are so many deviations', () => {
    const normalDisc: Law = { kind: 'disc', axis: 'x', deviation: 1 / 3 }
    // SOURCE hand (1.5 deviations of a third)
    expect(values([normalDisc], [1.5])[0]).toBe(0.5)
    expect(momentsOf(normalDisc).deviation).toBe(1 / 3)
  })
})
