import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { travelPath } from '../motion/travel-path.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { scene } from '../sketches/force-scene.ts'
import { seeded } from '../sketches/seeded.ts'
import { type ToggleSizes, toggleOf } from '../sketches/toggle-of.ts'
import { frictionLever } from './friction-lever.ts'
import { findJam, type JamKind } from './jam.ts'
import { toggleJamAngle, toggleRunJamAngle } from './toggle-jam.ts'

/** Margin at the jam by the general road, rad: along the path, with the worst rest searched for or the senses as they move. */
function jamByTheWay(design: Design, kind: JamKind): number {
  const { bench, paths, drawn } = scene(design)
  const path = travelPath(paths, drawn)!
  const jam = findJam(
    bench,
    path,
    kind,
    path.nodes.map((node) => ({ node })),
  )
  if (jam.kind !== 'at') throw new Error(`jam ${jam.kind}`)
  return toggleMargin(path.toggles[0], jam.node.posture)
}

const PLAIN: ToggleSizes = {
  first_mm: 24.507,
  arm_mm: 5.867,
  radii_mm: { a: 1.5, b: 1.5, c: 1.5, g: 2 },
  friction: 0.15,
  margin_rad: 20 * DEG,
  rocker_mm: 50,
  lean_mm: 0,
  spring_Nmm: 1000,
}

function plain(sizes: Partial<ToggleSizes>): Design {
  const whole = { ...PLAIN, ...sizes }
  const { first_mm: first, arm_mm: arm, margin_rad: margin } = whole
  const atA = Math.asin((arm * Math.sin(margin)) / Math.sqrt(first ** 2 + arm ** 2 + 2 * first * arm * Math.cos(margin)))
  return toggleOf(whole, { drive: { part: 'ab', pin: 'a', open: -atA, closed: atA } })
}

function closedForm({ first_mm, arm_mm, radii_mm: { a, b, c }, friction }: ToggleSizes): number {
  const levers_mm = { a: frictionLever(a, friction), b: frictionLever(b, friction), c: frictionLever(c, friction) }
  return toggleJamAngle({ first_mm, arm_mm, levers_mm })!
}

const one = (lever: number) => ({ a: lever, b: lever, c: lever })

describe('the jam of a toggle in closed form', () => {
  it('is the jam that a search along the path finds, for forty random toggles with different pins', () => {
    // SOURCE other-method: reserve from the worst rest, followed along the path; SOURCE property: closed form = search
    const dice = seeded(4021)
    for (let trial = 0; trial < 40; trial++) {
      const arm_mm = dice.between(6, 40)
      const sizes: ToggleSizes = {
        first_mm: dice.between(15, 60),
        arm_mm,
        radii_mm: { a: dice.between(0.8, 3), b: dice.between(0.8, 2.5), c: dice.between(0.8, 2.5), g: dice.between(0.5, 4) },
        friction: dice.between(0.05, 0.25),
        margin_rad: 30 * DEG,
        rocker_mm: dice.between(35, 80),
        lean_mm: dice.between(-8, 8),
        spring_Nmm: dice.between(200, 3000),
      }
      const expected_deg = closedForm(sizes) / DEG
      expect(Math.abs(jamByTheWay(plain(sizes), 'fromRest') / DEG - expected_deg)).toBeLessThan(1e-9)
      expect(Math.abs(jamByTheWay(plain(sizes), 'moving') / DEG - expected_deg)).toBeLessThan(1e-9)
    }
  })

  it('tells the two jams of the example finger apart, whose first pin turns the same way as the second until near dead centre', () => {
    // SOURCE other-method: the general road on the finger with a spring at its MCP pin only. Its first pin turns back at a
    // margin between 1.5° and 3.5°: with slight friction it opposes the second at the jam, and the two jams are one.
    const spring = { rate_Nmm_rad: 0, preload_Nmm: 800, ownFriction_ratio: 0 }
    const springs = [{ id: 'return', kind: 'torsion', pin: 0, on: 1, against: 0, ...spring } as const]
    for (const { friction, a } of [
      { friction: 0.05, a: true },
      { friction: 0.12, a: false },
      { friction: 0.2, a: false },
    ]) {
      const design = finger({ friction, more: { springs } })
      const link = design.parts[5].holes[1].at.x_mm
      const sizes = { first_mm: link, arm_mm: Math.hypot(2.27, 5.41), levers_mm: one(frictionLever(1.5, friction)) }
      const rest = toggleJamAngle(sizes)!
      const run = toggleRunJamAngle({ ...sizes, oppositeToB: { a, c: true } })!
      expect(rest > run).toBe(!a)
      expect(Math.abs(jamByTheWay(design, 'fromRest') - rest) / DEG).toBeLessThan(1e-9)
      expect(Math.abs(jamByTheWay(design, 'moving') - run) / DEG).toBeLessThan(1e-9)
    }
  })

  it('does not depend on the size of the spring, nor on the pin of the rocker', () => {
    // SOURCE property: the line of force passes A, B and C only, and its place does not change with its size
    const jam = jamByTheWay(plain({}), 'fromRest')
    for (const spring_Nmm of [1, 1e5]) expect(Math.abs(jamByTheWay(plain({ spring_Nmm }), 'fromRest') - jam)).toBeLessThan(1e-10)
    for (const g of [0.2, 8]) {
      const radii_mm = { ...PLAIN.radii_mm, g }
      expect(Math.abs(jamByTheWay(plain({ radii_mm }), 'fromRest') - jam)).toBeLessThan(1e-10)
    }
  })

  it('says so when the circles reach past the arms', () => {
    expect(toggleJamAngle({ first_mm: 20, arm_mm: 3, levers_mm: one(2) })).toBeUndefined()
    expect(toggleRunJamAngle({ first_mm: 20, arm_mm: 3, levers_mm: one(2), oppositeToB: { a: true, c: true } })).toBeUndefined()
  })
})

describe('the seven degrees of the trade', () => {
  // SOURCE trade (common practice, no published source): a toggle held about 7° short of straight returns by its spring.
  // SOURCE other-method for the numbers below: bisection of the closed form and the search along the path, which agree.
  const degrees = (sizes: Partial<ToggleSizes>) => closedForm({ ...PLAIN, ...sizes }) / DEG
  const pins = (r: number) => ({ radii_mm: { a: r, b: r, c: r, g: 2 } })

  it('are the jam from rest at a friction of about 0.196 with 3 mm pins on an arm of 5.867 mm', () => {
    expect(degrees({ friction: 0.196 })).toBeCloseTo(6.993, 3)
    expect(degrees({ friction: 0.1962 })).toBeCloseTo(7.0, 2)
    expect(jamByTheWay(plain({ friction: 0.196 }), 'fromRest') / DEG).toBeCloseTo(6.993, 3)
  })

  it('are the moving jam at 0.245 when the first pin turns the same way as the second', () => {
    const levers_mm = one(frictionLever(1.5, 0.2454))
    const run = toggleRunJamAngle({ ...PLAIN, levers_mm, oppositeToB: { a: false, c: true } })!
    expect(run / DEG).toBeCloseTo(7.0, 2)
  })

  it('grow with friction: 4.33° at 0.12, 5.39° at 0.15, 8.83° at 0.25', () => {
    for (const [friction, expected_deg] of [
      [0.12, 4.33],
      [0.15, 5.39],
      [0.25, 8.83],
    ] as const) {
      expect(degrees({ friction })).toBeCloseTo(expected_deg, 2)
      expect(jamByTheWay(plain({ friction }), 'fromRest') / DEG).toBeCloseTo(expected_deg, 2)
    }
  })

  it('grow with the pins: 2.885° with 2 mm pins, 4.328° with 3 mm, 5.775° with 4 mm at a friction of 0.12', () => {
    for (const [radius, expected_deg] of [
      [1, 2.8848],
      [1.5, 4.3285],
      [2, 5.7735],
    ] as const) {
      expect(degrees({ friction: 0.12, ...pins(radius) })).toBeCloseTo(expected_deg, 2)
      expect(jamByTheWay(plain({ friction: 0.12, ...pins(radius) }), 'fromRest') / DEG).toBeCloseTo(expected_deg, 2)
    }
  })

  it('shrink with the arm: 5.96° on 4 mm, 4.33° on 5.867 mm, 3.40° on 8 mm at a friction of 0.12', () => {
    for (const [arm_mm, expected_deg] of [
      [4, 5.96],
      [5.867, 4.33],
      [8, 3.4],
    ] as const) {
      expect(degrees({ friction: 0.12, arm_mm })).toBeCloseTo(expected_deg, 2)
      expect(jamByTheWay(plain({ friction: 0.12, arm_mm }), 'fromRest') / DEG).toBeCloseTo(expected_deg, 2)
    }
  })
})
