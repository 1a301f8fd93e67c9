/**
 * What the springs make of a broken finger. What is left mostly has more than one freedom, so they are asked what motion they give against an
 * equal drag c at every pin, which always has one answer: v makes ½ c Σ ω² − Q·v least under the joints that are left (and a stop that
 * touches, if it would be pressed). With R the joint forces of that state and ρ the friction levers at most, from rest, the springs get the better
 * of friction if
 *
 *     Σ |ω_j| (c |ω_j| − ρ_j |R_j| − T_j) > 0
 *
 * which does not depend on c where no drag T is declared. Friction does not act back on R: the first order. Derived in
 * docs/theory/breakage.md.
 */
import type { ForceBench } from '../forces/force-bench.ts'
import { runPattern, turnPattern } from '../forces/force-frame.ts'
import { addSprings } from '../forces/loads.ts'
import { closureDerivative, type ForceRow } from '../motion/closure.ts'
import type { Joint, Mechanism } from '../motion/mechanism.ts'
import { freeParts } from '../motion/mobility.ts'
import { stopContact, stopGap } from '../motion/stop-contact.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { limits } from '../numbers/limits.ts'
import { factor, makeLu, solve } from '../numbers/lu.ts'

/** A finger that can be moved. */
export interface Whole {
  readonly path: TravelPath
  readonly bench: ForceBench
}

/** What is left of it. */
export interface Broken extends Whole {
  /** With the springs that are left. */
  readonly mechanism: Mechanism
  readonly joints: readonly Joint[]
}

function closureRows({ mechanism, joints }: Broken, posture: Float64Array): Float64Array[] {
  const { rows_count, columns_count } = mechanism
  const whole = new Float64Array(rows_count * columns_count)
  closureDerivative(mechanism, posture, whole)
  return joints.flatMap(({ row, kind }) =>
    (kind === 'pin' ? [row, row + 1] : [row]).map((at) => whole.slice(at * columns_count, (at + 1) * columns_count)),
  )
}

function rowOf({ mechanism }: Broken, posture: Float64Array, add: (row: ForceRow) => void): Float64Array {
  const row = { mechanism, posture, out: new Float64Array(mechanism.columns_count), start: 0 }
  add(row)
  return row.out
}

/** Parts that can move although the drive is held, by their indices. @param posture closed */
export function limpParts(broken: Broken, posture: Float64Array): readonly number[] {
  const rows = [...closureRows(broken, posture), rowOf(broken, posture, (row) => broken.path.drive.addDerivative(row))]
  const { columns_count } = broken.mechanism
  const matrix = new Float64Array(rows.length * columns_count)
  rows.forEach((row, index) => {
    matrix.set(row, index * columns_count)
  })
  return freeParts(matrix, { rows: rows.length, columns: columns_count })
}

/** What friction and drag take of what the springs give at a posture, as a ratio; undefined where these do not push what is left towards open. */
export function takenAt(broken: Broken, posture: Float64Array): number | undefined {
  const pushed = rowOf(broken, posture, (row) => addSprings(row, broken.bench.drawn))
  if (pushed.every((push) => push === 0)) return undefined
  const free = motionOf(broken, posture, { pushed, stops: [] })
  if (!free) return undefined
  const pressed = broken.mechanism.design.stops
    .filter((stop) => stopContact(broken.mechanism, stop, posture).gap_mm < limits.touching_mm)
    .map((stop) => rowOf(broken, posture, (row) => stopGap(broken.mechanism, stop).addDerivative(row)))
    .filter((row) => along(row, free.motion) < 0)
  const found = pressed.length > 0 ? motionOf(broken, posture, { pushed, stops: pressed }) : free
  if (!found) return undefined
  const drive = along(
    rowOf(broken, posture, (row) => broken.path.drive.addDerivative(row)),
    found.motion,
  )
  return drive < 0 ? takenShare(broken, found) : undefined
}

interface Driven {
  /** Against a drag of 1 N·mm a rad of turn at every pin. */
  readonly motion: Float64Array
  readonly forces: Float64Array
  readonly turns: readonly number[]
  readonly runs: readonly number[]
}

/** So small a drag on every part itself keeps parts that nothing holds from having no answer. */
const HELD_ratio = 1e-9

/** The stationary point: [AᵀA + ε, Gᵀ; G, 0] [v; R] = [Q; 0]. */
function motionOf(
  broken: Broken,
  posture: Float64Array,
  { pushed, stops }: { readonly pushed: Float64Array; readonly stops: readonly Float64Array[] },
): Driven | undefined {
  const { columns_count: columns } = broken.mechanism
  const turnRows = broken.joints.map((joint) => rowOf(broken, posture, (row) => turnPattern(row, joint)))
  const runRows = broken.joints.map((joint) =>
    rowOf(broken, posture, (row) => {
      if (joint.kind === 'slot') runPattern(row, joint, 1 / joint.radius_mm)
    }),
  )
  const held = [...closureRows(broken, posture), ...stops]
  const lu = makeLu(columns + held.length)
  const put = (row: number, column: number, value: number): void => {
    lu.factors[row * lu.size + column] += value
  }
  for (const row of [...turnRows, ...runRows]) {
    for (let i = 0; i < columns; i++) for (let j = 0; j < columns; j++) put(i, j, row[i] * row[j])
  }
  for (let i = 0; i < columns; i++) put(i, i, HELD_ratio)
  held.forEach((row, index) => {
    for (let i = 0; i < columns; i++) {
      put(columns + index, i, row[i])
      put(i, columns + index, row[i])
    }
  })
  if (!factor(lu)) return undefined
  const answer = new Float64Array(lu.size)
  answer.set(pushed)
  solve(lu, answer)
  const motion = answer.slice(0, columns)
  const rates = (rows: readonly Float64Array[]) => rows.map((row) => Math.abs(along(row, motion)))
  return { motion, forces: answer.slice(columns), turns: rates(turnRows), runs: rates(runRows) }
}

function along(row: Float64Array, motion: Float64Array): number {
  return row.reduce((sum, value, index) => sum + value * motion[index], 0)
}

/** Above zero drive something turns or runs, so what is given is above zero too. */
function takenShare({ joints, mechanism, bench }: Broken, { forces, turns, runs }: Driven): number {
  const levers = bench.leversOf('rest', 'most')
  let given = 0
  let taken = 0
  let at = 0
  joints.forEach((joint, index) => {
    const isPin = joint.kind === 'pin'
    const force = isPin ? Math.hypot(forces[at], forces[at + 1]) : Math.abs(forces[at])
    at += isPin ? 2 : 1
    const lever = levers[mechanism.joints.indexOf(joint)]
    const [turn, run] = [turns[index], runs[index]]
    const rubs = isPin ? lever * force * turn : lever * force * joint.radius_mm * (turn + run)
    given += turn * turn + run * run
    taken += rubs + mechanism.design.pins[joint.pin].drag_Nmm * turn
  })
  return taken / given
}
