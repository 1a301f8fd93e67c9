import materialRows from '../../tables/materials.json' with { type: 'json' }
import { limits } from '../numbers/limits.ts'
import { parseQuantity } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { FrictionPair, Material } from './design.ts'
import type { Document } from './document.ts'
import type { Reading } from './reading.ts'

function tableValue(text: string, kind: 'density' | 'pressure'): number {
  const read = parseQuantity(text, kind)
  if (read.fault) throw new Error(`table of materials: ${text}: ${read.fault.found}`)
  return read.value
}

/** Rows of the table of materials, by name. */
export const tableMaterials: ReadonlyMap<string, Material> = new Map(
  materialRows.map(({ name, density, modulus, source }) => [
    name,
    { name, density_kg_mm3: tableValue(density, 'density'), modulus_MPa: tableValue(modulus, 'pressure'), source },
  ]),
)

/** Materials of the table and of the document, by name. A row of the table cannot be written over. */
export function readMaterials(reading: Reading): ReadonlyMap<string, Material> {
  const typed = Object.entries(reading.document.materials ?? {})
  const own = typed.map(([name, { density, modulus, source }]): [string, Material] => {
    const place = `materials.${name}`
    if (tableMaterials.has(name)) {
      reading.report({ code: 'wrong key', place, found: `${quoted(name)}, which the table has`, needed: 'a name of its own' })
    }
    return [
      name,
      {
        name,
        density_kg_mm3: reading.above0(`${place}.density`, density, 'density'),
        modulus_MPa: reading.above0(`${place}.modulus`, modulus, 'pressure'),
        source: reading.text(`${place}.source`, source),
      },
    ]
  })
  return new Map([...tableMaterials, ...own])
}

type TypedSpread = NonNullable<Document['friction']>[string]['moving']

/** Friction pairs of the document by name, with least ≤ likely ≤ most and rest no smaller than moving. */
export function readFrictionPairs(reading: Reading): ReadonlyMap<string, FrictionPair> {
  const typed = Object.entries(reading.document.friction ?? {})
  return new Map(
    typed.map(([name, pair]) => {
      const place = `friction.${name}`
      const moving = readSpread(`${place}.moving`, pair.moving, reading)
      const rest = readSpread(`${place}.rest`, pair.rest, reading)
      for (const key of ['least', 'likely', 'most'] as const) {
        if (rest[key] < moving[key]) {
          const found = `${rest[key]} at rest, ${moving[key]} moving`
          reading.report({
            code: 'wrong order',
            place: `${place}.rest.${key}`,
            found,
            needed: 'friction at rest no smaller than moving',
          })
        }
      }
      return [name, { name, moving, rest, source: reading.text(`${place}.source`, pair.source) }]
    }),
  )
}

function readSpread(place: string, typed: TypedSpread, reading: Reading): FrictionPair['moving'] {
  const coefficient = (key: keyof TypedSpread) => {
    const value = reading.atLeast(`${place}.${key}`, typed[key], { kind: 'number', least: 0 })
    if (value > limits.friction) {
      reading.report({
        code: 'too large',
        place: `${place}.${key}`,
        found: String(typed[key]),
        needed: `at most ${limits.friction}`,
      })
    }
    return value
  }
  const spread = { least: coefficient('least'), likely: coefficient('likely'), most: coefficient('most') }
  if (spread.least > spread.likely || spread.likely > spread.most) {
    const found = `${spread.least}, ${spread.likely}, ${spread.most}`
    reading.report({ code: 'wrong order', place, found, needed: 'least ≤ likely ≤ most' })
  }
  return spread
}
