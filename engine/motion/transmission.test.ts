import { describe, expect, it } from 'vitest'
import { assembled } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { fourBar } from '../sketches/linkages.ts'
import { makePlan } from './plan.ts'
import { transmissionAngle, transmissionsOf } from './transmission.ts'

const ids = (
  design: ReturnType<typeof finger>,
  { link, moved, pin, near, pivot }: ReturnType<typeof transmissionsOf>[number],
) => [design.parts[link].id, design.parts[moved].id, ...[pin, near, pivot].map((index) => design.pins[index].id)]

describe('the transmission angle', () => {
  it('is taken where each link of the finger meets the phalanx that it moves', () => {
    const { mechanism } = assembled(finger())
    const found = transmissionsOf(makePlan(mechanism)).map((transmission) => ids(mechanism.design, transmission))
    expect(found).toEqual([
      ['link1', 'middle', 'baseB', 'baseA', 'pip'],
      ['link2', 'distal', 'topB', 'topA', 'dip'],
    ])
  })

  it('has its extremes where crank and ground lie in line', () => {
    for (const [ground, crank, coupler, rocker, least_deg, most_deg] of [
      // SOURCE book (standard formula cos μ = (b² + c² − (d ∓ a)²) / 2bc, as in Norton), own numbers: 26.384 and 86.417°; 25.209
      // and 58.412°.
      [100, 40, 120, 80, 26.384, 86.417],
      [6, 2, 7, 9, 25.209, 58.412],
    ]) {
      const angleAt = (crank_deg: number, drawn_deg: [number, number, number]) => {
        const { mechanism, posture } = assembled(fourBar({ ground, crank, coupler, rocker, drawn_deg }))
        expect(posture[5]).toBeCloseTo(crank_deg * DEG, 12)
        const [transmission] = transmissionsOf(makePlan(mechanism))
        expect(ids(mechanism.design, transmission)).toEqual(['coupler', 'rocker', 'b', 'a', 'g'])
        return transmissionAngle(mechanism, posture, transmission) / DEG
      }
      expect(angleAt(0, [0, 60, 90])).toBeCloseTo(least_deg, 3)
      expect(angleAt(180, [180, 25, 50])).toBeCloseTo(most_deg, 3)
    }
  })

  it('is folded to at most 90°', () => {
    const { mechanism, posture } = assembled(
      fourBar({ ground: 100, crank: 40, coupler: 60, rocker: 80, drawn_deg: [150, 20, 120] }),
    )
    const [transmission] = transmissionsOf(makePlan(mechanism))
    // SOURCE hand: |a − g|² = 134.64² + 20² = 18528.2; cos μ = (60² + 80² − 18528.2) / (2·60·80) = −0.888354, μ = 152.667°, folded 27.333°
    expect(transmissionAngle(mechanism, posture, transmission) / DEG).toBeCloseTo(27.333, 3)
  })
})
