import { describe, expect, it } from 'vitest'
import { usualDiameters_mm, wireModuli, wireStrength, wires } from './wire-rows.ts'

const row = (name: string) => wires.find((wire) => wire.name === name) ?? wires[0]

describe('the table of wires', () => {
  it.each([
    // SOURCE book (Shigley, table 10-4, from memory; the first three rows read in worked examples of Jindal, Machine Design)
    { name: 'music wire', d: [0.5, 1, 2], at: [2445, 2211, 2000] },
    { name: 'oil-tempered wire', d: [0.5, 1, 2], at: [2112, 1855, 1629] },
    { name: 'hard-drawn wire', d: [1, 2], at: [1783, 1563] },
    { name: 'chrome-vanadium wire', d: [1, 2], at: [2005, 1785] },
    { name: 'chrome-silicon wire', d: [2], at: [1832] },
    { name: '302 stainless wire', d: [0.5, 1, 2], at: [2066, 1867, 1687] },
  ])('gives the strength of $name', ({ name, d, at }) => {
    expect(d.map((diameter) => Math.round(wireStrength(row(name), diameter) ?? 0))).toEqual(at)
  })

  it('does not give it outside of the row', () => {
    expect(wireStrength(row('music wire'), 7)).toBeUndefined()
    expect(wireStrength(row('hard-drawn wire'), 0.5)).toBeUndefined()
  })

  it('gives the moduli of the diameter', () => {
    // SOURCE book (Shigley, table 10-5, from memory: music wire 203.4, 200, 196.5, 193 GPa)
    expect([0.5, 1, 2, 4].map((d) => wireModuli(row('music wire'), d).modulus_MPa)).toEqual([203_400, 200_000, 196_500, 193_000])
  })

  it('is plausible: no share above 1, stiffness as the elastic constants allow, diameters that rise', () => {
    // SOURCE property (0 ≤ ν < 0.5, so that G lies between E/3 and E/2; the more cycles, the less stress)
    for (const { bendingYield, shear, hook, moduli, cycledBending = [], cycledShear = [] } of wires) {
      for (const share of [bendingYield, shear.asWound, shear.setRemoved, hook.shear, hook.bending]) {
        expect(share).toBeGreaterThan(0)
        expect(share).toBeLessThan(1)
      }
      for (const { modulus_MPa, shearModulus_MPa } of moduli) {
        expect(shearModulus_MPa / modulus_MPa).toBeGreaterThan(1 / 3)
        expect(shearModulus_MPa / modulus_MPa).toBeLessThan(1 / 2)
      }
      for (const rows of [cycledBending, cycledShear]) {
        const shares = rows.map(({ plain }) => plain)
        expect(shares).toEqual([...shares].sort((a, b) => b - a))
      }
    }
    expect(usualDiameters_mm).toEqual([...usualDiameters_mm].sort((a, b) => a - b))
  })
})
