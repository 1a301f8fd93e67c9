/** A pin under the largest forces of its joints: shear and bending, from where its parts lie across the finger. */
import type { Design, Part } from '../design/design.ts'
import type { Mechanism } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'
import { pinBending, pinShear } from './lug.ts'
import { shearLimits, tensionLimits } from './material-limits.ts'
import { type PinBeam, type PinPlate, pinBeam } from './pin-beam.ts'
import { pinBeamPerNewton } from './pin-stress.ts'
import { forceThrough, jointsAt, mostPressed, type Pressed, sizeAt, squaresThrough } from './pressed.ts'
import { foundAt, type Strength, UNPRESSED, worse } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

export interface PinStrength {
  readonly shear: Strength
  readonly bending: Strength
}

/**
 * Shear and bending of a pin, the least margins over all states.
 *
 * A pin of two parts is bent in proportion to its one force, so the state with the largest decides; of a pin of more parts those with the
 * largest force of each joint are looked at.
 */
export function pinStrength(bench: StrengthBench, pin: number): PinStrength {
  const { mechanism, states } = bench
  const missing = missingOf(mechanism.design, pin)
  if (missing !== undefined) return { shear: { why: missing }, bending: { why: missing } }
  let worst: PinStrength | undefined
  for (const [joint, { pin: own }] of mechanism.joints.entries()) {
    const most = own === pin ? mostPressed(squaresThrough([{ joint, side: 1 }], states)) : undefined
    const state = most === undefined ? undefined : states[most]
    const beam = state && beamIn(mechanism, state, joint)
    if (!beam) continue
    const now = underBeam(bench, pin, { beam, state })
    worst = { shear: worse(worst?.shear, now.shear), bending: worse(worst?.bending, now.bending) }
  }
  return worst ?? { shear: UNPRESSED, bending: UNPRESSED }
}

function missingOf({ parts, pins }: Design, pin: number): string | undefined {
  const { material, joins, id } = pins[pin]
  if (!material) return `pins.${id} states no material`
  const unplaced = joins.find(({ part }) => (parts[part].across?.length ?? 0) === 0)
  return unplaced && `parts.${parts[unplaced.part].id}.across does not say where it lies across the finger`
}

function underBeam(
  { mechanism, factors }: StrengthBench,
  pin: number,
  { beam, state }: { beam: PinBeam; state: Pressed },
): PinStrength {
  const { material, diameter_mm } = mechanism.design.pins[pin]
  const none = { why: 'it states no material' }
  if (!material) return { shear: none, bending: none }
  const owner = `material ${material.name}`
  const shear_MPa = pinShear(beam.shear_N, diameter_mm)
  const bending_MPa = pinBending(beam.moment_Nmm, diameter_mm)
  const shear = {
    limits: shearLimits(material, shear_MPa, factors),
    steps: [
      { name: 'largest shear force', value: beam.shear_N, unit: 'N' },
      { name: 'shear stress', value: shear_MPa, unit: 'MPa' },
    ],
  } as const
  const bending = {
    limits: tensionLimits(material, bending_MPa, factors),
    steps: [
      { name: 'largest bending moment', value: beam.moment_Nmm, unit: 'N·mm' },
      { name: 'bending stress', value: bending_MPa, unit: 'MPa' },
    ],
  } as const
  return { shear: foundAt(shear, { state }, owner), bending: foundAt(bending, { state }, owner) }
}

/** The pin of a joint in one state: in proportion to the force where it joins two parts, else by what all of them give it. */
function beamIn(mechanism: Mechanism, state: Pressed, joint: number): PinBeam | undefined {
  const { pin, b } = mechanism.joints[joint]
  if (mechanism.design.pins[pin].joins.length > 2) return pinBeam(platesOf(mechanism, state, pin))
  const perNewton = pinBeamPerNewton(mechanism.design, { pin, part: b })
  const force_N = sizeAt(state, joint)
  return perNewton && { shear_N: force_N * perNewton.shear_N, moment_Nmm: force_N * perNewton.moment_Nmm }
}

/** What every slice of the joined parts gives to the pin: the opposite of what the part takes from it, spread by width. */
function platesOf(mechanism: Mechanism, state: Pressed, pin: number): PinPlate[] {
  const { pins, parts } = mechanism.design
  return pins[pin].joins.flatMap(({ part }) =>
    slicesOf(parts[part], forceThrough(jointsAt(mechanism, { pin, part }), state), part === pins[pin].fixedIn),
  )
}

function slicesOf({ across = [] }: Part, taken: Vector, fixed: boolean): PinPlate[] {
  const width = across.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
  return across.map(({ from_mm, to_mm }) => {
    const share = -(to_mm - from_mm) / width
    return { from_mm, to_mm, x_N: share * taken.x, y_N: share * taken.y, fixed }
  })
}
