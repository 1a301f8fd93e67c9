/** Threads and classes of screws from the table; sources stand in each row. */
import table from '../../../tables/threads.json' with { type: 'json' }
import { parseQuantity, type QuantityKind } from '../../numbers/quantity.ts'

/** A thread with flanks of 60°, and the limits between which it is cut, mm. */
export interface Thread {
  readonly name: string
  readonly diameter_mm: number
  readonly pitch_mm: number
  /** Basic. */
  readonly pitchDiameter_mm: number
  /** Of the screw: least major and pitch diameters. */
  readonly majorLeast_mm: number
  readonly externalPitchLeast_mm: number
  /** Of the nut: largest minor and pitch diameters. */
  readonly minorMost_mm: number
  readonly internalPitchMost_mm: number
  readonly source: string
}

/** A class of screws. */
export interface ScrewClass {
  readonly name: string
  /** Tension that leaves nothing behind. */
  readonly proof_MPa: number
  readonly tensile_MPa: number
  readonly source: string
}

function tableValue(text: string, kind: QuantityKind): number {
  const read = parseQuantity(text, kind)
  if (read.fault) throw new Error(`table of threads: ${text}: ${read.fault.found}`)
  return read.value
}

const length = (text: string) => tableValue(text, 'length')

/** Threads in the order of the table. */
export const threads: readonly Thread[] = table.threads.map(({ name, diameter, pitch, pitchDiameter, screw, nut, source }) => ({
  name,
  diameter_mm: length(diameter),
  pitch_mm: length(pitch),
  pitchDiameter_mm: length(pitchDiameter),
  majorLeast_mm: length(screw.majorLeast),
  externalPitchLeast_mm: length(screw.pitchLeast),
  minorMost_mm: length(nut.minorMost),
  internalPitchMost_mm: length(nut.pitchMost),
  source,
}))

/** Classes of screws in the order of the table. */
export const screwClasses: readonly ScrewClass[] = table.classes.map(({ name, proof, tensile, source }) => ({
  name,
  proof_MPa: tableValue(proof, 'pressure'),
  tensile_MPa: tableValue(tensile, 'pressure'),
  source,
}))
