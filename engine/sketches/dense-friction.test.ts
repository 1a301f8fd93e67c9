import { describe, expect, it } from 'vitest'
import { assemble } from '../motion/assemble.ts'
import { addCouple } from '../motion/closure.ts'
import { driveCoordinate } from '../motion/condition.ts'
import { type Mechanism, mechanismOf, placed } from '../motion/mechanism.ts'
import { derivativeOf, makePathBench, tangentAt } from '../motion/path.ts'
import { makeBench, settle } from '../motion/settle.ts'
import { toggleCouples, toggleMargin, watchToggle } from '../motion/toggle-margin.ts'
import { denseFriction } from './dense-friction.ts'
import { DEG, finger } from './finger.ts'
import { plainToggle } from './plain-toggle.ts'
import { scotchYoke } from './scotch-yoke.ts'

function forceAt(
  mechanism: Mechanism,
  posture: Float64Array,
  on: { part: number; at: [number, number]; force: [number, number] },
) {
  const pattern = new Float64Array(mechanism.columns_count)
  const at = placed(posture, on.part, { x_mm: on.at[0], y_mm: on.at[1] })
  const column = 3 * (on.part - 1)
  const [x, y] = on.force
  pattern.set([x, y, (at.x_mm - posture[3 * on.part]) * y - (at.y_mm - posture[3 * on.part + 1]) * x], column)
  return pattern
}

function coupleOn(mechanism: Mechanism, part: number, couple: number) {
  const pattern = new Float64Array(mechanism.columns_count)
  pattern[3 * (part - 1) + 2] = couple
  return pattern
}

/** Levers of pins that all turn with the opening (−1) or closing (+1) motion of the drive. */
function movingLevers(mechanism: Mechanism, posture: Float64Array, way: 1 | -1, friction: number) {
  const along = derivativeOf(mechanism, posture, driveCoordinate(mechanism, posture)).map((value) => way * value)
  const tangent = tangentAt(makePathBench(mechanism), posture, along)!
  const turn = (part: number) => (part === 0 ? 0 : tangent[3 * (part - 1) + 2])
  return mechanism.joints.map(
    (joint) => Math.sign(turn(joint.b) - turn(joint.a)) * joint.radius_mm * Math.sin(Math.atan(friction)),
  )
}

const none = (mechanism: Mechanism) => mechanism.joints.map(() => 0)

describe('the dense Newton for pin friction', () => {
  const mechanism = mechanismOf(finger())
  const drawn = assemble(mechanism).posture!
  const posture = settle(makeBench(mechanism), drawn, driveCoordinate(mechanism, drawn, 75 * DEG))!.posture
  const turn = posture[3 * 2 + 2]
  // 100 N on the middle pad along +y of the middle phalanx.
  const load = forceAt(mechanism, posture, { part: 2, at: [13, -6], force: [-100 * Math.sin(turn), 100 * Math.cos(turn)] })
  const effort = (part: number, way: 1 | -1, friction: number) =>
    denseFriction(mechanism, posture, {
      port: coupleOn(mechanism, part, -1),
      load,
      levers: movingLevers(mechanism, posture, way, friction),
      drag: none(mechanism),
    })!

  it('finds the effort to hold and to close of the finger at 75°', () => {
    // SOURCE other-method (two independent solvers of the same equations, agreeing to 8 digits)
    expect(effort(1, -1, 0.12).amplitude).toBeCloseTo(2850.22889, 4)
    expect(effort(1, 1, 0.12).amplitude).toBeCloseTo(3159.66828, 4)
    expect(effort(1, -1, 0.2).amplitude).toBeCloseTo(2765.98509, 4)
    expect(effort(1, 1, 0.2).amplitude).toBeCloseTo(3279.21146, 4)
    expect(effort(3, -1, 0.12).amplitude).toBeCloseTo(561.245574, 5)
    expect(effort(3, 1, 0.12).amplitude).toBeCloseTo(1099.348128, 5)
    expect(effort(3, -1, 0.2).amplitude).toBeCloseTo(335.68385, 5)
    expect(effort(3, 1, 0.2).amplitude).toBeCloseTo(1228.162322, 5)
  })

  it('finds the pin forces of the finger held by a couple on its distal phalanx', () => {
    const sizes = effort(3, -1, 0.12).forces.map(({ x, y }) => Math.hypot(x, y))
    // SOURCE other-method (two independent solvers); in the order of the pins of the sketch
    const published = [223.639, 1099.944, 1055.337, 126.186, 126.186, 1055.337, 1055.337]
    for (const [index, size] of published.entries()) expect(sizes[index]).toBeCloseTo(size, 3)
  })

  it('finds the resisting couple of a plain toggle with four different pins', () => {
    const toggle = mechanismOf(plainToggle())
    const start = assemble(toggle).posture!
    const watched = watchToggle(toggle, toggle.design.toggles[0], start)
    const resisting = (margin_deg: number, friction: number) => {
      const at = settle(makeBench(toggle), start, {
        value: (p) => toggleMargin(watched, p) - margin_deg * DEG,
        addDerivative: (row) => {
          for (const couple of toggleCouples(watched)) addCouple(row, couple)
        },
      })!.posture
      const load = coupleOn(toggle, 3, -1000)
      const opening = movingLevers(toggle, at, -1, friction)
      return denseFriction(toggle, at, { port: coupleOn(toggle, 2, 1), load, levers: opening, drag: none(toggle) })!.amplitude
    }
    // SOURCE other-method (own solver and an independent one: 83.7478974, 49.2668191)
    expect(Math.abs(resisting(12, 0))).toBeCloseTo(104.352594, 5)
    expect(Math.abs(resisting(12, 0.15))).toBeCloseTo(83.747897, 5)
    expect(Math.abs(resisting(8, 0))).toBeCloseTo(69.698474, 5)
    expect(Math.abs(resisting(8, 0.15))).toBeCloseTo(49.266818, 5)
  })

  it('puts the friction of a pin in a slot at the wall', () => {
    const turn_rad = 0.7
    const yoke = mechanismOf(scotchYoke(turn_rad))
    const at = assemble(yoke).posture!
    const friction = 0.3
    const push_N = 50
    const load = new Float64Array(yoke.columns_count)
    load[3] = -push_N
    for (const side of [1, -1]) {
      const levers = yoke.joints.map((_, index) => (index === 1 ? side * 2 * Math.sin(Math.atan(friction)) : 0))
      const found = denseFriction(yoke, at, { port: coupleOn(yoke, 1, 1), load, levers, drag: none(yoke) })!
      // SOURCE hand: the slot's normal is −x, so the wall that the crank pushes lies at +x of the pin: the pin's rim there is
      // (30 cos 0.7 + 2, 30 sin 0.7), the force on the crank there (−50, s·50·0.3), and its moment about the origin is
      // x·s·15 + y·50; the couple balances it. With the lever positive the friction's moment on the yoke about the pin is
      // clockwise, so on the yoke it points down the slot and on the crank up: s = side.
      const moment = (30 * Math.cos(turn_rad) + 2) * side * push_N * friction + 30 * Math.sin(turn_rad) * push_N
      expect(found.amplitude).toBeCloseTo(-moment, 9)
      expect(found.forces[1].x).toBeCloseTo(push_N, 9)
      expect(found.forces[1].y).toBeCloseTo(-side * push_N * friction, 9)
    }
  })
})
