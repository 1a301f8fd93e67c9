/**
 * A part bent and pulled in the plane by its own forces, at its weakest section.
 *
 *               ↓ pad          N  along the line, V across it, M about the middle of the cut
 *        ●──────┼───────●      σ = |N| / (b h) + |M| c / I,   τ = 1.5 |V| / (b h),   together after von Mises
 *      pin     cut     pin
 *
 * N, V and M are the sums over what acts beyond the cut. Where the rest of the balance (stops, springs, drive, keeper) may act on both sides
 * of it, the worse of the two is charged: all of it beyond the cut, or none.
 */
import type { Part } from '../design/design.ts'
import { tensionLimits } from './material-limits.ts'
import { type CutPart, jointPlaces, type PartAction, partActions, restPlaces } from './part-actions.ts'
import { cutsOf } from './part-cuts.ts'
import { partWidth } from './part-width.ts'
import { type Pressed, squaresThrough } from './pressed.ts'
import type { Section } from './section.ts'
import { statesByCase } from './states-by-case.ts'
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
  const cutPart = { part, cuts, places: jointPlaces(mechanism, part) }
  let worst: BentCut | undefined
  for (const state of pressingStates(bench, cutPart)) {
    const now = worstCut(cutPart, {
      state,
      actions: partActions(mechanism, state, cutPart),
      sides: sidesIn(bench, cutPart, state),
    })
    if (now && (!worst || now.stress > worst.stress)) worst = now
  }
  if (!worst) return UNPRESSED
  const steps = [
    { name: 'force along the part', value: Math.abs(worst.along_N), unit: 'N' },
    { name: 'bending moment', value: Math.abs(worst.moment_Nmm), unit: 'N·mm' },
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
function pressingStates({ states }: StrengthBench, { places }: CutPart): Iterable<Pressed> {
  const chosen = new Set<Pressed>()
  for (const ofCase of statesByCase(states).values()) {
    for (const { joint } of places) {
      const squares = squaresThrough([{ joint, side: 1 }], states)
      let most = ofCase[0]
      for (const index of ofCase) if (squares[index] > squares[most]) most = index
      if (squares[most] > 0) chosen.add(states[most])
    }
    for (const index of ofCase) if (places.length > 0 && states[index].doing === 'held closed') chosen.add(states[index])
  }
  return chosen
}

/** Sides of a cut that may be summed over: +1 what acts beyond it, −1 what acts before it. */
type Sides = readonly (1 | -1)[]
const BEYOND: Sides = [1]
const BEFORE: Sides = [-1]
const BOTH: Sides = [1, -1]

/** Of each cut the side on which the rest of the balance cannot act, or both where it may be anywhere. */
function sidesIn({ mechanism }: StrengthBench, { part, cuts }: CutPart, { loadCase }: Pressed): readonly Sides[] {
  const { design } = mechanism
  const given = design.loadCases.find(({ id }) => id === loadCase)
  const rest = restPlaces(design, part, given).map((at) => cuts.place(at).along_mm)
  if (rest.length === 0) return cuts.along_mm.map(() => BOTH)
  const first = Math.min(...rest)
  const last = Math.max(...rest)
  return cuts.along_mm.map((cut) => (last <= cut ? BEYOND : first > cut ? BEFORE : BOTH))
}

/** What acts on a part in one state. */
interface Acting {
  readonly state: Pressed
  readonly actions: readonly PartAction[]
  /** Of each cut. */
  readonly sides: readonly Sides[]
}

interface BentCut {
  readonly state: Pressed
  readonly section: Section
  readonly stress: number
  readonly along_N: number
  readonly moment_Nmm: number
}

function worstCut({ cuts }: CutPart, { state, actions, sides }: Acting): BentCut | undefined {
  let worst: BentCut | undefined
  for (const [index, section] of cuts.sections.entries()) {
    for (const side of sides[index]) {
      const { along_N, across_N, moment_Nmm } = heldBy(actions, { cut_mm: cuts.along_mm[index], off_mm: section.off_mm, side })
      const stress = stressOf({ along_N, across_N, moment_Nmm }, section, cuts.width_mm)
      if (!worst || stress > worst.stress) worst = { state, section, stress, along_N, moment_Nmm }
    }
  }
  return worst
}

/** N, V and M of a cut. */
interface Held {
  readonly along_N: number
  readonly across_N: number
  readonly moment_Nmm: number
}

interface CutSide {
  readonly cut_mm: number
  readonly off_mm: number
  readonly side: 1 | -1
}

function heldBy(actions: readonly PartAction[], { cut_mm, off_mm, side }: CutSide): Held {
  let along_N = 0
  let across_N = 0
  let moment_Nmm = 0
  for (const action of actions) {
    const reach = action.along_mm - cut_mm
    if (side * reach <= 0) continue
    along_N += action.along_N
    across_N += action.across_N
    moment_Nmm += reach * action.across_N - (action.off_mm - off_mm) * action.along_N
  }
  return { along_N, across_N, moment_Nmm }
}

/** MPa; infinite where nothing is left of the section. */
function stressOf({ along_N, across_N, moment_Nmm }: Held, section: Section, width_mm: number): number {
  const area = width_mm * section.height_mm
  if (!(area > 0)) return Number.POSITIVE_INFINITY
  const pulled = Math.abs(along_N) / area + (Math.abs(moment_Nmm) * section.reach_mm) / (width_mm * section.stiffness_mm3)
  const sheared = (SHEAR_PEAK_ratio * Math.abs(across_N)) / area
  return Math.sqrt(pulled * pulled + 3 * sheared * sheared)
}

/** Peak over mean shear stress in a rectangle. */
const SHEAR_PEAK_ratio = 1.5
