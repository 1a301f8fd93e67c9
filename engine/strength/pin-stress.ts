import type { Design, Part } from '../design/design.ts'
import { pinBending, pinShear } from './lug.ts'
import { type PinBeam, type PinPlate, pinBeam } from './pin-beam.ts'

/** Stresses in a pin for one newton of its force, MPa/N. */
export interface PinPerNewton {
  readonly bending: number
  /** Mean over the section. */
  readonly shear: number
}

/** A pin and the part that it goes to from the part that it is fixed in. */
export interface PinReach {
  readonly pin: number
  readonly part: number
}

/** Beams by design, pin and part: a memory, not a state. */
const known = new WeakMap<Design, Map<number, PinBeam | undefined>>()

/**
 * Largest shear force and bending moment of a pin for one newton between a part and the part that the pin is fixed in, N/N and N·mm/N.
 *
 * @returns undefined where one of the two does not say where it lies across the finger
 */
export function pinBeamPerNewton(design: Design, { pin, part }: PinReach): PinBeam | undefined {
  const { parts, pins } = design
  const beams = known.get(design) ?? new Map<number, PinBeam | undefined>()
  known.set(design, beams)
  const key = pin * parts.length + part
  if (!beams.has(key)) beams.set(key, beamBetween(parts[part], parts[pins[pin].fixedIn]))
  return beams.get(key)
}

function beamBetween(part: Part, fixed: Part): PinBeam | undefined {
  if (!part.across?.length || !fixed.across?.length) return undefined
  return pinBeam([...slicesOf(part, 1, false), ...slicesOf(fixed, -1, true)])
}

/** Stresses in a pin for one newton; undefined as its beam is. */
export function pinPerNewton(design: Design, reach: PinReach): PinPerNewton | undefined {
  const { diameter_mm } = design.pins[reach.pin]
  const beam = pinBeamPerNewton(design, reach)
  return beam && { bending: pinBending(beam.moment_Nmm, diameter_mm), shear: pinShear(beam.shear_N, diameter_mm) }
}

function slicesOf({ across = [] }: Part, force_N: number, fixed: boolean): PinPlate[] {
  const width = across.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
  return across.map(({ from_mm, to_mm }) => ({ from_mm, to_mm, x_N: (force_N * (to_mm - from_mm)) / width, y_N: 0, fixed }))
}
