/**
 * Test support: what is left over on every part when the forces of a balance are put on it one by one.
 *
 * Written from the bodies alone: every force at its place in the mount frame, moments about the mount's origin. Nothing of the
 * engine's matrices is used, only the numbers that it says the joints carry.
 */
import type { Balance } from '../forces/balance.ts'
import type { Joint, Mechanism } from '../motion/mechanism.ts'

/** Forces and moments on the parts, laid out as the engine lays out a load: N, N and N·mm over the scale about the part's origin. */
export interface Acting {
  readonly load: Float64Array
  readonly port: Float64Array
}

/** Largest unbalanced force, or moment over the mechanism's scale, on any moving part, N. */
export function unbalanced(mechanism: Mechanism, posture: Float64Array, balance: Balance, { load, port }: Acting): number {
  const left = Array.from({ length: mechanism.parts_count }, () => ({ x: 0, y: 0, moment: 0 }))
  const push = (part: number, at: readonly [number, number], x: number, y: number): void => {
    left[part].x += x
    left[part].y += y
    left[part].moment += at[0] * y - at[1] * x
  }
  for (let part = 1; part < mechanism.parts_count; part++) {
    const column = 3 * (part - 1)
    const [x, y, moment] = [0, 1, 2].map((k) => load[column + k] + balance.amplitude * port[column + k])
    push(part, [posture[3 * part], posture[3 * part + 1]], x, y)
    left[part].moment += moment * mechanism.scale_mm
  }
  mechanism.joints.forEach((joint, index) => {
    const c = Math.cos(posture[3 * joint.a + 2])
    const s = Math.sin(posture[3 * joint.a + 2])
    const { x_mm, y_mm } = joint.atA
    const pin = [posture[3 * joint.a] + c * x_mm - s * y_mm, posture[3 * joint.a + 1] + s * x_mm + c * y_mm] as const
    if (joint.kind === 'pin') {
      const x = balance.forces[joint.row]
      const y = balance.forces[joint.row + 1]
      push(joint.b, pin, x, y)
      push(joint.a, pin, -x, -y)
      const friction = -balance.levers[index] * Math.hypot(x, y)
      left[joint.b].moment += friction
      left[joint.a].moment -= friction
    } else {
      const { at, x, y } = atWall(joint, posture, pin, balance.forces[joint.row], balance.levers[index])
      push(joint.a, at, x, y)
      push(joint.b, at, -x, -y)
    }
  })
  const sizes = left.slice(1).flatMap(({ x, y, moment }) => [Math.abs(x), Math.abs(y), Math.abs(moment) / mechanism.scale_mm])
  return Math.max(...sizes)
}

/** Force on the pin at the wall of its slot: across the slot, and friction along it against the lever's sign. */
function atWall(joint: Joint, posture: Float64Array, pin: readonly [number, number], across_N: number, coefficient: number) {
  const along = posture[3 * joint.b + 2] + joint.along_rad
  const t = { x: Math.cos(along), y: Math.sin(along) }
  const n = { x: -t.y, y: t.x }
  const wall = Math.sign(across_N) * joint.radius_mm
  const friction_N = -coefficient * Math.abs(across_N)
  return {
    at: [pin[0] - wall * n.x, pin[1] - wall * n.y] as const,
    x: across_N * n.x + friction_N * t.x,
    y: across_N * n.y + friction_N * t.y,
  }
}
