import { describe, expect, it } from 'vitest'
import { closingsTogether, harmSum, type SwingUnder } from './closings-together.ts'
import { type LifeLine, slope, strengthAfter } from './endurance.ts'
import type { Life } from './life.ts'

/** A life of so many closings on a line. */
function lived(line: LifeLine, cycles: number, shares: Readonly<Record<string, number>>): Life {
  const strength = (share: number) => strengthAfter(line, share * cycles) ?? Number.NaN
  const ultimate_MPa = line.short_MPa / 0.75
  return {
    line: { ...line, ultimate_MPa },
    material: { name: 'plain', source: 'invented' },
    strength_MPa: strength(1),
    ultimate_MPa,
    shares: new Map(
      Object.entries(shares).map(([id, share_ratio]) => [id, { share_ratio, strength_MPa: strength(share_ratio) }]),
    ),
  }
}

const reversed = (loadCase: string, amplitude: number): SwingUnder => ({
  loadCase,
  swing: { most_MPa: amplitude, least_MPa: -amplitude },
})

/** Σ n_i / N_i as it stands, each life taken from the line. */
function harmOneByOne(line: LifeLine, cycles: number, under: readonly (readonly [share: number, amplitude: number])[]): number {
  return under.reduce((sum, [share, amplitude]) => {
    const borne = 1000 * (line.short_MPa / amplitude) ** slope(line)
    return sum + (share * cycles) / borne
  }, 0)
}

describe('closings under different loads', () => {
  it('use a part up after as many blocks as in the worked example', () => {
    // SOURCE book (exercise on 1045 steel as solved on homeworksource.com/p/974669, read: blocks of one cycle at 480 MPa, of which 10⁴ are
    // borne, and four at 400 MPa, of which 10⁵: 1 / (10⁻⁴ + 4 × 10⁻⁵) = 7142 blocks); the line through both meets 10³ at 480 × 480/400 = 576
    const line = { short_MPa: 576, long_MPa: 400, long_cycles: 1e5 }
    const life = lived(line, 5 * 7142.857, { heavy: 1 / 5, light: 4 / 5 })
    const { amplitude_MPa, worst } = closingsTogether(life, [reversed('heavy', 480), reversed('light', 400)])
    expect(harmSum(life, amplitude_MPa)).toBeCloseTo(1, 6)
    expect(amplitude_MPa).toBeCloseTo(life.strength_MPa, 5)
    expect(worst.loadCase).toBe('heavy')
  })

  it('are worth what their sum taken one by one is worth', () => {
    // SOURCE book (Bhandari, Design of Machine Elements, cumulative damage, loads from memory: ±350 for 85 %, ±400 for 12 %, ±500 MPa for 3 %
    // of the time, S_ut 660, 280 MPa at 10⁶); SOURCE hand (k = 3 / log(594/280) = 9.185: lives of 128 800, 37 780 and 4 868, together 62 700)
    const line = { short_MPa: 594, long_MPa: 280, long_cycles: 1e6 }
    const cycles = 62_700
    const life = lived(line, cycles, { a: 0.85, b: 0.12, c: 0.03 })
    const { amplitude_MPa } = closingsTogether(life, [reversed('a', 350), reversed('b', 400), reversed('c', 500)])
    expect(harmSum(life, amplitude_MPa)).toBeCloseTo(1, 2)
    // SOURCE other-method (each life from the line, the shares added)
    const oneByOne = harmOneByOne(line, cycles, [
      [0.85, 350],
      [0.12, 400],
      [0.03, 500],
    ])
    expect(harmSum(life, amplitude_MPa)).toBeCloseTo(oneByOne, 9)
  })

  const line = { short_MPa: 600, long_MPa: 200, long_cycles: 1e6 }

  it('of one load case are those closings alone', () => {
    // SOURCE property (the strength of its own number of closings decides, the mean with it)
    const life = lived(line, 2e5, { carry: 0.1 })
    const swing = { most_MPa: 300, least_MPa: 0 }
    const { amplitude_MPa, share_ratio } = closingsTogether(life, [{ loadCase: 'carry', swing }])
    const own = strengthAfter(line, 2e4) ?? Number.NaN
    const [alternating, mean] = [150 / own, 150 / life.ultimate_MPa]
    expect(amplitude_MPa / life.strength_MPa).toBeCloseTo(alternating + mean, 9)
    expect(share_ratio).toBe(0.1)
  })

  it('have no better factor than the sum of Miner with Goodman’s mean in each life, and one not far below', () => {
    const [a, b] = [
      { most_MPa: 330, least_MPa: -20 },
      { most_MPa: 300, least_MPa: 40 },
    ]
    const life = lived(line, 2e5, { a: 0.2, b: 0.7 })
    const { amplitude_MPa } = closingsTogether(life, [
      { loadCase: 'a', swing: a },
      { loadCase: 'b', swing: b },
    ])
    const found = life.strength_MPa / amplitude_MPa
    const reversedAt = (factor: number, { most_MPa, least_MPa }: typeof a) =>
      (factor * (most_MPa - least_MPa)) / 2 / (1 - (factor * (most_MPa + least_MPa)) / 2 / life.ultimate_MPa)
    let [low, high] = [0, 2]
    for (let round = 0; round < 50; round++) {
      const middle = (low + high) / 2
      const harm = harmOneByOne(line, 2e5, [
        [0.2, reversedAt(middle, a)],
        [0.7, reversedAt(middle, b)],
      ])
      if (harm < 1) low = middle
      else high = middle
    }
    // SOURCE other-method (the factor at which the sum is one, by halving)
    expect(found).toBeLessThanOrEqual(low)
    expect(found).toBeGreaterThan(0.97 * low)
  })

  it('do no less harm for a load case more, and no more than all of them under the worst', () => {
    const shares = { carry: 0.4, grip: 0.3 }
    const life = lived(line, 2e5, shares)
    const [carry, grip] = [reversed('carry', 240), reversed('grip', 230)]
    const [alone, both] = [[carry], [carry, grip]].map((under) => closingsTogether(life, under).amplitude_MPa)
    // SOURCE property (harm adds up; a share is at most the whole)
    expect(both).toBeGreaterThan(alone)
    expect(both).toBeLessThan(240)
    const { shares: _, ...unshared } = life
    expect(closingsTogether(unshared, [carry, grip]).amplitude_MPa).toBe(240)
  })

  it('that a load case has none of leave it to bear a thousand', () => {
    const life = lived(line, 2e5, { carry: 1, knock: 0 })
    // SOURCE property (600 MPa is what the line bears a thousand times)
    const { amplitude_MPa, worst } = closingsTogether(life, [reversed('carry', 1), reversed('knock', 600)])
    expect(amplitude_MPa).toBeCloseTo(life.strength_MPa, 9)
    expect(worst.loadCase).toBe('knock')
  })

  it('lose nothing of their sum on a line that does not fall', () => {
    const level = { short_MPa: 300, long_MPa: 300, long_cycles: 1e6 }
    const life = lived(level, 2e5, { a: 0.5, b: 0.5 })
    expect(closingsTogether(life, [reversed('a', 100), reversed('b', 200)]).amplitude_MPa).toBe(200) // SOURCE property
  })
})
