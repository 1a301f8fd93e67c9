/** A hole that its pin pulls again and again: a crack from its side. */
import type { Part } from '../design/design.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import { closingsTogether } from './closings-together.ts'
import { type EdgeTable, edgeTableAt, leastOfAll, leastReach } from './edge-table.ts'
import { life } from './life.ts'
import { lifeLimit, lifeSteps } from './life-limit.ts'
import { feltNotch, pulledHole } from './notch.ts'
import { partWidth } from './part-width.ts'
import { forceThrough, jointsAt, type PinnedJoints, type PinnedPart, type Pressed, squaresThrough } from './pressed.ts'
import { statesByCase } from './states-by-case.ts'
import { foundAt, leastOf, type Strength, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/**
 * The least margin against a crack over the parts that a pin joins, for the closings of the stated life, under the load cases in the shares
 * that the document states; all of them are taken to pull at one place of the hole. The side of a hole goes from nothing to its peak and back; its surface is taken as machined. Fretting under the pin is not counted.
 */
export function lugFatigue(bench: StrengthBench, pin: number): Strength {
  const { parts, pins } = bench.mechanism.design
  return leastOf(
    pins[pin].joins.map(({ part, hole }) => {
      const missing = missingOf(parts[part])
      return missing === undefined ? ofHole(bench, { pin, part, hole }) : { why: missing }
    }),
  )
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (partWidth(part) === undefined) return `parts.${part.id} states no thickness`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure edges on` : undefined
}

interface PinnedHole extends PinnedPart {
  readonly hole: number
}

function ofHole(bench: StrengthBench, at: PinnedHole): Strength {
  const { mechanism, factors } = bench
  const part = mechanism.design.parts[at.part]
  const borne = part.material && life(mechanism.design, part.material, { how: 'pulled', finish: 'machined' })
  if (!borne || 'missing' in borne) return { why: borne?.missing ?? '' }
  const hole = pulledHoleAt(mechanism, at)
  const squares = squaresThrough(hole.joints, bench.states)
  const pulls = [...statesByCase(bench.states).values()].flatMap(
    (ofCase) => worstPull(hole, bench.states, { squares, ofCase }) ?? [],
  )
  if (pulls.length === 0) return UNPRESSED
  const under = pulls.flatMap(({ felt_MPa, state, width_mm }) =>
    felt_MPa === undefined ? [] : { state, width_mm, loadCase: state.loadCase, swing: { most_MPa: felt_MPa, least_MPa: 0 } },
  )
  if (under.length < pulls.length)
    return { why: `the hole takes more than three quarters of what is left of parts.${part.id} about it` }
  const all = closingsTogether(borne, under)
  const { state, width_mm, swing } = all.worst
  const steps = [
    { name: 'width that carries, twice the least reach to an edge', value: width_mm, unit: 'mm' },
    { name: 'stress felt beside the hole', value: swing.most_MPa, unit: 'MPa' },
    ...lifeSteps(borne, all),
  ] as const
  return foundAt({ limits: [lifeLimit(borne, all, factors.yield)], steps }, { state, part: part.id }, '')
}

/** A state with the largest stress beside a hole. */
interface Pull {
  readonly state: Pressed
  /** MPa; undefined where the concentration is not known. */
  readonly felt_MPa: number | undefined
  readonly width_mm: number
}

/** States by their places in the list, with the squares of the force in each, N². */
interface PulledStates {
  readonly squares: Float64Array
  readonly ofCase: Int32Array
}

/**
 * The worst state of one load case; undefined where it does not press. The most pressed is measured first; another only where its force could
 * be worse with the least material of all directions.
 */
function worstPull(hole: HoleInUse, states: readonly Pressed[], { squares, ofCase }: PulledStates): Pull | undefined {
  let most = ofCase[0]
  for (const index of ofCase) if (squares[index] > squares[most]) most = index
  if (!(squares[most] > 0)) return undefined
  let worst = pullIn(hole, states[most])
  for (let place = ofCase.length - 1; place >= 0; place--) {
    if (worst.felt_MPa === undefined) return worst
    const index = ofCase[place]
    if (squares[index] <= (worst.felt_MPa / hole.mostPerNewton) ** 2 || squares[index] === 0) continue
    const now = pullIn(hole, states[index])
    if (now.felt_MPa === undefined || now.felt_MPa > worst.felt_MPa) worst = now
  }
  return worst
}

/** A hole with all that it is measured by in any state. */
interface HoleInUse {
  readonly at: PinnedHole
  readonly part: Part
  readonly joints: PinnedJoints
  readonly table: EdgeTable
  readonly clearance_mm: number
  /** The most that any direction gives for one newton, MPa/N. */
  readonly mostPerNewton: number
}

function pulledHoleAt(mechanism: Mechanism, at: PinnedHole): HoleInUse {
  const part = mechanism.design.parts[at.part]
  const table = edgeTableAt(part, at.hole)
  const clearance_mm = Math.max(0, part.holes[at.hole].diameter_mm - mechanism.design.pins[at.pin].diameter_mm)
  const most = feltPerNewton(part, { hole: at.hole, width_mm: 2 * leastOfAll(table), clearance_mm })
  return { at, part, table, clearance_mm, joints: jointsAt(mechanism, at), mostPerNewton: most ?? Number.POSITIVE_INFINITY }
}

function pullIn({ at, part, joints, table, clearance_mm }: HoleInUse, state: Pressed): Pull {
  const { x, y } = forceThrough(joints, state)
  const angle = Math.atan2(y, x) - state.posture[3 * at.part + 2]
  const beside = Math.min(leastReach(table, angle + Math.PI / 2), leastReach(table, angle - Math.PI / 2))
  const width_mm = 2 * Math.min(leastReach(table, angle), beside)
  const felt = feltPerNewton(part, { hole: at.hole, width_mm, clearance_mm })
  return { state, felt_MPa: felt === undefined ? undefined : felt * Math.sqrt(x * x + y * y), width_mm }
}

interface HoleSide {
  readonly hole: number
  readonly width_mm: number
  readonly clearance_mm: number
}

/** Stress that the material feels beside a hole for one newton, MPa/N; undefined where the concentration is not known. */
function feltPerNewton(part: Part, { hole, width_mm, clearance_mm }: HoleSide): number | undefined {
  const { diameter_mm } = part.holes[hole]
  const concentration = pulledHole({ hole_mm: diameter_mm, width_mm, clearance_mm })
  if (concentration === undefined) return undefined
  const notchLength_mm = part.material?.notchLength_mm ?? 0
  const felt = feltNotch(concentration, { radius_mm: diameter_mm / 2, notchLength_mm })
  return felt / ((width_mm - diameter_mm) * (partWidth(part) ?? 0))
}
