import type { Design, Part } from '../design/design.ts'
import { pinBending, pinShear } from './lug.ts'
import { type PinPlate, pinBeam } from './pin-beam.ts'

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

/**
 * Stresses in a pin for one newton between a part and the part that the pin is fixed in.
 *
 * @returns undefined where one of the two does not say where it lies across the finger
 */
export function pinPerNewton({ pins, parts }: Design, { pin, part }: PinReach): PinPerNewton | undefined {
  const { fixedIn, diameter_mm } = pins[pin]
  if (!parts[part].across?.length || !parts[fixedIn].across?.length) return undefined
  const beam = pinBeam([...slicesOf(parts[part], 1, false), ...slicesOf(parts[fixedIn], -1, true)])
  if (!beam) return undefined
  return { bending: pinBending(beam.moment_Nmm, diameter_mm), shear: pinShear(beam.shear_N, diameter_mm) }
}

function slicesOf({ across = [] }: Part, force_N: number, fixed: boolean): PinPlate[] {
  const width = across.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
  return across.map(({ from_mm, to_mm }) => ({ from_mm, to_mm, x_N: (force_N * (to_mm - from_mm)) / width, y_N: 0, fixed }))
}
