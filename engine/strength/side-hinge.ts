/** A hinge that holds a push on the finger's side: its pin bent and sheared, its holes pressed at their edges. */
import type { Design, Material } from '../design/design.ts'
import { pinCentre } from '../motion/mechanism.ts'
import { pinBending, pinShear } from './lug.ts'
import { type Limit, leastMargin } from './margin.ts'
import { bearingLimits, shearLimits, tensionLimits } from './material-limits.ts'
import { partWidth } from './part-width.ts'
import { pinPerNewton } from './pin-stress.ts'
import { sizeAt } from './pressed.ts'
import type { SideHinge } from './side-chain.ts'
import { type SideCouple, sideCouple } from './side-couple.ts'
import { type Leant, type LeantPush, sideMoment } from './side-moment.ts'
import { mostByCase } from './states-by-case.ts'
import { foundAt, leastOf, type Strength, UNLEANT, worse } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/**
 * Margin of the hinge at a pin over all postures in which the finger is leant on.
 *
 * Where the load case acts in the plane too, the largest stress of that is added, as if both stood at one place: the safe side.
 */
export function sideHinge(bench: StrengthBench, leant: readonly Leant[], pin: number): Strength {
  const { design } = bench.mechanism
  let worst: Strength | undefined
  for (const one of leant) {
    const hinge = hingeAt(one.pushes, pin)
    if (!hinge) continue
    const missing = missingOf(design, hinge)
    if (missing !== undefined) return { why: missing }
    worst = worse(worst, underCouple(bench, one, hinge))
  }
  return worst ?? UNLEANT
}

/** The hinge at a pin, with the pushes that go through it. */
interface PushedHinge extends SideHinge {
  readonly pushes: readonly LeantPush[]
}

function hingeAt(pushes: readonly LeantPush[], pin: number): PushedHinge | undefined {
  const through = pushes.filter(({ chain }) => chain.some((hinge) => hinge.pin === pin))
  const hinge = through[0]?.chain.find((one) => one.pin === pin)
  return hinge && { ...hinge, pushes: through }
}

function missingOf({ parts, pins }: Design, { pin, outer, inner }: SideHinge): string | undefined {
  if (!pins[pin].material) return `pins.${pins[pin].id} states no material`
  for (const part of [parts[outer], parts[inner]]) {
    if (!part.material) return `parts.${part.id} states no material`
    if (!part.across?.length) return `parts.${part.id}.across does not say where it lies across the finger`
  }
  return undefined
}

function underCouple(bench: StrengthBench, { state }: Leant, hinge: PushedHinge): Strength {
  const { mechanism } = bench
  const { parts } = mechanism.design
  const { moment, force_N } = sideMoment(hinge.pushes, pinCentre(mechanism, state.posture, hinge.pin))
  const couple_Nmm = Math.hypot(moment.x, moment.y)
  const perCouple = sideCouple(parts[hinge.outer], parts[hinge.inner])
  if (!perCouple) return UNLEANT
  const load = { perCouple, couple_Nmm, inPlane_N: inPlaneForce(bench, state.loadCase, hinge.pin) }
  const found = limitsOf(bench, hinge, load).map(({ material, limits }) => {
    const steps = [
      { name: 'push out of the plane', value: force_N, unit: 'N' },
      { name: 'couple that the hinge holds', value: couple_Nmm, unit: 'N·mm' },
      { name: 'stress that decides', value: leastMargin(limits)?.limit.stress ?? 0, unit: 'MPa' },
    ] as const
    return foundAt({ limits, steps }, { state }, `material ${material.name}`)
  })
  return leastOf(found)
}

/** Largest force in the plane that the same load case puts on a pin, N. */
function inPlaneForce({ mechanism, states }: StrengthBench, loadCase: string, pin: number): number {
  let most = 0
  for (const [joint, { pin: own }] of mechanism.joints.entries()) {
    if (own !== pin) continue
    const pressed = mostByCase(states, joint).get(loadCase)
    if (pressed !== undefined) most = Math.max(most, sizeAt(states[pressed], joint))
  }
  return most
}

interface HingeLoad {
  readonly perCouple: SideCouple
  readonly couple_Nmm: number
  readonly inPlane_N: number
}

interface MaterialAsked {
  readonly material: Material
  readonly limits: readonly Limit[]
}

/** Limits of the pin and of the holes in both parts, by what they are of. */
function limitsOf({ mechanism, factors }: StrengthBench, hinge: SideHinge, load: HingeLoad): readonly MaterialAsked[] {
  const { parts, pins } = mechanism.design
  const { diameter_mm, material } = pins[hinge.pin]
  const { perCouple, couple_Nmm, inPlane_N } = load
  const other = pins[hinge.pin].fixedIn === hinge.inner ? hinge.outer : hinge.inner
  const perN = pinPerNewton(mechanism.design, { pin: hinge.pin, part: other }) ?? { bending: 0, shear: 0 }
  const bent = pinBending(couple_Nmm * perCouple.beam.moment_Nmm, diameter_mm) + inPlane_N * perN.bending
  const sheared = pinShear(couple_Nmm * perCouple.beam.shear_N, diameter_mm) + inPlane_N * perN.shear
  const pressed = (part: number, along_N_mm: number): MaterialAsked => {
    const stress = (couple_Nmm * along_N_mm + inPlane_N / (partWidth(parts[part]) ?? 1)) / diameter_mm
    const ofPart = parts[part].material as Material
    return { material: ofPart, limits: bearingLimits(ofPart, stress, factors) }
  }
  const ofPin = material as Material
  return [
    { material: ofPin, limits: [...tensionLimits(ofPin, bent, factors), ...shearLimits(ofPin, sheared, factors)] },
    pressed(hinge.outer, perCouple.outer_N_mm),
    pressed(hinge.inner, perCouple.inner_N_mm),
  ]
}
