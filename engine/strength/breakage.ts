/**
 * What a finger does when one of its pins, parts or springs gives way.
 *
 * What is left is judged by the mechanism, at postures from open to closed as it stood before:
 *
 *     joined    which parts still hang on the mount; the others are loose pieces
 *     limp      which of them can move although the drive is held
 *     opens     whether the springs that are left drive it open
 *
 * What is left mostly has more than one freedom, so the springs are asked what motion they give against an equal drag c at every pin, which
 * always has one answer: v makes ½ c Σ ω² − Q·v least under the joints that are left (and a stop that touches, if it would be pressed).
 * With R the joint forces of that state and ρ the friction levers at most, from rest, they get the better of friction if
 *
 *     Σ |ω_j| (c |ω_j| − ρ_j |R_j| − T_j) > 0
 *
 * which does not depend on c where no drag T is declared. Friction does not act back on R: the first order. Derived in
 * docs/theory/breakage.md.
 */
import type { Design, Member, Spring } from '../design/design.ts'
import type { ForceBench } from '../forces/force-bench.ts'
import { runPattern, turnPattern } from '../forces/force-frame.ts'
import { addSprings } from '../forces/loads.ts'
import { closureDerivative, type ForceRow } from '../motion/closure.ts'
import { evenNodes } from '../motion/even-nodes.ts'
import type { Joint, Mechanism } from '../motion/mechanism.ts'
import { freeParts } from '../motion/mobility.ts'
import { stopContact, stopGap } from '../motion/stop-contact.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { limits } from '../numbers/limits.ts'
import { factor, makeLu, solve } from '../numbers/lu.ts'

/** How a broken finger behaves, the gravest first. */
export type Outcome = 'comes apart' | 'stays closed' | 'goes limp' | 'opens in part' | 'opens'

/** What becomes of a finger when one member gives way. */
export interface Breakage {
  readonly member: Member
  readonly outcome: Outcome
  /** Part indices that are no longer joined to the mount. */
  readonly loose: readonly number[]
  /** Part indices that move although the drive is held. */
  readonly limp: readonly number[]
  /** What friction and drag take of what the springs give, the most on the way: below 1 they open it. Absent where no spring opens what is left. */
  readonly taken_ratio?: number
}

/** A finger that can be moved. */
export interface Whole {
  readonly path: TravelPath
  readonly bench: ForceBench
}

/** Postures that are looked at. */
export const BROKEN_POSTURES = 9

/** Everything that can give way: pins, parts but the mount, springs, in the order of the document. */
export function breakages(whole: Whole): readonly Breakage[] {
  const { pins, parts, springs } = whole.path.mechanism.design
  const all = (kind: Member['kind'], things: readonly unknown[]) => things.map((_, index): Member => ({ kind, index }))
  const members = [...all('pin', pins), ...all('part', parts).slice(1), ...all('spring', springs)]
  return members.map((member) => breakageOf(whole, member))
}

/** Takes one member out. */
export function breakageOf(whole: Whole, member: Member): Breakage {
  const { mechanism } = whole.path
  const joints = mechanism.joints.filter((joint) => !isGone(joint, member))
  const joined = joinedParts(joints)
  const moving = mechanism.design.parts.map((_, part) => part).filter((part) => part > 0)
  const isBroken = (part: number): boolean => member.kind === 'part' && member.index === part
  const loose = moving.filter((part) => !joined.has(part) && !isBroken(part))
  const springs = mechanism.design.springs.filter((spring, index) => acts(spring, index, { member, joined }))
  const rest: Rest = {
    ...whole,
    joints,
    mechanism: { ...mechanism, design: { ...mechanism.design, springs: springs.map(driving) } },
  }
  const nodes = evenNodes(whole.path, BROKEN_POSTURES)
  const closed = nodes[nodes.length - 1].posture
  const limp = limpParts(rest, closed).filter((part) => joined.has(part))
  const taken_ratio = mostTaken(nodes.map(({ posture }) => takenAt(rest, posture)))
  const opens = taken_ratio !== undefined && taken_ratio < 1
  return { member, outcome: outcomeOf({ loose, limp, opens }), loose, limp, ...(taken_ratio !== undefined && { taken_ratio }) }
}

/** Undefined where there is a posture at which no spring opens it. */
function mostTaken(shares: readonly (number | undefined)[]): number | undefined {
  const known = shares.filter((share) => share !== undefined)
  return known.length < shares.length ? undefined : Math.max(...known)
}

function outcomeOf({ loose, limp, opens }: { loose: readonly number[]; limp: readonly number[]; opens: boolean }): Outcome {
  if (loose.length > 0) return 'comes apart'
  if (opens) return limp.length > 0 ? 'opens in part' : 'opens'
  return limp.length > 0 ? 'goes limp' : 'stays closed'
}

/** A broken part holds none of its pins together any more. */
function isGone({ pin, a, b }: Joint, { kind, index }: Member): boolean {
  return (kind === 'pin' && pin === index) || (kind === 'part' && (a === index || b === index))
}

/** Parts that hang together with the mount. */
function joinedParts(joints: readonly Joint[]): ReadonlySet<number> {
  const joined = new Set([0])
  for (let found = 0; found < joined.size; ) {
    found = joined.size
    for (const { a, b } of joints) {
      if (joined.has(a)) joined.add(b)
      else if (joined.has(b)) joined.add(a)
    }
  }
  return joined
}

/** A spring acts while it is whole, both its ends are joined, and the pin that it sits on is there. */
function acts(
  spring: Spring,
  index: number,
  { member, joined }: { readonly member: Member; readonly joined: ReadonlySet<number> },
): boolean {
  if (member.kind === 'spring' && member.index === index) return false
  if (spring.kind !== 'torsion') return joined.has(spring.from.part) && joined.has(spring.to.part)
  const isOnPin = member.kind === 'pin' && member.index === spring.pin
  return !isOnPin && joined.has(spring.on) && joined.has(spring.against)
}

/** A spring gives what its own friction leaves. */
function driving(spring: Spring): Spring {
  const share = 1 - spring.ownFriction_ratio
  if (spring.kind === 'torsion') {
    return { ...spring, rate_Nmm_rad: share * spring.rate_Nmm_rad, preload_Nmm: share * spring.preload_Nmm }
  }
  return { ...spring, rate_N_mm: share * spring.rate_N_mm, initial_N: share * spring.initial_N }
}

interface Rest extends Whole {
  /** With the springs that are left. */
  readonly mechanism: Mechanism
  readonly joints: readonly Joint[]
}

function closureRows({ mechanism, joints }: Rest, posture: Float64Array): Float64Array[] {
  const { rows_count, columns_count } = mechanism
  const whole = new Float64Array(rows_count * columns_count)
  closureDerivative(mechanism, posture, whole)
  return joints.flatMap(({ row, kind }) =>
    (kind === 'pin' ? [row, row + 1] : [row]).map((at) => whole.slice(at * columns_count, (at + 1) * columns_count)),
  )
}

function rowOf({ mechanism }: Rest, posture: Float64Array, add: (row: ForceRow) => void): Float64Array {
  const row = { mechanism, posture, out: new Float64Array(mechanism.columns_count), start: 0 }
  add(row)
  return row.out
}

function limpParts(rest: Rest, posture: Float64Array): readonly number[] {
  const rows = [...closureRows(rest, posture), rowOf(rest, posture, (row) => rest.path.drive.addDerivative(row))]
  const { columns_count } = rest.mechanism
  const matrix = new Float64Array(rows.length * columns_count)
  rows.forEach((row, index) => {
    matrix.set(row, index * columns_count)
  })
  return freeParts(matrix, { rows: rows.length, columns: columns_count })
}

/** What friction and drag take of what the springs give at a posture; undefined where these do not push what is left towards open. */
function takenAt(rest: Rest, posture: Float64Array): number | undefined {
  const pushed = rowOf(rest, posture, (row) => addSprings(row, rest.bench.drawn))
  if (pushed.every((push) => push === 0)) return undefined
  const free = motionOf(rest, posture, { pushed, stops: [] })
  if (!free) return undefined
  const pressed = rest.mechanism.design.stops
    .filter((stop) => stopContact(rest.mechanism, stop, posture).gap_mm < limits.touching_mm)
    .map((stop) => rowOf(rest, posture, (row) => stopGap(rest.mechanism, stop).addDerivative(row)))
    .filter((row) => along(row, free.motion) < 0)
  const found = pressed.length > 0 ? motionOf(rest, posture, { pushed, stops: pressed }) : free
  if (!found) return undefined
  const drive = along(
    rowOf(rest, posture, (row) => rest.path.drive.addDerivative(row)),
    found.motion,
  )
  return drive < 0 ? takenShare(rest, found) : undefined
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
  rest: Rest,
  posture: Float64Array,
  { pushed, stops }: { readonly pushed: Float64Array; readonly stops: readonly Float64Array[] },
): Driven | undefined {
  const { columns_count: columns } = rest.mechanism
  const turnRows = rest.joints.map((joint) => rowOf(rest, posture, (row) => turnPattern(row, joint)))
  const runRows = rest.joints.map((joint) =>
    rowOf(rest, posture, (row) => {
      if (joint.kind === 'slot') runPattern(row, joint, 1 / joint.radius_mm)
    }),
  )
  const held = [...closureRows(rest, posture), ...stops]
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
function takenShare({ joints, mechanism, bench }: Rest, { forces, turns, runs }: Driven): number {
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

/** A member as the document calls it. */
export function memberWords({ pins, parts, springs }: Design, { kind, index }: Member): string {
  const things = { pin: pins, part: parts, spring: springs }
  return `${kind} ${things[kind][index].id}`
}
