/** What every search for a spring goes through: wires, diameters, turns. */
import type { CoiledWire } from '../../design/springs/coil.ts'
import { usualDiameters_mm, type Wire, wireStrength, wires } from '../../design/springs/wire-rows.ts'
import type { Strength } from '../strength.ts'

/** Below an index of 4 a coil strains its tools, above 12 it is limp and tangles: common practice of the trade, no published source. */
export const INDEX_RANGE = { least: 4, most: 12 } as const
/** Turns of a body: fewer are mostly ends, more are no spring for a finger. */
const TURNS_RANGE = { least: 2, most: 60 } as const
/** Turns of a torsion spring go up by quarters: its legs point somewhere. */
export const QUARTER = 0.25
/** Turns of the others go up by halves. */
export const HALF = 0.5
/** Diameters of coils are stated to a tenth of a millimetre. */
const TENTHS = 10

/** A wire of a diameter that is sold, and whose strength is known. */
export interface SoldWire {
  readonly material: Wire
  readonly wire_mm: number
  readonly peened: false
}

/** All wires of the table in all diameters that are sold. */
export function soldWires(): readonly SoldWire[] {
  return wires.flatMap((material) =>
    usualDiameters_mm
      .filter((wire_mm) => wireStrength(material, wire_mm) !== undefined)
      .map((wire_mm) => ({ material, wire_mm, peened: false as const })),
  )
}

/** A coil by its turns. */
export interface Coil {
  readonly turns: number
  readonly mean_mm: number
}

/**
 * Coils of a wire that lie between two diameters.
 *
 * @param meanFor mean diameter of the coil that has the rate with so many turns, mm; it falls as turns grow
 */
export function coilsBetween(
  { wire_mm }: SoldWire,
  room: { readonly inside_mm: number; readonly outside_mm: number; readonly step: number },
  meanFor: (turns: number) => number,
): readonly Coil[] {
  const least = Math.max(room.inside_mm + wire_mm, INDEX_RANGE.least * wire_mm)
  const most = Math.min(room.outside_mm - wire_mm, INDEX_RANGE.most * wire_mm)
  const found: Coil[] = []
  for (let turns: number = TURNS_RANGE.least; turns <= TURNS_RANGE.most; turns += room.step) {
    const mean_mm = Math.round(meanFor(turns) * TENTHS) / TENTHS
    if (mean_mm < least) break
    if (mean_mm <= most) found.push({ turns, mean_mm })
  }
  return found
}

/** The least margin of some checks; undefined where one is open. */
export function leastOfChecks(checks: readonly (Strength | undefined)[]): number | undefined {
  let least = Number.POSITIVE_INFINITY
  for (const check of checks) {
    if (check?.margin) least = Math.min(least, check.margin.value)
    else if (check !== undefined && !check.spared) return undefined
  }
  return least
}

/** What is left of the room around a coil, mm; a coil as wide as its room leaves nothing, whatever the last digit says. */
export function leftAround({ mean_mm, wire_mm }: CoiledWire, outside_mm: number): number {
  return Math.max(0, (outside_mm - mean_mm - wire_mm) / 2)
}
