import { describe, expect, it } from 'vitest'
import type { Requirement } from '../design/design.ts'
import type { Figure } from './evaluation.ts'
import { findingsOf } from './findings.ts'

function figure(more: Partial<Figure>): Figure {
  return { id: 'f', title: 'f', unit: 'N', ...more }
}

function requirement(bound: Requirement['bound']): Requirement {
  return { id: 'r', figure: 'f', bound, reason: 'because', source: 'sketch' }
}

const atLeast = requirement({ kind: 'atLeast', value: 5, unit: 'N', typed: '5 N' })
const atMost = requirement({ kind: 'atMost', value: 5, unit: 'N', typed: '5 N' })
const isTrue = requirement({ kind: 'is', value: true })

const found = (asked: Requirement, figures: readonly Figure[], doubts = new Map<string, string>()) =>
  findingsOf([asked], figures, doubts)[0]

describe('a finding', () => {
  it('is met on the bound and beyond it, short just inside', () => {
    // SOURCE hand (5 − 5 = 0, 4.999 − 5 = −0.001)
    expect(found(atLeast, [figure({ value: 5 })])).toMatchObject({ verdict: 'met', margin: 0 })
    expect(found(atLeast, [figure({ value: 4.999 })]).verdict).toBe('short')
    expect(found(atLeast, [figure({ value: 4.999 })]).margin).toBeCloseTo(-0.001, 12)
    expect(found(atMost, [figure({ value: 5 })])).toMatchObject({ verdict: 'met', margin: 0 })
    expect(found(atMost, [figure({ value: 5.001 })]).verdict).toBe('short')
  })

  it('of yes or no has no margin', () => {
    expect(found(isTrue, [figure({ value: true, unit: 'yes or no' })])).not.toHaveProperty('margin')
    expect(found(isTrue, [figure({ value: true, unit: 'yes or no' })]).verdict).toBe('met')
    expect(found(isTrue, [figure({ value: false, unit: 'yes or no' })]).verdict).toBe('short')
  })

  it('is undecided without a value, and says why', () => {
    for (const asked of [atLeast, atMost, isTrue]) {
      expect(found(asked, [figure({ why: 'no equilibrium' })])).toMatchObject({ verdict: 'undecided', why: 'no equilibrium' })
    }
  })

  it('is undecided where the figure was never worked out, and says so', () => {
    const finding = found(atLeast, [])
    expect(finding.verdict).toBe('undecided')
    expect(finding.why).toContain('could not be worked out')
    expect(finding).not.toHaveProperty('figure')
  })

  it('is decided by a figure that lies above any bound, or below any', () => {
    const above = figure({ why: 'it jams', beyond: 'above any' })
    const below = figure({ why: 'it never jams', beyond: 'below any' })
    expect(found(atLeast, [above]).verdict).toBe('met')
    expect(found(atMost, [above]).verdict).toBe('short')
    expect(found(atLeast, [below]).verdict).toBe('short')
    expect(found(atMost, [below]).verdict).toBe('met')
    expect(found(isTrue, [above]).verdict).toBe('undecided')
    expect(found(atMost, [above]).why).toBe('it jams')
  })

  it('is short where its figure is known to be no more than too little, and open above that', () => {
    const upTo = (noMoreThan: number) => figure({ why: 'no material is stated', noMoreThan })
    expect(found(atLeast, [upTo(4.9)]).verdict).toBe('short')
    expect(found(atLeast, [upTo(5.1)])).toMatchObject({ verdict: 'undecided', why: 'no material is stated' })
    expect(found(atMost, [upTo(5)]).verdict).toBe('met')
    expect(found(atMost, [upTo(5.1)]).verdict).toBe('undecided')
  })

  it('is undecided in doubt, whatever the value', () => {
    const doubts = new Map([['f', 'state its stiffness']])
    for (const value of [1, 9]) {
      expect(found(atLeast, [figure({ value })], doubts)).toMatchObject({ verdict: 'undecided', why: 'state its stiffness' })
    }
    expect(found(atLeast, [figure({ value: 9 })], new Map([['other', 'x']])).verdict).toBe('met')
  })

  it('of a number against words is undecided', () => {
    expect(found(atLeast, [figure({ value: 'stop', unit: 'words' })]).verdict).toBe('undecided')
  })

  it('stands once for each requirement, in their order', () => {
    const many = [atMost, atLeast, isTrue].map((one, index) => ({ ...one, id: `r${index}` }))
    expect(findingsOf(many, [figure({ value: 5 })], new Map()).map(({ requirement: { id } }) => id)).toEqual(['r0', 'r1', 'r2'])
  })
})
