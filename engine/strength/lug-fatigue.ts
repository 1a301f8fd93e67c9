/** A hole that its pin pulls again and again: a crack from its side. */
import type { Part } from '../design/design.ts'
import { edgeTableAt, leastOfAll, leastReach } from './edge-table.ts'
import { type Borne, fatigueLimit } from './fatigue.ts'
import { life } from './life.ts'
import { feltNotch, pulledHole } from './notch.ts'
import { partWidth } from './part-width.ts'
import { forceThrough, jointsAt, mostPressed, type PinnedPart, type Pressed, squaresThrough } from './pressed.ts'
import { foundAt, leastOf, type Strength, UNPRESSED } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/**
 * The least margin against a crack over the parts that a pin joins, for the closings of the stated life, all under the load case that is
 * worst. The side of a hole goes from nothing to its peak and back; its surface is taken as machined. Fretting under the pin is not counted.
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
  const worst = worstPull(bench, at)
  if (!worst) return UNPRESSED
  const { state, felt_MPa, width_mm } = worst
  if (felt_MPa === undefined)
    return { why: `the hole takes more than three quarters of what is left of parts.${part.id} about it` }
  const swing = { most_MPa: felt_MPa, least_MPa: 0 }
  const steps = [
    { name: 'width that carries, twice the least reach to an edge', value: width_mm, unit: 'mm' },
    { name: 'stress felt beside the hole', value: felt_MPa, unit: 'MPa' },
    { name: 'amplitude borne for the closings of its life', value: (borne as Borne).strength_MPa, unit: 'MPa' },
  ] as const
  return foundAt({ limits: [fatigueLimit(swing, borne, factors.yield)], steps }, { state, part: part.id }, '')
}

/** The state with the largest stress beside a hole. */
interface Pull {
  readonly state: Pressed
  /** MPa; undefined where the concentration is not known. */
  readonly felt_MPa: number | undefined
  readonly width_mm: number
}

/** The most pressed state is measured first; another only where its force could be worse with the least material of all directions. */
function worstPull({ mechanism, states }: StrengthBench, at: PinnedHole): Pull | undefined {
  const part = mechanism.design.parts[at.part]
  const joints = jointsAt(mechanism, at)
  const squares = squaresThrough(joints, states)
  const most = mostPressed(squares)
  if (most === undefined) return undefined
  const table = edgeTableAt(part, at.hole)
  const clearance_mm = Math.max(0, part.holes[at.hole].diameter_mm - mechanism.design.pins[at.pin].diameter_mm)
  const perNewton = (width_mm: number) => feltPerNewton(part, { hole: at.hole, width_mm, clearance_mm })
  const pullIn = (state: Pressed): Pull => {
    const { x, y } = forceThrough(joints, state)
    const angle = Math.atan2(y, x) - state.posture[3 * at.part + 2]
    const beside = Math.min(leastReach(table, angle + Math.PI / 2), leastReach(table, angle - Math.PI / 2))
    const width_mm = 2 * Math.min(leastReach(table, angle), beside)
    const felt = perNewton(width_mm)
    return { state, felt_MPa: felt === undefined ? undefined : felt * Math.hypot(x, y), width_mm }
  }
  const mostPerNewton = perNewton(2 * leastOfAll(table)) ?? Number.POSITIVE_INFINITY
  let worst = pullIn(states[most])
  for (let index = states.length - 1; index >= 0; index--) {
    if (worst.felt_MPa === undefined) return worst
    if (squares[index] <= (worst.felt_MPa / mostPerNewton) ** 2 || squares[index] === 0) continue
    const now = pullIn(states[index])
    if (now.felt_MPa === undefined || now.felt_MPa > worst.felt_MPa) worst = now
  }
  return worst
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
