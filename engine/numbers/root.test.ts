import { describe, expect, it } from 'vitest'
import { rootBetween } from './root.ts'

const WIDTH = 1e-12

/** Root of a function between two places, and the number of trials it took. */
function search(f: (x: number) => number | undefined, low: number, high: number): { root: number | undefined; trials: number } {
  let trials = 0
  const counted = (x: number): number | undefined => {
    trials++
    return f(x)
  }
  const root = rootBetween(counted, { low, high, atLow: f(low) ?? 0, atHigh: f(high) ?? 0 }, WIDTH)
  return { root, trials }
}

describe('a root between two places', () => {
  it.each([
    // SOURCE hand (cos x = x at 0.739085133215, the Dottie number)
    { says: 'a gentle bend', f: (x: number) => Math.cos(x) - x, low: 0, high: 1, at: 0.739085133215161 },
    // SOURCE hand (x³ = 1e-3)
    { says: 'a flat cubic', f: (x: number) => x ** 3 - 1e-3, low: -1, high: 3, at: 0.1 },
    // SOURCE hand (a jump changes its sign at 0.3)
    { says: 'a jump', f: (x: number) => (x < 0.3 ? -1 : 5), low: 0, high: 1, at: 0.3 },
    // SOURCE hand (kink: −0.2 + 10 (x − 0.5) is zero at 0.52)
    { says: 'a kink', f: (x: number) => -0.2 + (x > 0.5 ? 10 * (x - 0.5) : 0), low: 0, high: 1, at: 0.52 },
    // SOURCE hand (falling: 2 − e^x is zero at ln 2)
    { says: 'a falling function', f: (x: number) => 2 - Math.exp(x), low: 0, high: 4, at: Math.LN2 },
  ])('is found for $says', ({ f, low, high, at }) => {
    const { root } = search(f, low, high)
    expect(Math.abs((root ?? Number.NaN) - at)).toBeLessThan(2 * WIDTH)
  })

  it('takes few trials where the function is nearly straight', () => {
    // SOURCE property (each trial doubles the digits or more: three for the digits, up to three to close the bracket)
    expect(search((x) => x + 0.05 * x * x - 0.4, 0, 1).trials).toBeLessThanOrEqual(7)
  })

  it('takes no more trials than a few times bisection on a step function', () => {
    // SOURCE hand (1 / 1e-12 is 40 halvings)
    expect(search((x) => (x < 0.123456789 ? -1e-9 : 1), 0, 1).trials).toBeLessThanOrEqual(80)
  })

  it('is an end where the function is zero there', () => {
    expect(search((x) => x, 0, 1).root).toBe(0)
    expect(search((x) => x - 1, 0, 1).root).toBe(1)
  })

  it('is not given where the ends agree in sign', () => {
    expect(search((x) => x * x + 1, -1, 1).root).toBeUndefined()
  })

  it('is not given where the function ends on the way', () => {
    expect(search((x) => (x > 0.4 && x < 0.6 ? undefined : x - 0.5), 0, 1).root).toBeUndefined()
  })
})
