import { describe, expect, it } from 'vitest'
import { normalCdf } from '../../numbers/distributions/normal.ts'
import { byOne } from '../shares/by-one.ts'
import type { RunProgress } from '../shares/pieces.ts'
import { failurePoint, governingRequirements } from './failure-point.ts'
import { joinSamples, judgeSamples, type Samples } from './samples.ts'
import { type Spread, spreadOf } from './spread.ts'
import { stepsOf } from './steps.ts'
import { counted, judgeOf, type Small, smallProblem, sourceOf, standardNormals } from './test-support/small-problem.ts'
import { turnTowards } from './turn.ts'
import { targetVerdict } from './yields.ts'

const DEGREES = 180 / Math.PI

/** Hub, roller, roller, cage: the two rollers of a one-way clutch count alike, and its contact angle follows from their sizes. */
const clutch: Small = {
  sources: [
    sourceOf('hub', { kind: 'normal', mean: 55.29, deviation: 0.127 / 3 }),
    sourceOf('roller', { kind: 'normal', mean: 22.86, deviation: 0.0102 / 3 }),
    sourceOf('cage', { kind: 'normal', mean: 101.6, deviation: 0.127 / 3 }),
  ],
  figure: ([hub, roller, cage]) => DEGREES * Math.acos((hub + roller) / (cage - roller)),
  atLeast: 5,
}

function run(small: Small, samples: number, seed = 1): Spread {
  const problem = smallProblem(small)
  return counted(problem, spreadOf(problem, { seed, samples }))
}

describe('the one-way clutch', () => {
  const { figures, plan } = run(clutch, 4096)
  const [figure] = figures

  it('stands nominally where the paper has it', () => {
    // SOURCE paper (E. T. Fortini, Dimensioning for Interchangeable Manufacture, 1967, from memory: 7.018°)
    expect(plan.steps.middle.values[0]).toBeCloseTo(7.018, 3)
  })

  it('has the worst case of all its corners', () => {
    const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((corner) =>
      clutch.figure(clutch.sources.map(({ least, most }, bit) => ((corner >> bit) & 1 ? most : least))),
    )
    // SOURCE other-method (own figures by numpy: 5.1361 to 8.4902); SOURCE property (all corners)
    expect(figure.worst.least.value).toBeCloseTo(5.1361, 4)
    expect(figure.worst.most.value).toBeCloseTo(8.4902, 4)
    expect(figure.worst.least.value).toBeCloseTo(Math.min(...corners), 10)
    expect(figure.worst.most.value).toBeCloseTo(Math.max(...corners), 10)
  })

  it('has the root sum of squares and the counted mean and deviation of other roads', () => {
    const { straight, counted } = figure
    // SOURCE other-method (own figures: ±1.0724 by derivatives; 2 million pseudo-random draws: mean 7.0088, deviation 0.35883)
    expect(straight.kind === 'linear' && 3 * straight.deviation).toBeCloseTo(1.0724, 2)
    expect(counted?.mean).toBeCloseTo(7.0088, 3)
    expect(counted?.deviation).toBeCloseTo(0.3588, 2)
  })

  it('owes its spread to hub and cage alike', () => {
    const shares = figure.contributions?.shares ?? []
    // SOURCE hand (slopes −5.9552, −11.8658, 5.9106 °/mm times 0.127, 0.0102, 0.127, squared, over their sum 1.1500: 0.4974, 0.0127, 0.4899)
    expect(shares[0]).toBeCloseTo(0.4974, 1.5)
    expect(shares[1]).toBeCloseTo(0.0127, 2)
    expect(shares.reduce((sum, share) => sum + share, 0) + (figure.contributions?.rest ?? 0)).toBeCloseTo(1, 12)
  })
})

it('corners bound nothing where a set within the drawing lies beyond them', () => {
  const sources = ['a', 'b'].map((id) => sourceOf(id, { kind: 'uniform', least: -1, most: 1 }))
  // SOURCE hand (flat in the middle, so that both corners are the middle itself, 0; at a = b = 1 it is 1)
  const flat = run({ sources, figure: ([a, b]) => Math.max(0, a + b - 1), atLeast: 0 }, 256).figures[0].worst
  expect(flat).toMatchObject({ least: { value: 0 }, most: { value: 0 }, isBounding: false })
  // SOURCE hand (a sum rises with each: −2 and 2)
  const sum = run({ sources, figure: ([a, b]) => a + b, atLeast: 0 }, 256).figures[0].worst
  expect(sum).toMatchObject({ least: { value: -2 }, most: { value: 2 }, isBounding: true })
})

describe('sums whose answer is known', () => {
  it('a sum of normals: deviation, shares and yield', () => {
    const { figures, yields } = run({ sources: standardNormals(2), figure: ([a, b]) => 3 * a + 4 * b, atLeast: -10 }, 4096)
    // SOURCE hand (√(9 + 16) = 5; 9/25 and 16/25; Φ(2) = 0.97725)
    expect(figures[0].straight).toMatchObject({ kind: 'linear', deviation: expect.closeTo(5, 10) })
    expect(figures[0].contributions?.shares[0]).toBeCloseTo(0.36, 6)
    expect(figures[0].contributions?.rest).toBeCloseTo(0, 6)
    expect(yields.all.met.value).toBeCloseTo(0.97725, 3)
  })

  it('what differs by the rounding of the arithmetic alone is owed to nobody', () => {
    const { figures } = run({ sources: standardNormals(2), figure: ([a, b]) => 0.047 + 1e-16 * (a + b), atLeast: 0 }, 64)
    // SOURCE hand (1e-16 beside 0.047 is the last digit of a number of 53 bits)
    expect(figures[0].contributions).toBeUndefined()
  })

  it('a sum of three uniforms: a rare end', () => {
    const sources = [0, 1, 2].map((index) => sourceOf(`u${index}`, { kind: 'uniform', least: 0, most: 1 }))
    const { yields } = run({ sources, figure: ([a, b, c]) => a + b + c, atLeast: 0.3 }, 16384)
    // SOURCE hand (the volume of the corner below 0.3: 0.3³/6 = 0.0045)
    expect(Math.abs(yields.all.short.value - 0.0045)).toBeLessThan(0.0006)
    expect(yields.all.short.least).toBeLessThan(0.0045)
    expect(yields.all.short.most).toBeGreaterThan(0.0045)
  })

  it('a curve is told not to be linear', () => {
    const { figures } = run({ sources: standardNormals(2), figure: ([a, b]) => a + 0.2 * b * b, atLeast: -9 }, 64)
    // SOURCE hand (the curve adds √(0.2² + 2 · 0.2²) = 0.35 of the deviation 1)
    expect(figures[0].straight).toEqual({ kind: 'not linear here', why: 'its curve takes 35 % of its deviation' })
  })

  it('sources that bend a figure only together are found along its steepest way', () => {
    const { figures } = run({ sources: standardNormals(2), figure: ([a, b]) => a + b + 0.3 * a * b, atLeast: -9 }, 64)
    expect(figures[0].straight.kind).toBe('not linear here')
  })
})

describe('the nearest failure', () => {
  it('of a plane is its foot', () => {
    const problem = smallProblem({
      sources: standardNormals(3),
      figure: ([a, b, c]) => a + 2 * b - 2 * c,
      atLeast: -9,
    })
    const point = counted(problem, failurePoint(problem, counted(problem, stepsOf(problem)), 0))
    // SOURCE hand (9 over the length 3 of the slope: β = 3, along −(1, 2, −2)/3)
    expect('distance' in point && point.distance).toBeCloseTo(3, 8)
    expect('normals' in point && [...point.normals]).toEqual([-1, -2, 2].map((value) => expect.closeTo(value, 8)))
  })

  it('of a circle about another place is the nearest of its rim', () => {
    // The circle of radius 5 about (0, 1.5): the nearest point to the middle is (0, −3.5).
    const figure = ([a, b]: readonly number[]): number => 5 - Math.hypot(a, b - 1.5)
    const problem = smallProblem({ sources: standardNormals(2), figure, atLeast: 0 })
    const point = counted(problem, failurePoint(problem, counted(problem, stepsOf(problem)), 0))
    // SOURCE hand (5 − 1.5)
    expect('distance' in point && point.distance).toBeCloseTo(3.5, 2)
  })

  it('is found where the source that drives it comes to its end before anything fails', () => {
    // As friction between likely and most: nothing below the middle, and at its end a sixth of the margin is left to the two others.
    const problem = smallProblem({
      sources: [sourceOf('friction', { kind: 'uniform', least: -1, most: 1 }), ...standardNormals(2)],
      figure: ([friction, b, c]) => 0.155 - 0.13 * Math.max(0, friction) - 0.02 * b - 0.01 * c,
      atLeast: 0,
    })
    const point = counted(problem, failurePoint(problem, counted(problem, stepsOf(problem)), 0))
    // SOURCE other-method (friction step by step, what is left to the others straight)
    const distances = Array.from({ length: 4000 }, (_, step) => {
      const z = step / 1000
      return Math.hypot(z, (0.155 - 0.13 * (2 * normalCdf(z) - 1)) / Math.hypot(0.02, 0.01))
    })
    // A search ends within a twentieth of a deviation.
    expect('distance' in point && point.distance).toBeCloseTo(Math.min(...distances), 1)
  })

  it('is not told where the margin is flat in the middle, and counting goes on unturned', () => {
    const { plan, yields } = run({ sources: standardNormals(2), figure: ([a]) => 4 - a * a, atLeast: 0 }, 4096)
    expect(plan.cloud.directions).toEqual([])
    // SOURCE hand (2 Φ(−2) = 0.0455)
    expect(yields.all.short.value).toBeCloseTo(2 * normalCdf(-2), 3)
  })
})

describe('the turned cloud', () => {
  it('is a turn: lengths stay, and the first axis lies along the first direction', () => {
    const directions = [
      [1, 2, 3, 4],
      [0, 1, 0, -1],
      [2, 4, 6, 8],
    ]
    const { apply, directions_count } = turnTowards(directions)
    // SOURCE property: the third direction is the first again
    expect(directions_count).toBe(2)
    const axis = Float64Array.of(1, 0, 0, 0)
    apply(axis)
    const cosine = axis.reduce((sum, value, index) => sum + value * directions[0][index], 0) / Math.sqrt(30)
    expect(Math.abs(cosine)).toBeCloseTo(1, 12)
    const vector = Float64Array.of(0.3, -2, 1, 0.5)
    apply(vector)
    // SOURCE hand (0.09 + 4 + 1 + 0.25)
    expect(vector.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(5.34, 12)
  })

  const rare: Small = {
    sources: standardNormals(28),
    figure: (values) => values.reduce((sum, value, index) => sum + value * (1 + (index % 5)), 0),
    atLeast:
      -2.3263478740408408 * Math.sqrt(Array.from({ length: 28 }, (_, index) => (1 + (index % 5)) ** 2).reduce((a, b) => a + b)),
  }

  it('finds one in a hundred of 28 sources with far fewer samples than chance, and as plain samples find it', () => {
    const problem = smallProblem(rare)
    const turned = run(rare, 4096)
    // SOURCE hand (the bound lies at the 1 % quantile of a normal)
    expect(Math.abs(turned.yields.all.short.value - 0.01)).toBeLessThan(0.0005)
    expect(turned.yields.all.saved_ratio).toBeGreaterThan(5)
    const plain = judgeSamples(problem, { cloud: { dimensions: 28, seed: 1 }, from: 0, to: 8192 })
    const share = plain.verdicts.reduce((sum, code) => sum + code, 0) / 8192
    // SOURCE hand (five deviations of a binomial share: 5 √(0.01 · 0.99 / 8192) = 0.0039)
    expect(Math.abs(share - turned.yields.all.short.value)).toBeLessThan(0.0055)
  })

  it('its intervals hold the true share as often as they say', () => {
    const sources = [0, 1, 2].map((index) => sourceOf(`u${index}`, { kind: 'uniform', least: 0, most: 1 }))
    const corner: Small = { sources, figure: ([a, b, c]) => a + b + c, atLeast: 1 }
    const holding = Array.from({ length: 60 }, (_, seed) => run(corner, 256, seed).yields.all.short).filter(
      ({ least, most }) => least <= 1 / 6 && 1 / 6 <= most,
    )
    // SOURCE hand (the corner of the unit cube below a + b + c = 1 holds 1/6 of it)
    // SOURCE hand (95 % of 60 is 57; fewer than 51 would have a chance of 1 in 400)
    expect(holding.length).toBeGreaterThanOrEqual(51)
  })
})

describe('a run', () => {
  const problem = smallProblem(clutch)

  it('gives the same bytes for the same seed, in one piece or in shares, and others for another', () => {
    const asked = (seed: number, from: number, to: number): Samples =>
      judgeSamples(problem, { cloud: { dimensions: 3, seed }, from, to })
    expect(joinSamples([asked(5, 40, 96), asked(5, 0, 40)])).toEqual(asked(5, 0, 96))
    expect(asked(6, 0, 96).values).not.toEqual(asked(5, 0, 96).values)
    expect(() => joinSamples([asked(5, 0, 40), asked(5, 41, 96)])).toThrow('gap')
  })

  it('keeps what it has reached when it is stopped', () => {
    const going = byOne(spreadOf(problem, { seed: 1, samples: 4096 }), judgeOf(problem))
    const counting: RunProgress<Spread>[] = []
    for (let step = going.next(); step.done !== true && counting.length < 2; step = going.next()) {
      if (step.value.doing === 'samples') counting.push(step.value)
    }
    const reached = counting[1].reached?.()
    // SOURCE property: what was reached is what a run of that length gives
    expect(counting[1]).toMatchObject({ done: reached?.samples.to, of: 4096 })
    expect(reached).toEqual(run(clutch, counting[1].done))
  })

  it('counts sets that cannot be assembled by themselves, as short and not as a number', () => {
    const { yields, figures } = run({ sources: standardNormals(2), figure: ([a]) => (a > 1 ? Number.NaN : a), atLeast: -9 }, 4096)
    // SOURCE hand (Φ(−1) = 0.158655)
    expect(yields.failures['cannot be assembled'].value).toBeCloseTo(0.1587, 3)
    expect(yields.all.short.value).toBe(yields.failures['cannot be assembled'].value)
    expect(figures[0].counted?.without).toBe(yields.all.short.value * 4096)
  })

  it('is undecided while its interval holds the target', () => {
    const { yields } = run({ sources: standardNormals(2), figure: ([a]) => a, atLeast: -1 }, 256)
    // SOURCE hand (the true yield is Φ(1) = 0.8413)
    expect(targetVerdict(yields.all, 0.8)).toBe('met')
    expect(targetVerdict(yields.all, 0.8413)).toBe('undecided')
    expect(targetVerdict(yields.all, 0.9)).toBe('short')
  })

  it('without a single failure it still does not claim that there is none', () => {
    const { yields } = run({ sources: standardNormals(2), figure: ([a]) => a, atLeast: -30 }, 1024)
    // SOURCE hand (nothing seen in n: 1 − 0.025^(1/n) = 0.0036)
    expect(yields.all.short.value).toBe(0)
    expect(yields.all.short.most).toBeCloseTo(0.0036, 4)
    expect(governingRequirements(problem, counted(problem, stepsOf(problem)))).toHaveLength(1)
  })
})
