/**
 * A part bent and pulled in the plane by its own forces, at its weakest section.
 *
 *               ↓ pad          N  along the line, V across it, M about the middle of the cut
 *        ●──────┼───────●      σ = |N| / (b h) + 6 |M| / (b h²),   τ = 1.5 |V| / (b h),   together after von Mises
 *      pin     cut     pin
 *
 * N, V and M are the sums over what acts beyond the cut. Where the rest of the balance (stops, springs, drive, keeper) may act on both sides
 * of it, the worse of the two is charged: all of it beyond the cut, or none.
 */
import type { Design, Part, Point } from '../design/design.ts'
import { tensionLimits } from './material-limits.ts'
import { jointPlaces, type PartAction, partActions, restPlaces } from './part-actions.ts'
import { type Cuts, cutsOf } from './part-cuts.ts'
import { partWidth } from './part-width.ts'
import type { Pressed } from './pressed.ts'
import type { Axes, Section } from './section.ts'
import { foundAt, type Strength, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/** Margin of a part over its sections, in the states of each load case that press it most: the largest of each of its joints, and closed. */
export function partBending(bench: StrengthBench, part: number): Strength {
  const { mechanism, factors } = bench
  const own = mechanism.design.parts[part]
  const missing = missingOf(own)
  if (missing !== undefined || !own.material) return { why: missing ?? '' }
  const cuts = cutsOf(own)
  if (!cuts) return UNPRESSED
  let worst: BentCut | undefined
  const places = jointPlaces(mechanism, part)
  for (const state of pressingStates(bench, places)) {
    const actions = partActions(mechanism, state, { part, places })
    const now = worstCut(cuts, { state, actions, rest: restOf(mechanism.design, part, state) })
    if (now && (!worst || now.stress > worst.stress)) worst = now
  }
  if (!worst) return UNPRESSED
  const steps = [
    { name: 'force along the part', value: worst.along_N, unit: 'N' },
    { name: 'bending moment', value: worst.moment_Nmm, unit: 'N·mm' },
    { name: 'height of the weakest section', value: worst.section.height_mm, unit: 'mm' },
  ] as const
  const limits = tensionLimits(own.material, worst.stress, factors)
  return foundAt({ limits, steps }, { state: worst.state, part: own.id }, `material ${own.material.name} states no strength`)
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (partWidth(part) === undefined) return `parts.${part.id} states no thickness`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure sections on` : undefined
}

/** Of each load case the state with the largest force in each joint of a part, and all in which it is held closed. */
function pressingStates({ states }: StrengthBench, places: readonly { readonly joint: number }[]): Iterable<Pressed> {
  const chosen = new Set<Pressed>()
  for (const { joint } of places) {
    const most = new Map<string, { readonly state: Pressed; readonly square: number }>()
    for (const state of states) {
      const square = state.forces[2 * joint] ** 2 + state.forces[2 * joint + 1] ** 2
      if (square > (most.get(state.loadCase)?.square ?? 0)) most.set(state.loadCase, { state, square })
      if (state.doing === 'held closed') chosen.add(state)
    }
    for (const { state } of most.values()) chosen.add(state)
  }
  return chosen
}

function restOf(design: Design, part: number, { loadCase }: Pressed): readonly Point[] {
  return restPlaces(
    design,
    part,
    design.loadCases.find(({ id }) => id === loadCase),
  )
}

/** What acts on a part in one state. */
interface Acting {
  readonly state: Pressed
  readonly actions: readonly PartAction[]
  /** Where the rest of its balance can act. */
  readonly rest: readonly Point[]
}

interface BentCut {
  readonly state: Pressed
  readonly section: Section
  readonly stress: number
  readonly along_N: number
  readonly moment_Nmm: number
}

function worstCut(cuts: Cuts, acting: Acting): BentCut | undefined {
  let worst: BentCut | undefined
  for (const section of cuts.sections) {
    for (const side of sidesOf(cuts.axes, section, acting.rest)) {
      const now = bentAt(cuts, section, { acting, side })
      if (!worst || now.stress > worst.stress) worst = now
    }
  }
  return worst
}

const BEYOND = [1] as const
const BEFORE = [-1] as const
const BOTH = [1, -1] as const

/** Sides of a cut that may be summed over: the one without the rest of the balance, or both where it may be anywhere. */
function sidesOf({ along }: Axes, { at }: Section, rest: readonly Point[]): readonly (1 | -1)[] {
  const beyond = rest.filter(({ x_mm, y_mm }) => (x_mm - at.x_mm) * along.x + (y_mm - at.y_mm) * along.y > 0).length
  if (rest.length === 0 || (beyond > 0 && beyond < rest.length)) return BOTH
  return beyond === 0 ? BEYOND : BEFORE
}

interface CutSide {
  readonly acting: Acting
  /** +1 to sum what acts beyond the cut, −1 before it. */
  readonly side: 1 | -1
}

function bentAt({ axes, width_mm }: Cuts, section: Section, { acting, side }: CutSide): BentCut {
  const { along, across } = axes
  const middle_x = section.at.x_mm + section.off_mm * across.x
  const middle_y = section.at.y_mm + section.off_mm * across.y
  let sum_along = 0
  let sum_across = 0
  let moment = 0
  for (const { x_mm, y_mm, x_N, y_N } of acting.actions) {
    const reach = (x_mm - section.at.x_mm) * along.x + (y_mm - section.at.y_mm) * along.y
    if (side * reach <= 0) continue
    sum_along += x_N * along.x + y_N * along.y
    sum_across += x_N * across.x + y_N * across.y
    moment += (x_mm - middle_x) * y_N - (y_mm - middle_y) * x_N
  }
  const area = width_mm * section.height_mm
  const pulled = Math.abs(sum_along) / area + (BENDING_ratio * Math.abs(moment)) / (area * section.height_mm)
  const sheared = (SHEAR_PEAK_ratio * Math.abs(sum_across)) / area
  const stress = area > 0 ? Math.sqrt(pulled ** 2 + 3 * sheared ** 2) : Number.POSITIVE_INFINITY
  return { state: acting.state, section, stress, along_N: Math.abs(sum_along), moment_Nmm: Math.abs(moment) }
}

/** Of a rectangle: σ = 6 M / (b h²), and the peak over the mean of its shear stress. */
const BENDING_ratio = 6
const SHEAR_PEAK_ratio = 1.5
