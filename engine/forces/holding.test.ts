import { describe, expect, it } from 'vitest'
import type { Design, LoadCase } from '../design/design.ts'
import { tangentAt } from '../motion/path.ts'
import { travelPath } from '../motion/travel-path.ts'
import { atMargin, framesOf, scene } from '../sketches/force-scene.ts'
import { PIN_KINDS, randomForces } from '../sketches/random-forces.ts'
import { DISTAL, MIDDLE, padCase, returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { toggleOf } from '../sketches/toggle-of.ts'
import { type Holding, holding } from './holding.ts'
import { addLoadCase } from './loads.ts'
import { closedFinger, holdingPort } from './states.ts'

const DEG = Math.PI / 180

const total = ({ shares }: Holding): number => Object.values(shares).reduce((sum, share) => sum + share, 0)

/** Who carries a case at the closed posture, clearances left out. */
function closedHolding(design: Design, loadCase: LoadCase): Holding {
  const here = scene(design)
  const path = travelPath(here.paths, here.drawn)!
  const { stop, node } = closedFinger(path, here.bench)
  const { opening } = framesOf(here, node)
  const port = holdingPort(loadCase)
  return holding(here.bench, opening, { addLoads: (row) => addLoadCase(row, loadCase), port, ...(stop && { stop }) })!
}

describe('who carries a load at the closed posture', () => {
  it('is the stop, by itself, when the back of the distal phalanx is pushed', () => {
    const held = closedHolding(shelfFinger({ friction: 0.1 }), padCase('push', { part: DISTAL, pad: 1, force_N: -30 }))
    expect(held.byItself).toBe(true)
    expect(held.carriedBy).toBe('stop')
    expect(held.shares.stop).toBeCloseTo(1, 12)
  })

  it('is the wearer when the middle pad is pushed, and the toggle carries nothing at all', () => {
    const design = shelfFinger({ friction: 0.1 })
    const held = closedHolding(design, padCase('grip', { part: MIDDLE, pad: 0, force_N: 25 }))
    expect(held.byItself).toBe(false)
    expect(held.carriedBy).toBe('wearer')
    // SOURCE property: the distal phalanx and its link are loaded by nothing, so every force in the toggle is nothing
    for (const joint of [2, 5, 6]) expect(held.balance.magnitudes[joint]).toBeLessThan(1e-10)
    expect(held.shares.toggle).toBeLessThan(1e-10)
  })

  it('is shared by friction with the wearer: the more friction, the less for the wearer', () => {
    const wearer = [0, 0.05, 0.1, 0.2].map((friction) => {
      const held = closedHolding(shelfFinger({ friction }), padCase('grip', { part: MIDDLE, pad: 0, force_N: 25 }))
      return held.shares.wearer
    })
    // SOURCE property: without friction the wearer carries all
    expect(wearer[0]).toBe(1)
    for (let step = 1; step < wearer.length; step++) expect(wearer[step]).toBeLessThan(wearer[step - 1])
  })

  it('is by itself just where nothing is lacking in drag at the pins', () => {
    const push = closedHolding(shelfFinger({ friction: 0.1 }), padCase('push', { part: DISTAL, pad: 1, force_N: -30 }))
    const lacks = [0, 0.05, 0.1, 0.2].map((friction) => {
      const { byItself, reserve_Nmm = Number.NaN } = closedHolding(
        shelfFinger({ friction }),
        padCase('grip', { part: MIDDLE, pad: 0, force_N: 25 }),
      )
      return { byItself, reserve_Nmm }
    })
    expect(push.reserve_Nmm).toBeGreaterThan(0)
    for (const [index, { byItself, reserve_Nmm }] of lacks.entries()) {
      expect(reserve_Nmm > 0).toBe(byItself)
      // SOURCE property: friction holds, so that less is lacking with more of it
      if (index > 0) expect(reserve_Nmm).toBeGreaterThan(lacks[index - 1].reserve_Nmm)
    }
  })

  it('is the keeper when there is one, and not the wearer', () => {
    const keeper = { port: { kind: 'couple', part: DISTAL, against: 0 } as const, allowed: 1000 }
    const held = closedHolding(shelfFinger({ friction: 0.05 }), padCase('carry', { part: MIDDLE, pad: 0, force_N: 60 }, keeper))
    expect(held.shares.keeper).toBeGreaterThan(0.2)
    expect(held.shares.wearer).toBe(0)
    // SOURCE property: held over the distal phalanx the load goes through the toggle, so the toggle's pins rub
    expect(held.shares.toggle).toBeGreaterThan(0)
  })

  it('is the wearer where what pushes closed meets no stop', () => {
    const { stops, ...rest } = shelfFinger({ friction: 0.05 })
    const travel = { open: 0, closed: 60 * DEG }
    const design: Design = { ...rest, stops: [], drive: { kind: 'turn', part: 1, against: 0, pin: 0, travel } }
    const held = closedHolding(design, padCase('push', { part: DISTAL, pad: 1, force_N: -30 }))
    expect(stops).toHaveLength(1)
    expect(held.carriedBy).toBe('wearer')
    expect(held.byItself).toBe(false)
    expect(held.reserve_Nmm).toBeUndefined()
  })

  it('counts a spring that opens as what has to be carried, and against the load that closes as a carrier', () => {
    const design = { ...shelfFinger({ friction: 0.05 }), springs: [returnSpring(400)] }
    const alone = closedHolding(design, padCase('nothing', { part: DISTAL, pad: 1, force_N: -1e-9 }))
    expect(alone.shares.spring).toBe(0)
    expect(total(alone)).toBeCloseTo(1, 12)
    const pushed = closedHolding(design, padCase('push', { part: DISTAL, pad: 1, force_N: -60 }))
    expect(pushed.shares.spring).toBeGreaterThan(0.01)
    expect(pushed.carriedBy).toBe('stop')
  })
})

describe('who carries a load that goes through a toggle', () => {
  const radii_mm = { a: 1.5, b: 1.5, c: 1.5, g: 1.5 }
  const sizes = { first_mm: 40, arm_mm: 12, radii_mm, friction: 0.12, margin_rad: 20 * DEG, rocker_mm: 50, lean_mm: 0 }
  const here = scene(toggleOf({ ...sizes, spring_Nmm: 0 }))
  const held = (margin_deg: number, push = -1000) => {
    const { opening } = framesOf(here, atMargin(here, margin_deg * DEG))
    const addLoads = (row: { out: Float64Array }): void => {
      row.out[8] += push / here.mechanism.scale_mm
    }
    return holding(here.bench, opening, { addLoads, port: { kind: 'drive' } })!
  }
  // SOURCE hand: jam and running jam asin(2 · 0.17872 / 12) + asin(2 · 0.17872 / 40) = 2.219°, ρ = 1.5 sin(atan 0.12) = 0.17872
  const jam_deg = 2.219

  it('is the friction of the toggle, by itself, within the running jam', () => {
    for (const margin_deg of [0.2, 1, jam_deg - 0.01]) {
      const { byItself, carriedBy, shares } = held(margin_deg)
      expect(byItself).toBe(true)
      expect(carriedBy).toBe('toggle')
      expect(shares.wearer).toBe(0)
      expect(shares.toggle + shares.friction).toBeCloseTo(1, 10)
    }
  })

  it('is the wearer as well just outside the running jam', () => {
    for (const margin_deg of [jam_deg + 0.01, 5, 12]) {
      const { byItself, shares } = held(margin_deg)
      expect(byItself).toBe(false)
      expect(shares.wearer).toBeGreaterThan(0)
    }
    expect(held(12).carriedBy).toBe('wearer')
  })

  it('does not hang on the size of the load', () => {
    // SOURCE property: shares are ratios
    for (const margin_deg of [1, 5]) {
      const one = held(margin_deg)
      const many = held(margin_deg, -5e4)
      expect(many.shares.toggle).toBeCloseTo(one.shares.toggle, 9)
    }
  })
})

describe('the shares of what is carried', () => {
  it('sum to one for random linkages and loads', () => {
    // SOURCE property: what is given is taken
    let looked = 0
    for (const kind of PIN_KINDS) {
      for (let seed = 1; seed <= 10; seed++) {
        const { scene: here, node, load } = randomForces(kind, seed)!
        const addLoads = (row: { out: Float64Array }): void => {
          for (let column = 0; column < load.length; column++) row.out[column] += load[column]
        }
        const { opening } = framesOf(here, node)
        const found = holding(here.bench, opening, { addLoads, port: { kind: 'drive' } })
        if (!found) continue
        expect(total(found)).toBeCloseTo(1, 9)
        for (const share of Object.values(found.shares)) expect(share).toBeGreaterThanOrEqual(0)
        looked++
      }
    }
    // SOURCE property: nearly all of the 70 were looked at
    expect(looked).toBeGreaterThan(60)
  })

  it('are all nothing where nothing pushes', () => {
    const { scene: here, node } = randomForces('four-bar', 1)!
    const tangent = tangentAt(here.paths, node.posture, node.tangent)!
    const { opening } = framesOf(here, { ...node, tangent })
    const found = holding(here.bench, opening, { addLoads: () => {}, port: { kind: 'drive' } })!
    expect(total(found)).toBe(0)
  })
})
