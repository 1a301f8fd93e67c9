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
import type { Design, LoadCase, Part } from '../design/design.ts'
import { tensionLimits } from './material-limits.ts'
import { ACTION_ROW, type CutPart, jointPlaces, type PartActions, partActions, restPlaces } from './part-actions.ts'
import { type Cuts, cutsOf } from './part-cuts.ts'
import { partWidth } from './part-width.ts'
import type { Pressed } from './pressed.ts'
import type { Section } from './section.ts'
import { mostByCase, statesByCase } from './states-by-case.ts'
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
  const worst = worstOfCases(bench, { part, cuts, places: jointPlaces(mechanism, part) })
  if (!worst) return UNPRESSED
  const { along_N, moment_Nmm } = worst.held
  const steps = [
    { name: 'force along the part', value: Math.abs(along_N), unit: 'N' },
    { name: 'bending moment', value: Math.abs(moment_Nmm), unit: 'N·mm' },
    { name: 'height of the weakest section', value: worst.section.height_mm, unit: 'mm' },
  ] as const
  const limits = tensionLimits(own.material, worst.stress, factors)
  return foundAt({ limits, steps }, { state: worst.state, part: own.id }, `material ${own.material.name}`)
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (partWidth(part) === undefined) return `parts.${part.id} states no thickness`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure sections on` : undefined
}

/** The worst cut of a part over all load cases. */
function worstOfCases({ mechanism, states }: StrengthBench, of: CutPart): BentCut | undefined {
  let worst: BentCut | undefined
  for (const [id, ofCase] of statesByCase(states)) {
    const loadCase = mechanism.design.loadCases.find((one) => one.id === id)
    const sides = sidesUnder(mechanism.design, of, loadCase)
    for (const state of pressingStates(states, ofCase, of)) {
      const now = worstCut(of.cuts, { actions: partActions(mechanism, state, { of, loadCase }), sides })
      if (!worst || now.stress > worst.stress) worst = { ...now, state }
    }
  }
  return worst
}

/** Of a load case the state with the largest force in each joint of a part, and all in which it is held closed. */
function pressingStates(states: readonly Pressed[], ofCase: Int32Array, { places }: CutPart): Iterable<Pressed> {
  const chosen = new Set<Pressed>()
  for (const { joint } of places) {
    const most = mostByCase(states, joint).get(states[ofCase[0]].loadCase)
    if (most !== undefined) chosen.add(states[most])
  }
  if (places.length === 0) return chosen
  for (let place = 0; place < ofCase.length; place++) {
    const state = states[ofCase[place]]
    if (state.doing === 'held closed') chosen.add(state)
  }
  return chosen
}

/** Sides of a cut that may be summed over: +1 what acts beyond it, −1 what acts before it. */
type Sides = readonly (1 | -1)[]
const BEYOND: Sides = [1]
const BEFORE: Sides = [-1]
const BOTH: Sides = [1, -1]

/** Of each cut the side on which the rest of the balance cannot act, or both where it may be anywhere. */
function sidesUnder(design: Design, { part, cuts }: CutPart, loadCase: LoadCase | undefined): readonly Sides[] {
  const rest = restPlaces(design, part, loadCase).map((at) => cuts.place(at).along_mm)
  if (rest.length === 0) return cuts.along_mm.map(() => BOTH)
  const first = Math.min(...rest)
  const last = Math.max(...rest)
  return cuts.along_mm.map((cut) => (last <= cut ? BEYOND : first > cut ? BEFORE : BOTH))
}

/** What acts on a part in one state. */
interface Acting {
  readonly actions: PartActions
  /** Of each cut. */
  readonly sides: readonly Sides[]
}

/** A cut with what it holds. */
interface LoadedCut {
  readonly section: Section
  readonly stress: number
  readonly held: Held
}

type BentCut = LoadedCut & { readonly state: Pressed }

function worstCut(cuts: Cuts, { actions, sides }: Acting): LoadedCut {
  let stress = -1
  let index = 0
  let side: 1 | -1 = 1
  for (let cut = 0; cut < cuts.sections.length; cut++) {
    for (const one of sides[cut]) {
      const now = stressOf(heldBy(cuts, actions, { cut, side: one }), cuts.sections[cut], cuts.width_mm)
      if (now <= stress) continue
      stress = now
      index = cut
      side = one
    }
  }
  return { section: cuts.sections[index], stress, held: heldBy(cuts, actions, { cut: index, side }) }
}

/** N, V and M of a cut. */
interface Held {
  readonly along_N: number
  readonly across_N: number
  readonly moment_Nmm: number
}

/** A cut by its place in the list, and the side that is summed over. */
interface CutSide {
  readonly cut: number
  readonly side: 1 | -1
}

function heldBy({ along_mm, sections }: Cuts, actions: PartActions, { cut, side }: CutSide): Held {
  const cut_mm = along_mm[cut]
  const { off_mm } = sections[cut]
  let along_N = 0
  let across_N = 0
  let moment_Nmm = 0
  for (let row = 0; row < actions.length; row += ACTION_ROW) {
    const reach = actions[row] - cut_mm
    if (side * reach <= 0) continue
    along_N += actions[row + 2]
    across_N += actions[row + 3]
    moment_Nmm += reach * actions[row + 3] - (actions[row + 1] - off_mm) * actions[row + 2]
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
