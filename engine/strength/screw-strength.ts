/**
 * A screw turned in with a torque: does it stretch for good, does its thread strip, does the joint open?
 *
 *     F = T / (K d)      least and largest by the scatter of the torque      K stated, or from the friction in thread and under the head
 *     proof       (F_most + P) / A_t   against the proof stress of its class, of which three quarters are used
 *     stripping   (F_most + P) / (A_s L)   against the shear strength of the part, and of the screw over its own threads
 *     opening     F_least   against the pull P of the load
 *
 * P is charged in full to the screw; a stiff joint takes most of it off. The first threads bear more than the last: the factor on breaking
 * stands for it. Source: Shigley, Mechanical Engineering Design, chapter 8, from memory.
 */
import type { Part } from '../design/design.ts'
import type { Screw } from '../design/screws/screw.ts'
import type { Factors } from './factors.ts'
import { type Limit, leastMargin } from './margin.ts'
import { stressArea, strippingAreas, torqueCoefficient } from './screw.ts'
import { type Strength, type StrengthStep, UNPRESSED } from './strength.ts'

/** A screw that is turned in again and again is stretched to three quarters of its proof load: common practice (Shigley, section 8-9, from memory). */
const PROOF_FACTOR = 4 / 3
/** Strength in shear over that in tension by the energy of distortion, 1/√3. */
const SHEAR_OF_TENSILE_ratio = 1 / Math.sqrt(3)

/** The checks of a screw; `separation` only where the load pulls at it. */
export interface ScrewChecks {
  readonly proof: Strength
  readonly stripping: Strength
  readonly separation?: Strength
}

/** Preload of a screw, N: as its torque says, and as little or as much as that may be. */
export interface Preload {
  readonly torque_ratio: number
  readonly least_N: number
  readonly likely_N: number
  readonly most_N: number
}

/** Preload of each screw from its torque. */
export function preloadOf({ thread, torque_Nmm, turning, scatter_ratio }: Screw): Preload {
  const torque_ratio = turning.kind === 'coefficient' ? turning.torque_ratio : torqueCoefficient(thread, turning)
  const likely_N = torque_Nmm / (torque_ratio * thread.diameter_mm)
  return { torque_ratio, least_N: (1 - scatter_ratio) * likely_N, likely_N, most_N: (1 + scatter_ratio) * likely_N }
}

/** All checks of a screw. @param pull_N of the load at each of them; why it is not known; undefined where it does not hold the mount */
export function screwStrength(screw: Screw, part: Part, { factors, pull }: Pulled): ScrewChecks {
  const preload = preloadOf(screw)
  const pull_N = typeof pull === 'number' ? pull : 0
  const tension_N = preload.most_N + pull_N
  const steps: readonly StrengthStep[] = [
    { name: 'torque over preload and diameter', value: preload.torque_ratio, unit: '1' },
    { name: 'likely preload', value: preload.likely_N, unit: 'N' },
    { name: 'largest preload', value: preload.most_N, unit: 'N' },
    { name: 'pull of the load', value: pull_N, unit: 'N' },
  ]
  if (typeof pull === 'string') return { proof: { why: pull }, stripping: { why: pull }, separation: { why: pull } }
  return {
    proof: proofOf(screw, tension_N, steps),
    stripping: strippingOf(screw, part, { tension_N, factors, steps }),
    ...(pull !== undefined && { separation: separationOf(preload, { pull_N, factors }) }),
  }
}

interface Pulled {
  readonly factors: Factors
  readonly pull: number | string | undefined
}

function proofOf({ thread, class: of }: Screw, tension_N: number, steps: readonly StrengthStep[]): Strength {
  const area_mm2 = stressArea(thread)
  return found(
    [
      {
        says: 'is stretched for good',
        stress: tension_N / area_mm2,
        allowable: of.proof_MPa,
        material: of,
        factor: PROOF_FACTOR,
      },
    ],
    steps,
  )
}

function strippingOf(
  { thread, class: of, engagement_mm }: Screw,
  { id, material }: Part,
  {
    tension_N,
    factors,
    steps,
  }: { readonly tension_N: number; readonly factors: Factors; readonly steps: readonly StrengthStep[] },
): Strength {
  if (!material) return { why: `parts.${id} states no material` }
  const { tensile_MPa } = of
  const shear = material.shear_MPa
  if (shear === undefined) return { why: `material ${material.name} states no strength in shear` }
  const { internal_mm, external_mm } = strippingAreas(thread)
  const needed =
    (factors.ultimate * tension_N) / Math.min(internal_mm * shear, external_mm * SHEAR_OF_TENSILE_ratio * tensile_MPa)
  const limits: readonly Limit[] = [
    {
      says: 'strips the thread of its part',
      stress: tension_N / (internal_mm * engagement_mm),
      allowable: shear,
      material,
      factor: factors.ultimate,
    },
    {
      says: 'strips its own thread',
      stress: tension_N / (external_mm * engagement_mm),
      allowable: SHEAR_OF_TENSILE_ratio * tensile_MPa,
      material: of,
      factor: factors.ultimate,
    },
  ]
  return found(limits, [...steps, { name: 'engagement needed', value: needed, unit: 'mm' }])
}

/** A joint that nothing pulls at stays closed. */
function separationOf(
  { least_N }: Preload,
  { pull_N, factors }: { readonly pull_N: number; readonly factors: Factors },
): Strength {
  const steps: readonly StrengthStep[] = [{ name: 'least preload', value: least_N, unit: 'N' }]
  return found([{ says: 'lets its joint open', stress: pull_N, allowable: least_N, factor: factors.yield, unit: 'N' }], steps)
}

function found(limits: readonly Limit[], steps: readonly StrengthStep[]): Strength {
  const margin = leastMargin(limits)
  return margin && Number.isFinite(margin.value) ? { margin, steps } : UNPRESSED
}
