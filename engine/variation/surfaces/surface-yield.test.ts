import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../numbers/distributions/normal.ts'
import { standardNormals } from '../spread/test-support/small-problem.ts'
import type { NoSurface, NumberedSet, SurfaceProblem } from './surface-problem.ts'
import { type SurfaceAsked, type SurfaceYield, surfaceYield } from './surface-yield.ts'

type NumbersOf = (z: readonly number[]) => readonly number[]

/** A problem over standard normal numbers, one requirement a number. */
function numbered(sources_count: number, numbersOf: NumbersOf, verdictOf = (number: number) => number > 0): SurfaceProblem {
  const numbers = numbersOf(new Array<number>(sources_count).fill(0)).map((_, requirement) => {
    return { requirement, words: `number ${requirement}`, isWhole: true }
  })
  const judge = (values: ArrayLike<number>): NumberedSet => {
    const found = numbersOf(Array.from(values))
    return { numbers: found, verdicts: found.map((number) => (verdictOf(number) ? 'met' : 'short')) }
  }
  return { sources: standardNormals(sources_count), requirements_count: numbers.length, numbers, judge }
}

function told(problem: SurfaceProblem, { seed = 1, half_ratio = 0.001 }: Partial<SurfaceAsked> = {}): SurfaceYield | NoSurface {
  const wanting = surfaceYield(problem, { seed, half_ratio })
  let step = wanting.next()
  while (step.done !== true) step = wanting.next(step.value.values.map((values) => problem.judge(values)))
  return step.value
}

function yieldIn(problem: SurfaceProblem, asked?: Partial<SurfaceAsked>): SurfaceYield {
  const found = told(problem, asked)
  if ('why' in found) throw new Error(found.why)
  return found
}

const sum = (z: readonly number[]): number => z.reduce((total, value) => total + value, 0)

describe('yield by surfaces', () => {
  it('is that of a straight boundary', () => {
    const { all, judged_count } = yieldIn(numbered(9, (z) => [2 - sum(z) / 3]))
    // SOURCE closed form: a sum of nine standard normal numbers over three is standard normal.
    expect(Math.abs(all.value - normalCdf(2))).toBeLessThan(0.0005)
    expect(all.most - all.least).toBeLessThan(0.002)
    expect(judged_count).toBeLessThan(200)
  })

  it('is that of a round boundary', () => {
    const { all } = yieldIn(numbered(4, (z) => [6 - z[0] ** 2 - z[1] ** 2]))
    // SOURCE closed form: the sum of two squares has the distribution 1 − exp(−x/2) (chi-squared, two degrees of freedom).
    expect(Math.abs(all.value - (1 - Math.exp(-3)))).toBeLessThan(0.001)
  })

  it('is told by few sets where many sources move one quantity, along which the number bends', () => {
    const sources_count = 23
    const along = (z: readonly number[]): number => sum(z) / Math.sqrt(sources_count)
    const { all, judged_count } = yieldIn(
      numbered(sources_count, (z) => [2 - along(z) - 0.3 * along(z) ** 2]),
      { half_ratio: 0.002 },
    )
    // SOURCE closed form: u is standard normal, and lies between the roots of 2 − u − 0.3 u² where the set is met.
    const [least, most] = [-1, 1].map((side) => (-1 + side * Math.sqrt(1 + 2.4)) / 0.6)
    expect(Math.abs(all.value - (normalCdf(most) - normalCdf(least)))).toBeLessThan(0.002)
    expect(all.most - all.least).toBeLessThan(0.004)
    // A parabola in 23 sources has 300 terms.
    expect(judged_count).toBeLessThan(150)
  })

  it('holds the share between its ends where no surface is exact', () => {
    // SOURCE closed form: the logarithm of the product of such numbers is normal with the deviation √Σ aᵢ² (lognormal).
    const weights = [0.5, 0.4, 0.3, -0.3, 0.2]
    const deviation = Math.hypot(...weights)
    const problem = numbered(5, (z) => [
      Math.exp(1.6) - Math.exp(z.reduce((power, value, index) => power + weights[index] * value, 0)),
    ])
    const shares = [1, 2, 3, 4].map((seed) => yieldIn(problem, { seed }).all)
    for (const { least, most } of shares) expect(most - least).toBeLessThan(0.0025)
    const held = shares.filter(({ least, most }) => least <= normalCdf(1.6 / deviation) && normalCdf(1.6 / deviation) <= most)
    expect(held.length).toBeGreaterThanOrEqual(3)
  })

  it('does not stop at a surface that does not know yet how far it errs', () => {
    const margin = (z: readonly number[]): number => 1 + 0.12 * (z[0] + z[1] - z[2] + z[3] - z[4])
    const problem = numbered(12, (z) => [0.9 - 0.3 / Math.max(0.05, margin(z))])
    // SOURCE closed form: what goes with one over a margin is met above a third of it; the margin is normal with the deviation 0.12 √5.
    const truth = normalCdf(2 / 3 / (0.12 * Math.sqrt(5)))
    // Seeds whose first surfaces find hardly a set in doubt, and are wrong by 0.6 %.
    for (const seed of [5, 8]) {
      const { least, most } = yieldIn(problem, { seed, half_ratio: 0.004 }).all
      expect(least).toBeLessThanOrEqual(truth)
      expect(most).toBeGreaterThanOrEqual(truth)
    }
  })

  it('is the surfaces’ own word once they are exact', () => {
    const { all } = yieldIn(
      numbered(12, (z) => [2 - (z[0] + z[1] + z[2]) / Math.sqrt(3), 2.2 - z[3] + z[4] * z[0]]),
      { seed: 3 },
    )
    expect(all.most - all.least).toBeLessThan(0.002)
  })

  it('says that little is known where a number jumps', () => {
    const { all, judged_count } = yieldIn(
      numbered(3, (z) => [z[0] > 1.2 ? -1 - z[1] ** 2 : 3 + z[2] ** 2]),
      { seed: 3 },
    )
    // SOURCE closed form: the share of standard normal numbers below 1.2.
    expect(all.least).toBeLessThan(normalCdf(1.2))
    expect(all.most).toBeGreaterThan(normalCdf(1.2))
    expect(all.most - all.least).toBeGreaterThan(0.015)
    expect(judged_count).toBeGreaterThan(600)
  })

  it('tells requirements apart and counts those that fail together once', () => {
    const { all, requirements } = yieldIn(numbered(4, (z) => [1.5 - z[0], 2 - z[1], 40 + z[2]]))
    // SOURCE closed form: independent boundaries multiply.
    expect(requirements[0].value).toBeCloseTo(normalCdf(1.5), 3)
    expect(requirements[1].value).toBeCloseTo(normalCdf(2), 3)
    expect(all.value).toBeCloseTo(normalCdf(1.5) * normalCdf(2), 3)
    expect(requirements[2].value).toBe(1)
  })

  it('judges no set twice and few where every number stays clear', () => {
    const { all, clear, near, judged_count } = yieldIn(numbered(5, (z) => [100 + sum(z), 50 - z[0] * z[1]]))
    expect(near).toEqual([])
    expect(clear.map(({ behind }) => behind.words).toSorted()).toEqual(['number 0', 'number 1'])
    expect(judged_count).toBe(48)
    // SOURCE hand (none of 8192 fell short: 0.025 to the power 1/8192)
    expect(all.least).toBeCloseTo(0.99955, 5)
  })

  it('is the same for the same seed', () => {
    const problem = numbered(3, (z) => [1 - Math.sin(z[0]) - 0.3 * z[1]])
    expect(yieldIn(problem, { seed: 7 })).toEqual(yieldIn(problem, { seed: 7 }))
  })
})

describe('surfaces do not serve', () => {
  it('where nothing varies', () => {
    expect(told(numbered(0, () => [1]))).toEqual({ why: 'nothing varies from set to set' })
  })

  it('where a number has no value in some sets', () => {
    const found = told(numbered(2, (z) => [z[0] > 1 ? Number.NaN : 1 + z[1]]))
    expect(found).toEqual({ why: 'number 0 has no value in some sets' })
  })

  it('where a number in doubt has no value in a set that is judged for it alone', () => {
    const problem = numbered(2, (z) => [1 - Math.sin(z[0]) - 0.3 * z[1]])
    const judge: SurfaceProblem['judge'] = (values, places) => (places ? { numbers: [Number.NaN] } : problem.judge(values))
    const wanting = surfaceYield({ ...problem, judge }, { seed: 1, half_ratio: 0.001 })
    let step = wanting.next()
    while (step.done !== true) {
      const { places, values } = step.value
      step = wanting.next(values.map((one) => judge(one, places)))
    }
    expect(step.value).toEqual({ why: 'number 0 has no value in some sets' })
  })

  it('where a number does not say whether its requirement is met', () => {
    const found = told(
      numbered(
        2,
        (z) => [z[0] + 1],
        (number) => number > 0.5,
      ),
    )
    expect(found).toEqual({ why: 'number 0 does not say of every set whether its requirement is met' })
  })

  it('where a set has no answer of its own', () => {
    const problem = numbered(2, (z) => [5 + z[0]])
    const judge = (values: ArrayLike<number>): NumberedSet => ({
      ...problem.judge(values),
      ...(values[1] > 1 && { failure: 'does not close' as const }),
    })
    expect(told({ ...problem, judge })).toEqual({ why: 'some sets have no answer of their own: does not close' })
  })
})
