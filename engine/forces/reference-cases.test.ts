import { describe, expect, it } from 'vitest'
import { driveCoordinate } from '../motion/condition.ts'
import { placed } from '../motion/mechanism.ts'
import { tangentAt } from '../motion/path.ts'
import { toggleMargin } from '../motion/toggle-margin.ts'
import { travelPath } from '../motion/travel-path.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, atMargin, coupleOn, forceOn, framesOf, partNamed, type Scene, scene } from '../sketches/force-scene.ts'
import { plainToggle } from '../sketches/plain-toggle.ts'
import { oneFriction } from '../sketches/sketch.ts'
import { againstMotion, type Balance, balanceIn, prepare, withoutFriction } from './balance.ts'
import { framesAt } from './force-frame.ts'
import { findJam } from './jam.ts'
import { takeUp } from './take-up.ts'

describe('the example finger at 75°, 100 N on its middle pad', () => {
  function efforts(friction: number, part: string): { hold: Balance; close: Balance; free: number } {
    const here = scene(finger({ friction }))
    const node = atDrive(here, 75 * DEG)
    const { mechanism, bench } = here
    const middle = partNamed(mechanism, 'middle')
    const turn = node.posture[3 * middle + 2]
    const load = forceOn(mechanism, node.posture, {
      part: middle,
      at: [13, -6],
      force: [-100 * Math.sin(turn), 100 * Math.cos(turn)],
    })
    const port = coupleOn(mechanism, partNamed(mechanism, part), -1)
    const frames = framesOf(here, node)
    const moving = againstMotion(bench.leversOf('moving', 'likely'))
    const hold = balanceIn(prepare(frames.opening, { port, load })!, moving)!
    const close = balanceIn(prepare(frames.closing, { port, load })!, moving)!
    const free = prepare(frames.opening, { port, load })!.freeAmplitude
    return { hold, close, free }
  }

  it('is held and closed by the drive as two independent solvers say', () => {
    // SOURCE other-method (reference case R1 of docs/theory, two independent solvers)
    const slight = efforts(0.12, 'proximal')
    expect(slight.hold.amplitude).toBeCloseTo(2850.22889, 5)
    expect(slight.close.amplitude).toBeCloseTo(3159.66828, 5)
    const strong = efforts(0.2, 'proximal')
    expect(strong.hold.amplitude).toBeCloseTo(2765.98509, 5)
    expect(strong.close.amplitude).toBeCloseTo(3279.21146, 5)
  })

  it('is held and closed by a couple on the distal phalanx as two independent solvers say', () => {
    // SOURCE other-method (reference case R1 of docs/theory, two independent solvers)
    const slight = efforts(0.12, 'distal')
    expect(slight.hold.amplitude).toBeCloseTo(561.245574, 6)
    expect(slight.close.amplitude).toBeCloseTo(1099.348128, 6)
    const strong = efforts(0.2, 'distal')
    expect(strong.hold.amplitude).toBeCloseTo(335.68385, 6)
    expect(strong.close.amplitude).toBeCloseTo(1228.162322, 6)
    // SOURCE other-method (reference case R1 of docs/theory): mcp, pip, dip, and both ends of each link
    const published = [223.639, 1099.944, 1055.337, 126.186, 126.186, 1055.337, 1055.337]
    for (const [joint, force_N] of published.entries()) expect(slight.hold.magnitudes[joint]).toBeCloseTo(force_N, 3)
  })

  it('puts no force at all into the toggle when the drive holds the middle pad', () => {
    // SOURCE property: the distal phalanx and its link carry nothing but each other, so they carry nothing
    const { hold, close } = efforts(0.2, 'proximal')
    for (const { magnitudes } of [hold, close]) {
      for (const joint of [2, 5, 6]) expect(magnitudes[joint]).toBeLessThan(1e-9)
      expect(magnitudes[1]).toBeGreaterThan(100)
    }
  })
})

describe('a plain toggle with four different pins', () => {
  const spring = { rate_Nmm_rad: 0, preload_Nmm: 1000, ownFriction_ratio: 0 }
  const rough = plainToggle({ springs: [{ id: 'return', kind: 'torsion', pin: 3, on: 0, against: 3, ...spring }] })
  const design = { ...rough, pins: rough.pins.map((pin) => ({ ...pin, friction: oneFriction(0.15) })) }
  const here = scene(design)

  it('resists 1000 N·mm on its rocker as two independent solvers say', () => {
    for (const [margin_deg, free, moving] of [
      // SOURCE other-method (reference case R3 of docs/theory, two independent solvers: 83.7478974 and 49.2668191)
      [12, 104.352594, 83.747897],
      [8, 69.698474, 49.266818],
    ] as const) {
      const node = atMargin(here, margin_deg * DEG)
      const load = coupleOn(here.mechanism, partNamed(here.mechanism, 'rocker'), -1000)
      const port = coupleOn(here.mechanism, partNamed(here.mechanism, 'bc'), 1)
      const prepared = prepare(framesOf(here, node).opening, { port, load })!
      expect(prepared.freeAmplitude).toBeCloseTo(free, 5)
      expect(balanceIn(prepared, againstMotion(here.bench.leversOf('moving', 'likely')))!.amplitude).toBeCloseTo(moving, 5)
    }
  })

  it('jams at the same margin from rest and moving', () => {
    const path = travelPath(here.paths, here.drawn)!
    for (const kind of ['fromRest', 'moving'] as const) {
      const jam = findJam(
        here.bench,
        path,
        kind,
        path.nodes.map((node) => ({ node })),
      )
      // SOURCE other-method (reference case R3 of docs/theory, closed form and two independent solvers)
      expect(jam.kind === 'at' && toggleMargin(path.toggles[0], jam.node.posture) / DEG).toBeCloseTo(2.3162264097, 8)
    }
  })
})

describe('clearances taken up by a couple on the distal phalanx, the MCP held at 75°', () => {
  function takenUp(here: Scene, couple_Nmm: number) {
    const { mechanism, paths, toggles, drawn, bench, drive } = here
    const start = atDrive(here, 75 * DEG)
    const forcesAt = (posture: Float64Array) => {
      const frames = framesAt(bench.room, { posture, tangent: tangentAt(paths, posture, start.tangent)! })!
      const load = coupleOn(mechanism, partNamed(mechanism, 'distal'), couple_Nmm)
      const port = new Float64Array(mechanism.columns_count)
      drive.addDerivative({ mechanism, posture, out: port, start: 0 })
      return { balance: balanceIn(prepare(frames.opening, { port, load })!, withoutFriction)! }
    }
    const held = driveCoordinate(mechanism, drawn, 75 * DEG)
    const marginsAt = (posture: Float64Array) => [toggleMargin(toggles[0], posture)]
    return takeUp({ bench: paths, held, forcesAt, marginsAt, clearance: true, stiffnessOf: () => undefined }, start.posture)!
      .posture
  }

  it('move the margin by some degrees, as two roads say', () => {
    const here = scene(finger({ clearance_mm: 0.02 }))
    const distal = partNamed(here.mechanism, 'distal')
    for (const [couple, margin_deg, distal_deg, x, y] of [
      // SOURCE other-method (reference case R4 of docs/theory, fixed point and extremum over the seven offset directions)
      [1000, 11.8745346, 137.0534007, -29.54172623, -35.15970569],
      [-1000, 3.3446704, 129.5304587, -27.57557655, -32.89031604],
    ] as const) {
      const posture = takenUp(here, couple)
      expect(toggleMargin(here.toggles[0], posture) / DEG).toBeCloseTo(margin_deg, 6)
      expect(posture[3 * distal + 2] / DEG + 360).toBeCloseTo(distal_deg, 6)
      const tip = placed(posture, distal, { x_mm: 22, y_mm: 0 })
      expect(tip.x_mm).toBeCloseTo(x, 7)
      expect(tip.y_mm).toBeCloseTo(y, 7)
    }
  })

  it('leave the margin alone where there are none', () => {
    const here = scene(finger())
    // SOURCE other-method (reference case R4 of docs/theory)
    expect(toggleMargin(here.toggles[0], takenUp(here, 1000)) / DEG).toBeCloseTo(8.7179173, 6)
  })
})
