import { describe, expect, it } from 'vitest'
import { DEG, finger } from '../sketches/finger.ts'
import { fourBar } from '../sketches/linkages.ts'
import { assemble, drawnPosture } from './assemble.ts'
import { closureGap } from './closure.ts'
import { mechanismOf } from './mechanism.ts'
import { largestOf, makeBench } from './settle.ts'

describe('putting the parts together', () => {
  it('lays links without a drawn place between their pins', () => {
    const design = finger()
    const mechanism = mechanismOf(design)
    const gap = new Float64Array(mechanism.rows_count)
    closureGap(makeBench(mechanism), drawnPosture(design), undefined, gap)
    // SOURCE property: the example finger's links are as long as its drawn posture needs
    expect(largestOf(gap)).toBeLessThan(1e-12)
  })

  it('closes a rough drawing with the drive held where it is drawn', () => {
    const design = fourBar({ ground: 100, crank: 40, coupler: 120, rocker: 80, drawn_deg: [40, 10, 70] })
    const mechanism = mechanismOf(design)
    const { posture } = assemble(mechanism)
    const gap = new Float64Array(mechanism.rows_count)
    closureGap(makeBench(mechanism), posture!, undefined, gap)
    expect(largestOf(gap)).toBeLessThan(1e-10)
    expect(posture![5]).toBeCloseTo(40 * DEG, 12)
    // SOURCE book (Norton, Design of Machinery, Example 4-1), from memory; recomputed 57.325°
    expect(posture![11] / DEG).toBeCloseTo(57.325, 3)
  })

  it('says which pins cannot be spanned and by how much', () => {
    const design = fourBar({ ground: 100, crank: 40, coupler: 50, rocker: 40, drawn_deg: [180, 10, 150] })
    const { posture, problem } = assemble(mechanismOf(design))
    expect(posture).toBeUndefined()
    expect(problem!.code).toBe('cannot assemble')
    // SOURCE hand: with the crank at 180° the pins are 140 mm apart and the two links reach 90 mm: 50 mm too far
    expect(problem!.found).toContain('140')
    expect(problem!.found).toContain('90')
    expect(problem!.found).toContain('50')
  })

  it('does not touch the design', () => {
    const design = finger()
    const before = JSON.stringify(design)
    assemble(mechanismOf(design))
    expect(JSON.stringify(design)).toBe(before)
  })
})
