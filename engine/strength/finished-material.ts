/** A material as it is after its part has been coated: softer by the heat of the cure, more easily cracked under a hard skin. */
import oxideRows from '../../tables/oxides.json' with { type: 'json' }
import type { Coating, Material } from '../design/design.ts'
import { Reading } from '../design/reading.ts'
import { keptAfter, tableHeat } from './heat.ts'

interface OxideRow {
  readonly keeps_ratio: number
  readonly thickest_mm: number
  readonly source: string
}

/** What an oxide that grows into a metal leaves of its fatigue strength, by material. */
export const tableOxides: ReadonlyMap<string, OxideRow> = new Map(
  oxideRows.map(({ material, keepsFatigue, thickest, source }): [string, OxideRow] => {
    const reading = new Reading({ document: {}, problems: [], isBroken: () => false, brokenPlaces: [] })
    const keeps_ratio = reading.share(material, keepsFatigue)
    const thickest_mm = reading.quantity(material, thickest, 'length')
    const [fault] = reading.problems
    if (fault) throw new Error(`table of oxides: ${material}: ${fault.found}`)
    return [material, { keeps_ratio, thickest_mm, source }]
  }),
)

/**
 * The allowables of a coated part.
 *
 * @returns the material itself where the coating changes nothing. Where it is not known what is left, the strengths in question are
 *          left out, and the name says what happened to the material: every check then tells what is missing
 */
export function finishedMaterial(material: Material, coating: Coating | undefined): Material {
  if (!coating) return material
  return crackedSooner(softened(material, coating), { coating, bare: material.name })
}

const SECONDS_OF_MINUTE = 60

function softened(material: Material, { cure }: Coating): Material {
  if (!cure) return material
  const row = tableHeat.get(material.name)
  const kept = keptAfter(row, cure)
  if (kept === 1) return material
  const { temperature_C, time_s } = cure
  const name = `${material.name} after ${time_s / SECONDS_OF_MINUTE} min at ${Math.round(temperature_C)} °C`
  return scaled({ ...material, name, source: `${material.source} Heat: ${row?.source ?? 'nothing known.'}` }, kept)
}

const STRENGTHS = ['yield_MPa', 'ultimate_MPa', 'shear_MPa', 'bearingYield_MPa', 'bearingUltimate_MPa', 'fatigue_MPa'] as const

/** With a share of all strengths; without them where the share is not known. */
function scaled(material: Material, kept: number | undefined): Material {
  const stated = Object.entries(material).filter(([key]) => !STRENGTHS.some((strength) => strength === key))
  const left = STRENGTHS.flatMap((key) => {
    const strength = material[key]
    return strength === undefined || kept === undefined ? [] : [[key, kept * strength]]
  })
  return Object.fromEntries([...stated, ...left]) as unknown as Material
}

interface Skin {
  readonly coating: Coating
  /** Name of the material before. */
  readonly bare: string
}

function crackedSooner(material: Material, { coating, bare }: Skin): Material {
  if (material.fatigue_MPa === undefined) return material
  const { kept, source } = keptUnder(coating, bare)
  if (kept === 1) return material
  const { fatigue_MPa, ...rest } = material
  const skinned = { ...rest, name: `${material.name} under ${coating.name}`, source: `${material.source} Skin: ${source}` }
  return kept === undefined ? skinned : { ...skinned, fatigue_MPa: kept * fatigue_MPa }
}

/** Share of the fatigue strength under a coating: as it states, as the table says of an oxide; otherwise nobody knows. */
function keptUnder(
  { keepsFatigue_ratio, inward_ratio, thickness, source }: Coating,
  bare: string,
): { readonly kept: number | undefined; readonly source: string } {
  if (keepsFatigue_ratio !== undefined) return { kept: keepsFatigue_ratio, source }
  const row = inward_ratio > 0 ? tableOxides.get(bare) : undefined
  if (!row || thickness.most_mm > row.thickest_mm) return { kept: undefined, source: 'nothing known.' }
  return { kept: row.keeps_ratio, source: row.source }
}
