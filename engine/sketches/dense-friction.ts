/**
 * Test support: pin friction by a dense Newton of its own, so that the engine's forces can be tested against a second road.
 *
 * Written from the equilibrium of every part alone, with its own unknowns, its own positions and a general matrix solver:
 *
 *     each moving part:  Σ ±R_j + F_load + λ F_port = 0
 *                        Σ ±(x_j × R_j) ± τ_j + M_load + λ M_port = 0        τ_j on b = −κ_j |R_j| − drag_j
 *
 * R_j acts on the part b of joint j, −R_j on its part a. A pin has two unknowns (R_x, R_y). A pin in a slot has one: with
 * n the slot's direction turned by +90° and t the slot's direction, R = N (n + t tan φ), sin φ = κ / r. That is the wall's
 * force at the rim of the pin, moved to the pin's centre: its moment there is −κ |R| again.
 */
import { Matrix, solve } from 'ml-matrix'
import type { Joint, Mechanism } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'

export interface FrictionCase {
  /** Generalised force whose amplitude is sought: three a moving part, N, N and N·mm about the part's origin, mount frame. */
  readonly port: Float64Array
  /** Everything else that acts, in the same order. */
  readonly load: Float64Array
  /** Signed friction lever of each joint, mm: on b the friction's moment is −lever · |R|. */
  readonly levers: ArrayLike<number>
  /** Signed drag of each joint, N·mm: on b its moment is −drag. */
  readonly drag: ArrayLike<number>
}

export interface FrictionFound {
  /** On part b of each joint, from part a, mount frame, N. */
  readonly forces: readonly Vector[]
  /** Amplitude of the port. */
  readonly amplitude: number
}

const ROUNDS = 60
const RESIDUAL_RATIO = 1e-12
const SMOOTH_RATIO = 1e-9

/**
 * Starts without friction and takes it on in one step, in halves where Newton does not follow.
 *
 * @returns the pin forces and the amplitude, or undefined where no state was found or the parts are not ruled by the port
 */
export function denseFriction(mechanism: Mechanism, posture: Float64Array, given: FrictionCase): FrictionFound | undefined {
  const statics = staticsOf(mechanism, posture, given)
  let state = newton(statics, new Array<number>(statics.unknowns_count).fill(0), 0)
  if (!state) return undefined
  let reached = 0
  let step = 1
  while (reached < 1) {
    const next = newton(statics, state, Math.min(1, reached + step))
    if (next) {
      state = next
      reached = Math.min(1, reached + step)
    } else {
      step /= 2
      if (step < 1e-4) return undefined
    }
  }
  const found = state
  const forces = mechanism.joints.map((joint, index) => forceOf(statics, joint, index, found, 1))
  return { forces, amplitude: found[statics.unknowns_count - 1] }
}

interface Statics {
  readonly mechanism: Mechanism
  readonly given: FrictionCase
  readonly unknowns_count: number
  readonly equations_count: number
  readonly arms: readonly { readonly onA: Vector; readonly onB: Vector; readonly along: Vector }[]
  readonly force_N: number
}

function staticsOf(mechanism: Mechanism, posture: Float64Array, given: FrictionCase): Statics {
  const turned = (part: number, x: number, y: number): Vector => {
    const angle = posture[3 * part + 2]
    return { x: x * Math.cos(angle) - y * Math.sin(angle), y: x * Math.sin(angle) + y * Math.cos(angle) }
  }
  const arms = mechanism.joints.map((joint) => {
    const onA = turned(joint.a, joint.atA.x_mm, joint.atA.y_mm)
    // The force passes the pin's centre, which in a slot is not where the slot's middle is.
    const onB = {
      x: posture[3 * joint.a] + onA.x - posture[3 * joint.b],
      y: posture[3 * joint.a + 1] + onA.y - posture[3 * joint.b + 1],
    }
    return { onA, onB, along: turned(joint.b, Math.cos(joint.along_rad), Math.sin(joint.along_rad)) }
  })
  const unknowns_count = mechanism.rows_count + 1
  const equations_count = mechanism.columns_count
  const loads = [...given.load].map((value, column) => Math.abs(column % 3 === 2 ? value / mechanism.scale_mm : value))
  return { mechanism, given, unknowns_count, equations_count, arms, force_N: Math.max(...loads, Number.MIN_VALUE) }
}

/** Unit force of each unknown of a joint. */
function directionsOf(statics: Statics, joint: Joint, index: number, share: number): Vector[] {
  if (joint.kind === 'pin') {
    return [
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ]
  }
  const { along } = statics.arms[index]
  const slope = Math.tan(Math.asin((share * statics.given.levers[index]) / joint.radius_mm))
  return [{ x: -along.y + slope * along.x, y: along.x + slope * along.y }]
}

function forceOf(statics: Statics, joint: Joint, index: number, state: readonly number[], share: number): Vector {
  return directionsOf(statics, joint, index, share).reduce(
    (sum, unit, k) => ({ x: sum.x + unit.x * state[joint.row + k], y: sum.y + unit.y * state[joint.row + k] }),
    { x: 0, y: 0 },
  )
}

/** Residual of every part and its derivative by the unknowns, friction levers taken at `share` of their size. */
function equations(statics: Statics, state: readonly number[], share: number): { residual: number[]; derivative: Matrix } {
  const { mechanism, given, unknowns_count, equations_count } = statics
  const amplitude = state[unknowns_count - 1]
  const residual = Array.from({ length: equations_count }, (_, row) => given.load[row] + amplitude * given.port[row])
  const derivative = Matrix.zeros(equations_count, unknowns_count)
  for (let row = 0; row < equations_count; row++) derivative.set(row, unknowns_count - 1, given.port[row])
  mechanism.joints.forEach((joint, index) => {
    const lever = share * given.levers[index]
    const force = forceOf(statics, joint, index, state, share)
    const size = Math.sqrt(force.x ** 2 + force.y ** 2 + (SMOOTH_RATIO * statics.force_N) ** 2)
    const directions = directionsOf(statics, joint, index, share)
    for (const [part, sign, arm] of [
      [joint.a, -1, statics.arms[index].onA],
      [joint.b, 1, statics.arms[index].onB],
    ] as const) {
      if (part === 0) continue
      const row = 3 * (part - 1)
      residual[row] += sign * force.x
      residual[row + 1] += sign * force.y
      residual[row + 2] += sign * (arm.x * force.y - arm.y * force.x - lever * size - given.drag[index])
      directions.forEach((unit, k) => {
        const growth = (force.x * unit.x + force.y * unit.y) / size
        derivative.set(row, joint.row + k, derivative.get(row, joint.row + k) + sign * unit.x)
        derivative.set(row + 1, joint.row + k, derivative.get(row + 1, joint.row + k) + sign * unit.y)
        const moment = sign * (arm.x * unit.y - arm.y * unit.x - lever * growth)
        derivative.set(row + 2, joint.row + k, derivative.get(row + 2, joint.row + k) + moment)
      })
    }
  })
  return { residual, derivative }
}

function newton(statics: Statics, start: readonly number[], share: number): number[] | undefined {
  if (statics.unknowns_count !== statics.equations_count) return undefined
  let state = [...start]
  let { residual, derivative } = equations(statics, state, share)
  let size = sizeOf(statics, residual)
  for (let round = 0; round < ROUNDS; round++) {
    const largest = Math.max(statics.force_N, ...state.slice(0, -1).map(Math.abs))
    if (size <= RESIDUAL_RATIO * largest) return state
    const step = solveLinear(derivative, residual)
    if (!step) return undefined
    let damping = 1
    for (; damping > 1e-3; damping /= 2) {
      const trial = state.map((value, k) => value - damping * step[k])
      const next = equations(statics, trial, share)
      const nextSize = sizeOf(statics, next.residual)
      if (nextSize < size || nextSize <= RESIDUAL_RATIO * largest) {
        ;({ residual, derivative } = next)
        state = trial
        size = nextSize
        break
      }
    }
    if (damping <= 1e-3) return size <= 100 * RESIDUAL_RATIO * largest ? state : undefined
  }
  return undefined
}

function solveLinear(derivative: Matrix, residual: readonly number[]): number[] | undefined {
  try {
    const step = solve(derivative, Matrix.columnVector([...residual])).to1DArray()
    return step.every(Number.isFinite) ? step : undefined
  } catch {
    // The library throws where the matrix has no inverse: the port does not rule the parts there.
    return undefined
  }
}

/** Largest residual in N, moments over the mechanism's scale. */
function sizeOf(statics: Statics, residual: readonly number[]): number {
  return Math.max(...residual.map((value, row) => Math.abs(row % 3 === 2 ? value / statics.mechanism.scale_mm : value)))
}
