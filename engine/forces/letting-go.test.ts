import { describe, expect, it } from 'vitest'
import { DEG } from '../sketches/finger.ts'
import { atMargin, coupleOn, framesOf, type Scene, scene } from '../sketches/force-scene.ts'
import { toggleOf } from '../sketches/toggle-of.ts'
import { amplitudeIn, prepare } from './balance.ts'
import { effortToOpen } from './letting-go.ts'
import { reserveUnder } from './return-reserve.ts'

const SIZES = {
  first_mm: 40,
  arm_mm: 12,
  radii_mm: { a: 1.5, b: 1.5, c: 1.5, g: 1.5 },
  friction: 0.12,
  margin_rad: 20 * DEG,
  rocker_mm: 50,
  lean_mm: 0,
  spring_Nmm: 0,
}
const RETURN_NMM = 1000

/** Opening: the spring on the rocker draws C towards A; the hand lifts B by a couple on A-B. */
function asked(here: Scene, margin_deg: number) {
  const { opening } = framesOf(here, atMargin(here, margin_deg * DEG))
  const spring = coupleOn(here.mechanism, 3, -RETURN_NMM)
  return { opening, spring, lift: coupleOn(here.mechanism, 1, 1), more: coupleOn(here.mechanism, 3, -1) }
}

describe('the effort that opens a toggle', () => {
  const here = scene(toggleOf(SIZES))
  const { bench } = here

  it('is nothing outside the jam, where the spring opens it', () => {
    const { opening, spring, lift } = asked(here, 6)
    const found = effortToOpen(bench, opening, { port: lift, load: spring })
    expect(found).toMatchObject({ kind: 'effort', effort: 0 })
    // SOURCE property: what is left without any effort is the reserve under the load itself
    expect(found.reserve_Nmm).toBe(reserveUnder(bench, opening, spring))
    expect(found.reserve_Nmm).toBeGreaterThan(0)
  })

  it('is just what leaves no drag over: less does not open, more does, on both sides of dead centre', () => {
    // SOURCE property: the effort is the place where the reserve from the worst rest is zero
    for (const margin_deg of [1.5, 0.5, 0.001, -0.5, -3, -8]) {
      const { opening, spring, lift } = asked(here, margin_deg)
      const found = effortToOpen(bench, opening, { port: lift, load: spring })
      if (found.kind !== 'effort') throw new Error(found.kind)
      const reserve = (share: number) =>
        reserveUnder(
          bench,
          opening,
          spring.map((value, column) => value + share * found.effort * lift[column]),
        )!
      expect(found.effort).toBeGreaterThan(0)
      expect(reserve(0.999)).toBeLessThan(0)
      expect(reserve(1.001)).toBeGreaterThan(0)
    }
  })

  it('is the largest over all states of rest', () => {
    // SOURCE other-method: all 2^4 corners with the effort as the unknown itself
    for (const margin_deg of [1, -2, -6]) {
      const { opening, spring, lift } = asked(here, margin_deg)
      const found = effortToOpen(bench, opening, { port: lift, load: spring })
      const levers = bench.leversOf('rest', 'most')
      const prepared = prepare(opening, { port: lift, load: spring })!
      const corners = Array.from({ length: 16 }, (_, corner) =>
        amplitudeIn(prepared, (_rates, out) => {
          for (let joint = 0; joint < 4; joint++) out[joint] = (corner >> joint) & 1 ? levers[joint] : -levers[joint]
        }),
      )
      const largest = Math.max(...corners.map((amplitude) => amplitude!))
      expect(found.kind === 'effort' && found.effort / largest).toBeCloseTo(1, 8)
    }
  })

  it('grows in proportion to the spring it has to overcome', () => {
    // SOURCE property: the equations are homogeneous
    const { opening, spring, lift } = asked(here, -4)
    const one = effortToOpen(bench, opening, { port: lift, load: spring })
    const five = effortToOpen(bench, opening, { port: lift, load: spring.map((value) => 5 * value) })
    if (one.kind !== 'effort' || five.kind !== 'effort') throw new Error('no effort')
    expect(five.effort / one.effort).toBeCloseTo(5, 7)
  })

  it('does not exist where the port alone cannot open it: pulling at the rocker jams', () => {
    // SOURCE property: inside the jam and past dead centre a pull in the spring's own place only presses the toggle harder
    for (const margin_deg of [1.5, 0.3, -3]) {
      const { opening, spring, more } = asked(here, margin_deg)
      expect(effortToOpen(bench, opening, { port: more, load: spring })).toMatchObject({ kind: 'jams' })
    }
  })

  it('falls with less friction to what virtual work asks for', () => {
    // SOURCE other-method: the frictionless amplitude of the same port
    let last = Number.POSITIVE_INFINITY
    for (const friction of [0.2, 0.1, 0.02, 0]) {
      const smooth = scene(toggleOf({ ...SIZES, friction }))
      const { opening, spring, lift } = asked(smooth, -5)
      const found = effortToOpen(smooth.bench, opening, { port: lift, load: spring })
      if (found.kind !== 'effort') throw new Error(found.kind)
      expect(found.effort).toBeLessThan(last)
      last = found.effort
      const free = prepare(opening, { port: lift, load: spring })!.freeAmplitude
      if (friction === 0) expect(found.effort / free).toBeCloseTo(1, 8)
    }
  })
})
