import { describe, expect, it } from 'vitest'
import { assembled, driven } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { fourBar } from '../sketches/linkages.ts'
import { fingerJoints, flexion } from './flexion.ts'

describe('the flexion of a joint', () => {
  const put = assembled(finger())

  it('is counted at the pins between neighbouring phalanges', () => {
    const names = fingerJoints(put.mechanism).map(({ pin }) => put.mechanism.design.pins[pin].id)
    expect(names).toEqual(['mcp', 'pip', 'dip'])
  })

  it('is what the example finger was found with at 75°', () => {
    const posture = driven(put, 75 * DEG)
    const [mcp, pip, dip] = fingerJoints(put.mechanism).map((joint) => flexion(posture, joint) / DEG)
    expect(mcp).toBeCloseTo(75, 10)
    // SOURCE other-method (the geometry's own search, one decimal): PIP 88.2°, DIP 62.6°
    expect(pip).toBeCloseTo(88.2, 1)
    expect(dip).toBeCloseTo(62.6, 1)
  })

  it('skips a phalanx that a design does not have', () => {
    const { parts, ...rest } = fourBar({ ground: 100, crank: 40, coupler: 120, rocker: 80, drawn_deg: [40, 15, 65] })
    const roles = ['mount', 'proximal', 'distal', 'link'] as const
    const { mechanism } = assembled({ ...rest, parts: parts.map((part, index) => ({ ...part, role: roles[index] })) })
    expect(fingerJoints(mechanism)).toEqual([
      { pin: 0, upper: 0, lower: 1 },
      { pin: 1, upper: 1, lower: 2 },
    ])
  })

  it('is not counted where no part has a role', () => {
    const { mechanism } = assembled(fourBar({ ground: 100, crank: 40, coupler: 120, rocker: 80, drawn_deg: [40, 15, 65] }))
    expect(fingerJoints(mechanism)).toEqual([])
  })
})
