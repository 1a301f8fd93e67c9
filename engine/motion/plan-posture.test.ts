import { describe, expect, it } from 'vitest'
import { assembled, driven } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { fingerByHand } from '../sketches/finger-by-hand.ts'
import { blockCrank, fourBar, pinCrank, slottedLever } from '../sketches/linkages.ts'
import { makePlan } from './plan.ts'
import { planPosture } from './plan-posture.ts'

const planned = (design: ReturnType<typeof finger>) => {
  const put = assembled(design)
  return { ...put, plan: makePlan(put.mechanism) }
}

describe('a posture by its plan', () => {
  it('is the one for a value of the drive, for a finger that its MCP drives', () => {
    const { plan, posture, mechanism } = planned(finger())
    for (const mcp of [-20, 0, 31, 60, 77]) {
      const found = planPosture(plan, posture, mcp * DEG) as Float64Array
      const [dipX, dipY] = fingerByHand(mcp * DEG)!.dip
      // SOURCE other-method (meeting circles pin by pin, and Newton)
      expect(found[9]).toBeCloseTo(dipX, 10)
      expect(found[10]).toBeCloseTo(dipY, 10)
      const settled = driven({ mechanism, posture: planPosture(plan, posture, mcp * DEG - 0.01) as Float64Array }, mcp * DEG)
      for (const [index, value] of settled.entries()) expect(Math.abs(value - found[index])).toBeLessThan(1e-9)
    }
  })

  it('names the pins of the finger that cannot be spanned, and by how much', () => {
    const { plan, posture, mechanism } = planned(finger())
    const gap = planPosture(plan, posture, 85 * DEG)
    if (gap instanceof Float64Array || gap.kind !== 'links') throw new Error('should not close')
    const ids = gap.pins.map((pin) => mechanism.design.pins[pin].id)
    expect(ids).toEqual(['topA', 'dip'])
    expect(gap.parts.map((part) => mechanism.design.parts[part].id).sort()).toEqual(['distal', 'link2'])
    // SOURCE hand: link 2 of 24.507 mm and the arm √(2.27² + 5.41²) = 5.867 mm reach 30.374 mm, at least 18.640 mm
    expect(gap.most_mm).toBeCloseTo(30.374, 3)
    expect(gap.least_mm).toBeCloseTo(18.64, 3)
    expect(gap.distance_mm).toBeGreaterThan(gap.most_mm)
  })

  it('says that two circles lie apart or one in the other', () => {
    const far = planned(fourBar({ ground: 100, crank: 40, coupler: 50, rocker: 55, drawn_deg: [20, 30, 100] }))
    // SOURCE hand: with the crank at 180° the pins are 140 mm apart, 50 + 55 reach 105 mm and at least 5 mm
    expect(planPosture(far.plan, far.posture, Math.PI)).toEqual({
      kind: 'links',
      pins: [1, 3],
      parts: [2, 3],
      distance_mm: 140,
      least_mm: 5,
      most_mm: 105,
    })
    const near = planned(fourBar({ ground: 100, crank: 40, coupler: 150, rocker: 80, drawn_deg: [90, 0, 60] }))
    // SOURCE hand: with the crank at 0° the pins are 60 mm apart, less than 150 − 80
    expect(planPosture(near.plan, near.posture, 0)).toMatchObject({ distance_mm: 60, least_mm: 70 })
  })

  it('says how far the line of a slot lies from the pivot', () => {
    for (const make of [pinCrank, blockCrank]) {
      const { plan, posture } = planned(make({ crank: 40, rod: 30, offset: -25, drawn_deg: [-30, -10] }))
      const gap = planPosture(plan, posture, -90 * DEG)
      // SOURCE hand: the crank pin stands at y = 40, the slot at −25; the rod reaches 30
      expect(gap).toMatchObject({ kind: 'slot', least_mm: 0, most_mm: 30 })
      expect((gap as { distance_mm: number }).distance_mm).toBeCloseTo(65, 10)
    }
  })

  it('lets a slotted lever follow its crank right round', () => {
    const { plan, posture } = planned(slottedLever({ centres: 300, crank: 120, lever: 500 }))
    for (let turn = 0; turn < 360; turn += 15) {
      const found = planPosture(plan, posture, -turn * DEG) as Float64Array
      // SOURCE hand: the lever points at the crank pin (120 cos, 300 + 120 sin)
      const bearing = Math.atan2(300 + 120 * Math.sin(turn * DEG), 120 * Math.cos(turn * DEG))
      expect(Math.abs(Math.sin((found[8] - bearing) / 2))).toBeLessThan(1e-12)
    }
  })

  it('has no lead where nothing turns on the mount or the count is not one freedom', () => {
    const design = finger()
    const loose = { ...design, parts: design.parts.slice(0, 5), pins: design.pins.slice(0, 5) }
    const { plan, posture } = planned(loose)
    expect(plan.lead).toBeUndefined()
    expect(planPosture(plan, posture, 0)).toEqual({ kind: 'unsettled', parts: [1, 2, 3, 4] })
  })
})
