import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { evaluate, workingsOf } from '../evaluate.ts'
import { heron } from '../strength/test-support/heron-bench.ts'
import { forcesAt } from './at-posture.ts'
import type { Evaluation, Figure } from './evaluation.ts'

const evaluated = evaluate(heron)
const figure = ({ figures }: Evaluation, id: string): Figure => {
  const found = figures.find((one) => one.id === id)
  if (!found) throw new Error(`there is no figure ${id}`)
  return found
}
const changed = (change: Partial<Design>): Evaluation => evaluate({ ...heron, ...change })

describe('what gives first', () => {
  it('bends the top pins under the bag, by the force that is drawn there', () => {
    const { pins } = forcesAt(evaluated, 1, { kind: 'hold', loadCase: 'carry' })
    const drawn = pins.find(({ pin }) => heron.pins[pin].id === 'topNear')?.force_N ?? { x: Number.NaN, y: Number.NaN }
    // SOURCE hand (cheeks 4.5 wide, 4.5 away from a link 2 wide: M = F/2 (2.25 + 4.5 + 0.5); σ = 32 M / (π 3³); 190 ksi = 1310.0 MPa over 2 σ, less 1)
    const stress = (32 * 3.625 * Math.hypot(drawn.x, drawn.y)) / (Math.PI * 27)
    expect(figure(evaluated, 'strength.pin.topNear.bending').value).toBeCloseTo(1310.0 / (2 * stress) - 1, 3)
    expect(evaluated.strength?.ranked.find(({ figure: id }) => id.endsWith('.bending'))).toMatchObject({
      loadCase: 'carry',
      doing: 'held closed',
      says: 'breaks',
      at: { arc_ratio: 1 },
    })
  })

  it('is one list over all checks, the least margin first', () => {
    const { ranked = [], open } = evaluated.strength ?? {}
    const margins = ranked.map(({ margin }) => margin)
    expect(open).toEqual([])
    expect(margins).toEqual([...margins].sort((one, other) => one - other))
    expect(figure(evaluated, 'strength.least').value).toBe(margins[0])
    expect(figure(evaluated, 'strength.givesFirst').value).toBe(ranked[0].words)
    for (const { figure: id, margin } of ranked) expect(figure(evaluated, id).value).toBe(margin)
  })

  it('says of every allowable whose it is and where that is written', () => {
    const workings = workingsOf(evaluated.design)
    for (const { id, value } of evaluated.figures) {
      // What is a force, a way or a turn of its own is no property of a material.
      if (!/^strength\.(pin|part|link|stop|spring|screw)\./.test(id) || value === undefined || /room$|separation$/.test(id))
        continue
      const material = workings.get(id)?.inputs.find(({ name }) => name === 'material')
      expect(material?.from?.length ?? 0, id).toBeGreaterThan(10)
    }
  })

  it('has no less margin anywhere under a load case taken away', () => {
    // SOURCE property (the least over fewer states)
    const gone = heron.loadCases.findIndex(({ id }) => id === 'carry')
    const shares = heron.use?.shares?.filter(({ loadCase }) => loadCase !== gone) ?? []
    const without = changed({
      loadCases: heron.loadCases.filter((_, index) => index !== gone),
      use: { ...heron.use!, shares: shares.map((one) => ({ ...one, loadCase: one.loadCase - (one.loadCase > gone ? 1 : 0) })) },
    })
    for (const { figure: id, margin } of without.strength?.ranked ?? []) {
      expect(margin).toBeGreaterThanOrEqual(Number(figure(evaluated, id).value) - 1e-9)
    }
  })

  it('goes by the factors that the design states', () => {
    // SOURCE property (margin + 1 goes as one over the factor)
    const asked = changed({ factors: { yield: 3, ultimate: 4, reason: 'invented' } })
    const ofForces = asked.strength?.ranked.filter(({ figure: id }) => /^strength\.(pin|link|stop)\./.test(id)) ?? []
    expect(ofForces.length).toBeGreaterThan(30)
    for (const { figure: id, margin, factor } of ofForces) {
      expect([3, 4]).toContain(factor)
      expect((margin + 1) / (Number(figure(evaluated, id).value) + 1)).toBeCloseTo(0.5, 9)
    }
  })

  it('falls as the bag grows heavier', () => {
    // SOURCE property (springs and weight stay, so that it falls by less than the load rises)
    const heavier = heron.loadCases.map((one) =>
      one.id === 'carry' ? { ...one, forces: one.forces.map((force) => ({ ...force, force_N: 1.1 * force.force_N })) } : one,
    )
    const [lighter, more] = [evaluated, changed({ loadCases: heavier })].map((one) => Number(figure(one, 'strength.least').value))
    expect(more).toBeLessThan(lighter)
    expect((more + 1) / (lighter + 1)).toBeGreaterThan(1 / 1.1 - 1e-3)
  })
})

describe('strength that is not known', () => {
  const without = (pin: string): Design['pins'] =>
    heron.pins.map((one) => {
      const { material: _, ...rest } = one
      return one.id === pin ? rest : one
    })

  it('names what is missing, and decides all the same where another check falls short by itself', () => {
    const { figures, strength } = changed({ pins: without('mcp') })
    const bending = figures.find(({ id }) => id === 'strength.pin.mcp.bending')
    expect(bending).toMatchObject({ why: 'pins.mcp states no material' })
    expect(strength?.open.map(({ figure: id }) => id)).toEqual(
      ['shear', 'bending', 'fatigue', 'sideLoad'].map((check) => `strength.pin.mcp.${check}`),
    )
    expect(figures.find(({ id }) => id === 'strength.least')?.value).toBeLessThan(0)
  })

  it('leaves the least margin open where the others hold', () => {
    const grips = heron.loadCases.filter(({ id }) => id === 'middleGrip')
    const open = changed({ pins: without('mcp'), loadCases: grips })
    const least = figure(open, 'strength.least')
    expect(least.value).toBeUndefined()
    expect(least.why).toContain('pin mcp in shear: pins.mcp states no material')
    expect(least.noMoreThan).toBe(open.strength?.ranked[0].margin)
  })

  it('is not called enough without any load', () => {
    const idle = changed({ loadCases: [] })
    expect(figure(idle, 'strength.least')).toMatchObject({ why: 'no load case acts in the plane: state one' })
    expect(figure(idle, 'strength.pin.pip.shear')).not.toHaveProperty('beyond')
  })
})
