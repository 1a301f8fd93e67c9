/** The parts about one pin: pressure in their holes, tearing out to the edge, and the section beside the hole. */
import type { Part } from '../design/design.ts'
import { type EdgeTable, edgeTableAt, leastOfAll, leastReach } from './edge-table.ts'
import { type Lug, type LugAsked, lug } from './lug.ts'
import { bearingLimits, shearLimits, tensionLimits } from './material-limits.ts'
import { outlineReach } from './outline-reach.ts'
import { partWidth } from './part-width.ts'
import { forceThrough, jointsAt, mostPressed, type PinnedJoints, type Pressed, squaresThrough } from './pressed.ts'
import { foundAt, leastOf, type Strength, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

export interface LugStrength {
  readonly bearing: Strength
  readonly tearOut: Strength
  readonly section: Strength
}

/** The least margin of each over the parts that a pin joins and over all states. */
export function lugStrength(bench: StrengthBench, pin: number): LugStrength {
  const lugs = bench.mechanism.design.pins[pin].joins.map(({ part, hole }) => ofHole(bench, { pin, part, hole }))
  return {
    bearing: leastOf(lugs.map(({ bearing }) => bearing)),
    tearOut: leastOf(lugs.map(({ tearOut }) => tearOut)),
    section: leastOf(lugs.map(({ section }) => section)),
  }
}

interface LugHole {
  readonly pin: number
  readonly part: number
  readonly hole: number
}

function ofHole(bench: StrengthBench, at: LugHole): LugStrength {
  const { factors } = bench
  const part = bench.mechanism.design.parts[at.part]
  const { material } = part
  const missing = missingOf(part)
  if (missing !== undefined || !material) return everyOne({ why: missing ?? '' })
  const worst = worstLugs(bench, at)
  if (!worst) return everyOne(UNPRESSED)
  const limits = { bearing: bearingLimits, tearOut: shearLimits, section: tensionLimits } as const
  const found = (kind: keyof LugStrength): Strength => {
    const { state, asked, stresses } = worst[kind]
    const checked = { limits: limits[kind](material, stresses[kind], factors), steps: stepsOf(kind, asked) }
    return foundAt(checked, { state, part: part.id }, `material ${material.name}`)
  }
  return { bearing: found('bearing'), tearOut: found('tearOut'), section: found('section') }
}

function everyOne(one: Strength): LugStrength {
  return { bearing: one, tearOut: one, section: one }
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (partWidth(part) === undefined) return `parts.${part.id} states no thickness`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure edges on` : undefined
}

function stepsOf(kind: keyof LugStrength, { force_N, edge_mm, width_mm }: LugAsked) {
  const force = { name: 'force of the pin', value: force_N, unit: 'N' } as const
  if (kind === 'tearOut')
    return [force, { name: 'from the hole’s middle to the edge ahead', value: edge_mm, unit: 'mm' }] as const
  if (kind === 'section') return [force, { name: 'across the force, from edge to edge', value: width_mm, unit: 'mm' }] as const
  return [force]
}

interface LugState {
  readonly state: Pressed
  readonly asked: LugAsked
  readonly stresses: Lug
}

/**
 * The states with the largest stress of each kind; undefined where nothing presses the part there.
 *
 * The most pressed state is measured first, then those with the largest bounds: by their force, and by a lower bound of the material in its
 * direction. Another is measured only where its bound is worse than what was found.
 */
function worstLugs({ mechanism, states }: StrengthBench, at: LugHole): Record<keyof LugStrength, LugState> | undefined {
  const part = mechanism.design.parts[at.part]
  const joints = jointsAt(mechanism, at)
  const squares = squaresThrough(joints, states)
  const most = mostPressed(squares)
  if (most === undefined) return undefined
  const hole = { part, at, joints, table: edgeTableAt(part, at.hole) }
  const first = lugUnder(hole, states[most])
  let worst: Record<keyof LugStrength, LugState> = { bearing: first, tearOut: first, section: first }
  const rest = boundedStates(hole, states, { squares, first })
  for (const { state, tearOut, section } of [...largestOf(rest), ...rest]) {
    if (tearOut <= worst.tearOut.stresses.tearOut && section <= worst.section.stresses.section) continue
    worst = worseOf(worst, lugUnder(hole, state))
  }
  return worst
}

/** A part about one of its holes, with what every state is measured by. */
interface PressedHole {
  readonly part: Part
  readonly at: LugHole
  readonly joints: PinnedJoints
  readonly table: EdgeTable
}

/** A state with stresses that it cannot exceed, MPa. */
interface BoundedState {
  readonly state: Pressed
  readonly tearOut: number
  readonly section: number
}

/** The states that are not beaten by the first in every direction, the last first. */
function boundedStates(
  { part, at, joints, table }: PressedHole,
  states: readonly Pressed[],
  { squares, first }: { readonly squares: Float64Array; readonly first: LugState },
): readonly BoundedState[] {
  const { diameter_mm } = part.holes[at.hole]
  const { thickness_mm } = first.asked
  const nearest_mm = Math.max(0, 2 * leastOfAll(table) - diameter_mm)
  const idle_N2 = (Math.min(first.stresses.tearOut, first.stresses.section) * thickness_mm * nearest_mm) ** 2
  const bounded: BoundedState[] = []
  for (let index = states.length - 1; index >= 0; index--) {
    if (squares[index] <= idle_N2) continue
    const state = states[index]
    const pressure = Math.sqrt(squares[index]) / thickness_mm
    const angle = angleIn(state, at.part, joints)
    const beside_mm = leastReach(table, angle + Math.PI / 2) + leastReach(table, angle - Math.PI / 2)
    const tearOut = overMaterial(pressure, 2 * leastReach(table, angle) - diameter_mm)
    const section = overMaterial(pressure, beside_mm - diameter_mm)
    if (tearOut > first.stresses.tearOut || section > first.stresses.section) bounded.push({ state, tearOut, section })
  }
  return bounded
}

/** Infinite where nothing may be left. */
function overMaterial(pressure: number, material_mm: number): number {
  return material_mm > 0 ? pressure / material_mm : Number.POSITIVE_INFINITY
}

/** Those with the largest bound of either kind; none of none. */
function largestOf(bounded: readonly BoundedState[]): readonly BoundedState[] {
  if (bounded.length === 0) return []
  let [tornOut] = bounded
  let [beside] = bounded
  for (const one of bounded) {
    if (one.tearOut > tornOut.tearOut) tornOut = one
    if (one.section > beside.section) beside = one
  }
  return [tornOut, beside]
}

/** Direction of the force on a part, in its frame, rad. */
function angleIn(state: Pressed, part: number, joints: PinnedJoints): number {
  const { x, y } = forceThrough(joints, state)
  return Math.atan2(y, x) - state.posture[3 * part + 2]
}

function worseOf(before: Record<keyof LugStrength, LugState>, now: LugState): Record<keyof LugStrength, LugState> {
  const { tearOut, section } = before
  return {
    bearing: before.bearing,
    tearOut: now.stresses.tearOut > tearOut.stresses.tearOut ? now : tearOut,
    section: now.stresses.section > section.stresses.section ? now : section,
  }
}

function lugUnder({ part, at, joints }: PressedHole, state: Pressed): LugState {
  const { at: middle, diameter_mm } = part.holes[at.hole]
  const { x: force_x, y: force_y } = forceThrough(joints, state)
  const angle = angleIn(state, at.part, joints)
  const x = Math.cos(angle)
  const y = Math.sin(angle)
  const edge_mm = outlineReach(part.outline, middle, { x, y })
  const width_mm = outlineReach(part.outline, middle, { x: -y, y: x }) + outlineReach(part.outline, middle, { x: y, y: -x })
  const force_N = Math.sqrt(force_x * force_x + force_y * force_y)
  const asked = { force_N, hole_mm: diameter_mm, thickness_mm: partWidth(part) ?? 0, edge_mm, width_mm }
  return { state, asked, stresses: lug(asked) }
}
