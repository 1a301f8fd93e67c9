import { describe, expect, it } from 'vitest'
import { type PinPlate, pinBeam } from './pin-beam.ts'

const plate = (from_mm: number, to_mm: number, x_N: number, fixed = false): PinPlate => ({ from_mm, to_mm, x_N, y_N: 0, fixed })

/** A fork of two plates about an eye, with a gap on both sides. */
function fork({ outer, gap, inner, force }: { outer: number; gap: number; inner: number; force: number }): PinPlate[] {
  const eye = outer + gap
  const second = eye + inner + gap
  return [plate(0, outer, -force / 2, true), plate(eye, eye + inner, force), plate(second, second + outer, -force / 2, true)]
}

describe('a pin in a fork', () => {
  it('bends by half of the force on the arm between the middles of the pressures', () => {
    // SOURCE hand (M = F/2 (outer/2 + gap + inner/4) = 50 (2 + 0.5 + 1.5) = 200; V = F/2 = 50)
    const beam = pinBeam(fork({ outer: 4, gap: 0.5, inner: 6, force: 100 }))
    expect(beam?.moment_Nmm).toBeCloseTo(200, 9)
    expect(beam?.shear_N).toBeCloseTo(50, 9)
  })

  it('still bends when the gap closes and the plates are thin: by nothing then', () => {
    // SOURCE hand (all arms go to zero: 50 (0.0005 + 0 + 0.00025) = 0.0375)
    expect(pinBeam(fork({ outer: 0.001, gap: 0, inner: 0.001, force: 100 }))?.moment_Nmm).toBeCloseTo(0.0375, 9)
  })

  it.each([
    { outer: 3, gap: 0.2, inner: 5, force: 700 },
    { outer: 1, gap: 2, inner: 9, force: -40 },
    { outer: 6, gap: 0, inner: 2, force: 12 },
  ])('bends as a beam summed up in small pieces does: %o', (sizes) => {
    const beam = pinBeam(fork(sizes))
    const summed = summedUp(fork(sizes))
    // SOURCE other-method (rectangle sums over 200,000 pieces)
    expect(beam?.moment_Nmm).toBeCloseTo(summed.moment, 1)
    expect(beam?.shear_N).toBeCloseTo(summed.shear, 1)
  })
})

describe('a pin beside its plate', () => {
  const single = [plate(0, 6, -100, true), plate(6, 10, 100)]

  it('gives its couple to the part that it is fixed in', () => {
    // SOURCE hand (at the face between the two the plate's force of 100 stands 2 away: M = 200)
    const beam = pinBeam(single)
    const summed = summedUp(single)
    expect(cutAt(single, 6).moment).toBeCloseTo(200, 1)
    // SOURCE other-method (rectangle sums)
    expect(beam?.moment_Nmm).toBeCloseTo(summed.moment, 0)
    expect(beam?.shear_N).toBeCloseTo(summed.shear, 0)
  })

  it('has no answer where nothing can give the couple', () => {
    expect(pinBeam(single.map((one) => ({ ...one, fixed: false })))).toBeUndefined()
  })
})

describe('a pin through three parts', () => {
  it('adds forces in different directions as vectors', () => {
    const plates: PinPlate[] = [
      { from_mm: 0, to_mm: 2, x_N: 30, y_N: 0, fixed: false },
      { from_mm: 2, to_mm: 6, x_N: -30, y_N: -40, fixed: true },
      { from_mm: 6, to_mm: 8, x_N: 0, y_N: 40, fixed: false },
    ]
    const beam = pinBeam(plates)
    // SOURCE property (no shear above the largest force, none below the largest single one)
    expect(beam?.shear_N).toBeGreaterThanOrEqual(40)
    expect(beam?.shear_N).toBeLessThanOrEqual(50)
  })
})

/** The same beam by rectangle sums. */
function summedUp(plates: readonly PinPlate[]): { shear: number; moment: number } {
  let shear = 0
  let moment = 0
  for (let step = 0; step <= 400; step++) {
    const here = cutAt(plates, (step * 24) / 400)
    shear = Math.max(shear, Math.abs(here.shear))
    moment = Math.max(moment, Math.abs(here.moment))
  }
  return { shear, moment }
}

function cutAt(plates: readonly PinPlate[], z: number): { shear: number; moment: number } {
  const fixed = plates.filter((one) => one.fixed)
  const couple = plates.reduce((sum, one) => sum + (one.x_N * (one.from_mm + one.to_mm)) / 2, 0)
  const length = fixed.reduce((sum, one) => sum + one.to_mm - one.from_mm, 0)
  const centre = fixed.reduce((sum, one) => sum + (one.to_mm ** 2 - one.from_mm ** 2) / 2, 0) / length
  const pieces = 4000
  let second = 0
  for (const one of fixed) {
    const piece = (one.to_mm - one.from_mm) / pieces
    for (let index = 0; index < pieces; index++) second += (one.from_mm + (index + 0.5) * piece - centre) ** 2 * piece
  }
  let shear = 0
  let moment = 0
  for (const one of plates) {
    const piece = (one.to_mm - one.from_mm) / pieces
    for (let index = 0; index < pieces; index++) {
      const at = one.from_mm + (index + 0.5) * piece
      if (at > z) break
      const pressure = one.x_N / (one.to_mm - one.from_mm) - (one.fixed ? (couple / second) * (at - centre) : 0)
      shear += pressure * piece
      moment += pressure * piece * (z - at)
    }
  }
  return { shear, moment }
}
