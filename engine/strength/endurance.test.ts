import { describe, expect, it } from 'vitest'
import { tableMaterials } from '../design/read-materials.ts'
import { type LifeLine, lifeLine, sizeFactor, strengthAfter, surfaceFactor } from './endurance.ts'

const steel = tableMaterials.get('17-4PH H900')
if (!steel) throw new Error('the table has lost its steel')

describe('the line of strength against life', () => {
  it('meets the worked example of a bar of 45C8', () => {
    // SOURCE book (Bhandari, Design of Machine Elements, ex. 5.6, read: S_ut 630, 0.9 S_ut at 10³, 315 MPa at 10⁶: 386.63 MPa at 90 000)
    const line = { short_MPa: 0.9 * 630, long_MPa: 315, long_cycles: 1e6 }
    expect(strengthAfter(line, 90_000)).toBeCloseTo(386.63, 2)
  })

  it('meets the worked example of 1050 steel', () => {
    // SOURCE book (Shigley, ex. 6-2, from memory: S_ut 90 kpsi, f 0.86, 45 kpsi at 10⁶: 64.6 kpsi at 10⁴, 55 kpsi after 77 400)
    const line = { short_MPa: 0.86 * 90, long_MPa: 45, long_cycles: 1e6 }
    expect(strengthAfter(line, 1e4)).toBeCloseTo(64.6, 1)
    expect(strengthAfter(line, 77_400)).toBeCloseTo(55, 1)
  })

  it('ends where nothing is known', () => {
    const line: LifeLine = { short_MPa: 400, long_MPa: 100, long_cycles: 5e8 }
    expect(strengthAfter(line, 5e8)).toBeCloseTo(100, 9) // SOURCE property (the end of the line)
    expect(strengthAfter(line, 5.001e8)).toBeUndefined()
    expect(strengthAfter(line, 10)).toBe(400) // SOURCE property (its beginning)
  })
})

describe('what a made part bears less than a specimen', () => {
  it('comes from its surface as in the handbook', () => {
    // SOURCE book (Shigley, ex. 6-3, from memory: machined, S_ut 520 MPa: 0.860)
    expect(surfaceFactor('machined', 520)).toBeCloseTo(0.86, 2)
    // SOURCE hand (1.58 × 1310^−0.085 = 0.858)
    expect(surfaceFactor('ground', 1310)).toBeCloseTo(0.858, 3)
    expect(surfaceFactor('ground', 100)).toBe(1)
  })

  it('comes from its size as in the handbook, and nothing is gained by being small', () => {
    // SOURCE book (Shigley, ex. 6-4, from memory: 32 mm turning 0.856, standing still d_e 11.84: 0.952)
    expect(sizeFactor(32)).toBeCloseTo(0.856, 3)
    expect(sizeFactor(0.37 * 32)).toBeCloseTo(0.952, 3)
    expect(sizeFactor(3)).toBe(1)
  })

  it('adds up for a ground pin', () => {
    const line = lifeLine(steel, { how: 'bent', finish: 'ground', diameter_mm: 3 })
    // SOURCE hand (90 ksi = 620.5 MPa; 0.8583 × 1 × 0.814 × 620.5 = 433.6; 0.75 × 1310.0 = 982.5)
    expect(line).toMatchObject({ short_MPa: expect.closeTo(982.5, 0), long_MPa: expect.closeTo(433.6, 0), long_cycles: 1e7 })
  })

  it('is undecided where the material does not say', () => {
    const { fatigue_MPa: _, ...silent } = steel
    expect(lifeLine(silent, { how: 'pulled', finish: 'machined' })).toEqual({
      missing: 'material 17-4PH H900 states no fatigue strength',
    })
    const { ultimate_MPa: __, ...weak } = steel
    expect(lifeLine(weak, { how: 'pulled', finish: 'machined' })).toEqual({
      missing: 'material 17-4PH H900 states no ultimate strength',
    })
  })
})

it('has fatigue strengths below what nature allows', () => {
  // SOURCE property (no more than half of the ultimate strength of steel, 0.57 of titanium, less of aluminium; cycles with every strength)
  for (const { fatigue_MPa, fatigueCycles_count, ultimate_MPa = 0 } of tableMaterials.values()) {
    expect(fatigue_MPa === undefined).toBe(fatigueCycles_count === undefined)
    expect((fatigue_MPa ?? 0) / Math.max(1, ultimate_MPa)).toBeLessThan(0.58)
  }
})
