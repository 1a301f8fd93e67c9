import { describe, expect, it } from 'vitest'
import type { Part } from '../design/design.ts'
import { sideCouple } from './side-couple.ts'

const part = (across: readonly (readonly [number, number])[]): Part => ({
  id: 'part',
  name: 'part',
  role: 'other',
  outline: [],
  across: across.map(([from_mm, to_mm]) => ({ from_mm, to_mm })),
  holes: [],
  edges: [],
  pads: [],
})

describe('a hinge that holds a couple', () => {
  it('is a pair of forces on each of two thin cheeks', () => {
    const thin = 1e-5
    const cheeks = (at: number) =>
      part([
        [-at - thin, -at + thin],
        [at - thin, at + thin],
      ])
    const couple = sideCouple(cheeks(8), cheeks(3))
    // SOURCE hand (1 N·mm over 16 mm: 0.0625 N from the outer; over 6 mm: 0.16667 N from the inner, of which 0.16667 − 0.0625 = 0.10417 runs
    // between the inner cheeks; the moment at an inner cheek 0.0625 × 5 = 0.3125)
    expect(couple?.beam.shear_N).toBeCloseTo(0.10417, 4)
    expect(couple?.beam.moment_Nmm).toBeCloseTo(0.3125, 4)
  })

  it('presses one plate at its ends by six couples over its width squared', () => {
    const couple = sideCouple(
      part([[2, 6]]),
      part([
        [-9, -5],
        [11, 15],
      ]),
    )
    // SOURCE hand (q = C (b/2) / (b³/12) = 6 C / b²; b 4: 0.375 N/mm)
    expect(couple?.outer_N_mm).toBeCloseTo(0.375, 12)
  })

  it('is what sums of small rectangles make of it', () => {
    const [outer, inner] = [
      part([
        [-10, -5.5],
        [5.5, 10],
      ]),
      part([
        [-5.5, -1],
        [1, 5.5],
      ]),
    ]
    const couple = sideCouple(outer, inner)
    // SOURCE other-method (sums of 4000 rectangles; second moments of 555.75 and 110.25 mm³ by hand)
    let [shear, moment, shearMost, momentMost] = [0, 0, 0, 0]
    const step = 20 / 4000
    for (let index = 0; index < 4000; index++) {
      const z = -10 + (index + 0.5) * step
      const q = Math.abs(z) > 5.5 ? z / 555.75 : Math.abs(z) > 1 ? -z / 110.25 : 0
      moment += (shear + (q * step) / 2) * step
      shear += q * step
      shearMost = Math.max(shearMost, Math.abs(shear))
      momentMost = Math.max(momentMost, Math.abs(moment))
    }
    expect(shear).toBeCloseTo(0, 9)
    expect(moment).toBeCloseTo(0, 6)
    expect(couple?.beam.shear_N).toBeCloseTo(shearMost, 5)
    expect(couple?.beam.moment_Nmm).toBeCloseTo(momentMost, 4)
  })

  it('is not known where a part does not say where it lies', () => {
    expect(sideCouple(part([]), part([[0, 1]]))).toBeUndefined()
  })
})
