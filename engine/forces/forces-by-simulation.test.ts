import { type Body, BoxShape, RevoluteJoint, Vec2, World } from 'planck'
import { describe, expect, it } from 'vitest'
import { placed } from '../motion/mechanism.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, coupleOn, forceOn, framesOf, scene } from '../sketches/force-scene.ts'
import { balanceIn, prepare, withoutFriction } from './balance.ts'

/** The simulation likes sizes of about one: 10 mm. */
const UNIT_MM = 10
const STEP_S = 1e-3
/** Damping of 1 a second takes a thousandth of every force; the parts come to rest within some 2 s. */
const STEPS = 2000

const unit = ({ x_mm, y_mm }: { readonly x_mm: number; readonly y_mm: number }): Vec2 => new Vec2(x_mm / UNIT_MM, y_mm / UNIT_MM)

describe('the pin forces of the finger in a rigid-body simulation', () => {
  it('are those of the engine, with the drive held and loads on middle and distal phalanx', () => {
    const here = scene(finger())
    const { mechanism } = here
    const node = atDrive(here, 50 * DEG)
    const loads = [
      { part: 2, at: [13, -6] as const, force: [-14, 22] as const },
      { part: 3, at: [14, -5] as const, force: [-9, 4] as const },
    ]
    const world = new World({ gravity: new Vec2(0, 0) })
    const bodies: Body[] = mechanism.design.parts.map((_, part) => {
      const position = new Vec2(node.posture[3 * part] / UNIT_MM, node.posture[3 * part + 1] / UNIT_MM)
      const type = part < 2 ? 'static' : 'dynamic'
      const body = world.createBody({ type, position, angle: node.posture[3 * part + 2], linearDamping: 1, angularDamping: 1 })
      body.createFixture({ shape: new BoxShape(0.4, 0.2), density: 20, filterMaskBits: 0 })
      return body
    })
    const hinges = mechanism.joints.map(({ a, b, atA, atB }) => {
      if (a < 2 && b < 2) return undefined
      return world.createJoint(
        new RevoluteJoint({ localAnchorA: unit(atA), localAnchorB: unit(atB), bodyA: bodies[a], bodyB: bodies[b] }),
      )
    })
    for (let step = 0; step < STEPS; step++) {
      for (const { part, at, force } of loads) {
        const where = placed(node.posture, part, { x_mm: at[0], y_mm: at[1] })
        bodies[part].applyForce(new Vec2(force[0], force[1]), unit(where), true)
      }
      world.step(STEP_S, 50, 20)
    }
    const load = new Float64Array(mechanism.columns_count)
    for (const one of loads) for (const [column, value] of forceOn(mechanism, node.posture, one).entries()) load[column] += value
    const prepared = prepare(framesOf(here, node).opening, { port: coupleOn(mechanism, 1, -1), load })!
    const { forces, magnitudes } = balanceIn(prepared, withoutFriction)!
    const largest = Math.max(...magnitudes)
    let compared = 0
    mechanism.joints.forEach(({ row }, index) => {
      const hinge = hinges[index]
      if (!hinge) return
      const seen = hinge.getReactionForce(1 / STEP_S)
      // SOURCE other-method (planck 1.4.2, 1 ms steps, 50 and 20 rounds): joint forces within 0.2 % of the largest
      expect(Math.hypot(seen.x - forces[row], seen.y - forces[row + 1]) / largest).toBeLessThan(2e-3)
      compared++
    })
    // SOURCE hand: seven pins less the one between the two parts that are held
    expect(compared).toBe(6)
  })
})
