/**
 * What the heat of a coating's cure leaves of a hardened material.
 *
 *     log time │ ●
 *              │    ╲                  a table names, for some temperatures, the longest time that costs a known share of the strength;
 *              │      ●───●            between two of them the logarithm of the time runs straight
 *              │            ╲ ●
 *              └──────────────── temperature
 *
 * Below the coolest of them its time is still the longest: that errs to the safe side. Above the hottest nothing is known.
 */
import heatRows from '../../tables/heat.json' with { type: 'json' }
import type { Coating } from '../design/design.ts'
import { readCure } from '../design/read-cure.ts'
import { Reading } from '../design/reading.ts'

type Cure = NonNullable<Coating['cure']>

/** What a material keeps after heat. */
export interface HeatRow {
  readonly material: string
  /** Of its static strengths and of its fatigue strength. */
  readonly keeps_ratio: number
  /** Longest times, by rising temperature. */
  readonly upTo: readonly Cure[]
  readonly source: string
}

/** Rows of the table of heat, by material. A row at fault is our own fault and stops the program. */
export const tableHeat: ReadonlyMap<string, HeatRow> = new Map(
  heatRows.map(({ material, keeps, upTo, source }): [string, HeatRow] => {
    const reading = new Reading({ document: {}, problems: [], isBroken: () => false, brokenPlaces: [] })
    const times = upTo.map((typed) => readCure(material, typed, reading))
    const keeps_ratio = reading.quantity(material, keeps, 'number')
    const [fault] = reading.problems
    if (fault) throw new Error(`table of heat: ${material}: ${fault.found}`)
    return [material, { material, keeps_ratio, upTo: times, source }]
  }),
)

/** Longest time at a temperature, s; undefined above the hottest row. */
export function longestTime(upTo: readonly Cure[], temperature_C: number): number | undefined {
  const hotter = upTo.findIndex((row) => row.temperature_C >= temperature_C)
  if (hotter < 0) return undefined
  const above = upTo[hotter]
  const below = upTo[hotter - 1]
  if (!below) return above.time_s
  const share = (temperature_C - below.temperature_C) / (above.temperature_C - below.temperature_C)
  return below.time_s * (above.time_s / below.time_s) ** share
}

/** Share of its strengths that a material keeps after a cure; undefined where that is not known. */
export function keptAfter(row: HeatRow | undefined, { temperature_C, time_s }: Cure): number | undefined {
  const longest_s = row && longestTime(row.upTo, temperature_C)
  return longest_s !== undefined && time_s <= longest_s ? row?.keeps_ratio : undefined
}
