import { describe, expect, it } from 'vitest'
import { stressArea, strippingAreas, torqueCoefficient } from './screw.ts'

const IN = 25.4

describe('a screw', () => {
  it('takes the torque of a textbook for its preload', () => {
    const thread = { diameter_mm: 0.75 * IN, pitch_mm: IN / 16, pitchDiameter_mm: 0.7094 * IN }
    // SOURCE book (Shigley, ex. 8-3, from memory: K about 0.189, 3551 lbf·in for 25 kip)
    expect(torqueCoefficient(thread, { thread: 0.15, head: 0.15 })).toBeCloseTo(0.18939, 4)
  })

  it.each([
    // SOURCE standard (ISO 898-1, table of stress areas, from memory; M16 worked in Jindal, Machine Design, ex. 9-1, p. 266)
    { diameter_mm: 3, pitch_mm: 0.5, area: 5.03 },
    { diameter_mm: 4, pitch_mm: 0.7, area: 8.78 },
    { diameter_mm: 5, pitch_mm: 0.8, area: 14.2 },
    { diameter_mm: 6, pitch_mm: 1, area: 20.1 },
    { diameter_mm: 8, pitch_mm: 1.25, area: 36.6 },
    { diameter_mm: 16, pitch_mm: 2, area: 156.7 },
    { diameter_mm: 16, pitch_mm: 1.5, area: 167.2 },
  ])('M$diameter_mm × $pitch_mm has the stress area of the standard', ({ area, ...thread }) => {
    expect(Math.abs(stressArea(thread) / area - 1)).toBeLessThan(0.002)
  })

  it('strips over the areas of a handbook', () => {
    // SOURCE book (FED-STD-H28/2 formulae and a handbook's table for 1/4-20 UNC, from memory: 0.539 and 0.368 in² per inch)
    const areas = strippingAreas({
      pitch_mm: IN / 20,
      minorMost_mm: 0.207 * IN,
      internalPitchMost_mm: 0.2223 * IN,
      majorLeast_mm: 0.2408 * IN,
      externalPitchLeast_mm: 0.2127 * IN,
    })
    expect(areas.internal_mm / IN).toBeCloseTo(0.53985, 4)
    expect(areas.external_mm / IN).toBeCloseTo(0.36796, 4)
  })
})
