/**
 * What the wire of a spring bears when its stress comes and goes.
 *
 * Two kinds of data. For a number of cycles: the stress from nothing to its most, as a share of the tensile strength S_ut. Without end:
 * amplitude and mean in shear that no size and no strength of spring steel changes (Zimmerli). Both are a point (S_m, S_a), drawn out
 * to a line by Goodman:
 *
 *     S_e = S_a / (1 − S_m/S_u)        S_u = S_ut in bending, 0.67 S_ut in shear
 *
 * Of the rows of cycles the next larger one is taken: nothing is drawn between them. In bending the endless point is that of shear over
 * 0.577 (energy of distortion). Source: Shigley, Mechanical Engineering Design, sections 10-9 to 10-12, from memory.
 */
import { type Wire, wireStrength } from '../design/springs/wire-rows.ts'
import { fatigueLimit, type Swing } from './fatigue.ts'
import type { Limit } from './margin.ts'

/** Ultimate strength in shear over that in tension, for spring wire. */
const SHEAR_OF_TENSILE_ratio = 0.67
/** Strength in shear over that in tension by the energy of distortion, 1/√3. */
const SHEAR_OF_BENDING_ratio = 1 / Math.sqrt(3)

/** How a place of a spring is stressed, and where it is. */
export type Stressing = 'coil bent' | 'coil twisted' | 'hook bent' | 'hook twisted'

/** The wire of a spring and how it is used. */
export interface WireInUse {
  readonly material: Wire
  readonly wire_mm: number
  readonly peened: boolean
  /** Absent: without end. */
  readonly cycles?: number | undefined
}

/** By how much a cycled strength must exceed its stress: the scatter of the data, common practice (Shigley asks for 1.2 or more, from memory). */
export const LIFE_FACTOR = 1.2

/**
 * Limit of a stress that comes and goes.
 *
 * @returns the limit, or what is missing
 */
export function lifeLimit(wire: WireInUse, stressing: Stressing, swing: Swing): Limit | string {
  const tensile = wireStrength(wire.material, wire.wire_mm)
  if (tensile === undefined) return strengthMissing(wire)
  const point = lifePoint(wire, stressing, tensile)
  if (point === undefined) return `the table of wires has no strength of ${wire.material.name}, ${stressing}, ${lifeWords(wire)}`
  const ultimate = isBent(stressing) ? tensile : SHEAR_OF_TENSILE_ratio * tensile
  const strength_MPa = point.amplitude_MPa / (1 - point.mean_MPa / ultimate)
  const limit = fatigueLimit(swing, { strength_MPa, ultimate_MPa: ultimate }, LIFE_FACTOR)
  return { ...limit, material: wire.material, says: `breaks, ${stressing}, ${lifeWords(wire)}` }
}

/** Said where the row of a wire does not hold for its diameter. */
export function strengthMissing({ material, wire_mm }: Pick<WireInUse, 'material' | 'wire_mm'>): string {
  return `the table of wires has no strength of ${material.name} of ${wire_mm} mm`
}

const isBent = (stressing: Stressing) => stressing === 'coil bent' || stressing === 'hook bent'

const lifeWords = ({ cycles }: WireInUse) => (cycles === undefined ? 'used without end' : `used ${Math.round(cycles)} times`)

interface LifePoint {
  readonly amplitude_MPa: number
  readonly mean_MPa: number
}

function lifePoint(wire: WireInUse, stressing: Stressing, tensile_MPa: number): LifePoint | undefined {
  const { cycles, peened, material } = wire
  const row = cycles === undefined ? undefined : sharesOf(wire, stressing).find((one) => one.cycles >= cycles)
  if (row) return { amplitude_MPa: (row.share * tensile_MPa) / 2, mean_MPa: (row.share * tensile_MPa) / 2 }
  if (!material.endless) return undefined
  // Peening does not reach between close coils and into hooks.
  const endless = peened && stressing.startsWith('coil') ? material.endless.peened : material.endless.plain
  const over = isBent(stressing) ? SHEAR_OF_BENDING_ratio : 1
  return { amplitude_MPa: endless.amplitude_MPa / over, mean_MPa: endless.mean_MPa / over }
}

function sharesOf(
  { material, peened }: WireInUse,
  stressing: Stressing,
): readonly { readonly cycles: number; readonly share: number }[] {
  const { cycledBending = [], cycledShear = [], cycledHook = [] } = material
  if (stressing === 'hook bent') return cycledHook.map(({ cycles, bending }) => ({ cycles, share: bending }))
  if (stressing === 'hook twisted') return cycledHook.map(({ cycles, shear }) => ({ cycles, share: shear }))
  const rows = stressing === 'coil bent' ? cycledBending : cycledShear
  return rows.map((row) => ({ cycles: row.cycles, share: peened ? row.peened : row.plain }))
}
