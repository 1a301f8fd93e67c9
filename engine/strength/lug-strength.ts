/** The parts about one pin: pressure in their holes, tearing out to the edge, and the section beside the hole. */
import type { Part } from '../design/design.ts'
import { edgeTable, leastOfAll, leastReach } from './edge-table.ts'
import { type Lug, type LugAsked, lug } from './lug.ts'
import { bearingLimits, shearLimits, tensionLimits } from './material-limits.ts'
import { outlineReach } from './outline-reach.ts'
import { partWidth } from './part-width.ts'
import { forceThrough, jointsAt, type Pressed } from './pressed.ts'
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
    return foundAt(checked, { state, part: part.id }, `material ${material.name} states no strength`)
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
 * A state is measured only where it could be worse than what was found before it: by its force, and by a lower bound of the
 * material in its direction.
 */
function worstLugs({ mechanism, states }: StrengthBench, at: LugHole): Record<keyof LugStrength, LugState> | undefined {
  const part = mechanism.design.parts[at.part]
  const { at: middle, diameter_mm } = part.holes[at.hole]
  const joints = jointsAt(mechanism, at)
  const table = edgeTable(part.outline, middle)
  const nearest_mm = 2 * leastOfAll(table) - diameter_mm
  let worst: Record<keyof LugStrength, LugState> | undefined
  let beaten = { bearing: 0, tearOut: 0, section: 0 }
  /** Below this force nothing can be worse in any direction. N². */
  let idle = 0
  for (const state of states) {
    const { x, y } = forceThrough(joints, state)
    const square = x * x + y * y
    if (square <= idle) continue
    const force_N = Math.sqrt(square)
    const angle = Math.atan2(y, x) - state.posture[3 * at.part + 2]
    const ahead_mm = 2 * leastReach(table, angle) - diameter_mm
    const beside_mm = leastReach(table, angle + Math.PI / 2) + leastReach(table, angle - Math.PI / 2) - diameter_mm
    const isBeaten = force_N <= beaten.bearing && force_N <= beaten.tearOut * ahead_mm && force_N <= beaten.section * beside_mm
    if (isBeaten) continue
    worst = worseOf(worst, lugUnder(part, at, { state, force_N, angle }))
    beaten = beatenBy(worst)
    const least = Math.min(beaten.bearing, Math.min(beaten.tearOut, beaten.section) * Math.max(0, nearest_mm))
    idle = least * least
  }
  return worst
}

/** What a further state has to exceed: its force, and its force over what is left ahead (two planes) or beside. N, N/mm. */
function beatenBy({ bearing, tearOut, section }: Record<keyof LugStrength, LugState>): Record<keyof LugStrength, number> {
  const { thickness_mm, force_N } = bearing.asked
  return {
    bearing: force_N,
    tearOut: tearOut.stresses.tearOut * thickness_mm,
    section: section.stresses.section * thickness_mm,
  }
}

function worseOf(before: Record<keyof LugStrength, LugState> | undefined, now: LugState): Record<keyof LugStrength, LugState> {
  if (!before) return { bearing: now, tearOut: now, section: now }
  const larger = (kind: keyof LugStrength): LugState => (now.stresses[kind] > before[kind].stresses[kind] ? now : before[kind])
  return { bearing: larger('bearing'), tearOut: larger('tearOut'), section: larger('section') }
}

interface LugForce {
  readonly state: Pressed
  readonly force_N: number
  /** Direction in the part's frame. */
  readonly angle: number
}

function lugUnder(part: Part, { hole }: LugHole, { state, force_N, angle }: LugForce): LugState {
  const { at: middle, diameter_mm } = part.holes[hole]
  const x = Math.cos(angle)
  const y = Math.sin(angle)
  const edge_mm = outlineReach(part.outline, middle, { x, y })
  const width_mm = outlineReach(part.outline, middle, { x: -y, y: x }) + outlineReach(part.outline, middle, { x: y, y: -x })
  const asked = { force_N, hole_mm: diameter_mm, thickness_mm: partWidth(part) ?? 0, edge_mm, width_mm }
  return { state, asked, stresses: lug(asked) }
}
