import materialRows from '../../tables/materials.json' with { type: 'json' }
import { limits } from '../numbers/limits.ts'
import { parseQuantity } from '../numbers/quantity.ts'
import { quoted } from '../numbers/quote.ts'
import type { FrictionPair, Material } from './design.ts'
import type { Document } from './document.ts'
import type { Reading } from './reading.ts'

function tableValue(text: string, kind: 'density' | 'pressure' | 'length'): number {
  const read = parseQuantity(text, kind)
  if (read.fault) throw new Error(`table of materials: ${text}: ${read.fault.found}`)
  return read.value
}

type Strengths = Pick<
  Material,
  'yield_MPa' | 'ultimate_MPa' | 'shear_MPa' | 'bearingYield_MPa' | 'bearingUltimate_MPa' | 'fatigue_MPa'
>

/** The strengths of a row under the names of the document. */
const STRENGTHS = {
  yield: 'yield_MPa',
  ultimate: 'ultimate_MPa',
  shear: 'shear_MPa',
  bearingYield: 'bearingYield_MPa',
  bearingUltimate: 'bearingUltimate_MPa',
  fatigue: 'fatigue_MPa',
} as const

interface MaterialRow {
  readonly name: string
  readonly density: string
  readonly modulus: string
  readonly poisson?: number | undefined
  readonly yield?: string | undefined
  readonly ultimate?: string | undefined
  readonly shear?: string | undefined
  readonly bearingYield?: string | undefined
  readonly bearingUltimate?: string | undefined
  readonly fatigue?: string | undefined
  readonly fatigueCycles?: number | undefined
  readonly notchLength?: string | undefined
  readonly source: string
}

/** Strengths of a row, each read by the reader of its owner. */
function strengthsOf(
  row: Pick<MaterialRow, keyof typeof STRENGTHS>,
  read: (key: keyof typeof STRENGTHS, typed: string) => number,
): Strengths {
  const found = Object.entries(STRENGTHS).flatMap(([key, name]) => {
    const typed = row[key as keyof typeof STRENGTHS]
    return typed === undefined ? [] : [[name, read(key as keyof typeof STRENGTHS, typed)]]
  })
  return Object.fromEntries(found)
}

/** Rows of the table of materials, by name. */
export const tableMaterials: ReadonlyMap<string, Material> = new Map(
  (materialRows as readonly MaterialRow[]).map((row) => {
    const { name, density, modulus, poisson, fatigueCycles, notchLength, source } = row
    const strengths = strengthsOf(row, (_, typed) => tableValue(typed, 'pressure'))
    const stiffness = { density_kg_mm3: tableValue(density, 'density'), modulus_MPa: tableValue(modulus, 'pressure') }
    const plain = {
      ...(poisson !== undefined && { poisson }),
      ...(fatigueCycles !== undefined && { fatigueCycles_count: fatigueCycles }),
      ...(notchLength !== undefined && { notchLength_mm: tableValue(notchLength, 'length') }),
    }
    return [name, { name, ...stiffness, ...plain, ...strengths, source }]
  }),
)

/** Materials of the table and of the document, by name. A row of the table cannot be written over. */
export function readMaterials(reading: Reading): ReadonlyMap<string, Material> {
  const typed = Object.entries(reading.document.materials ?? {})
  const own = typed.map(([name, row]): [string, Material] => {
    const place = `materials.${name}`
    if (tableMaterials.has(name)) {
      reading.report({ code: 'wrong key', place, found: `${quoted(name)}, which the table has`, needed: 'a name of its own' })
    }
    return [name, ownMaterial(name, row, reading)]
  })
  return new Map([...tableMaterials, ...own])
}

function ownMaterial(name: string, row: NonNullable<Document['materials']>[string], reading: Reading): Material {
  const place = `materials.${name}`
  const strengths = strengthsOf(row, (key, typed) => reading.above0(`${place}.${key}`, typed, 'pressure'))
  const { yield_MPa, ultimate_MPa } = strengths
  if (yield_MPa !== undefined && ultimate_MPa !== undefined && yield_MPa > ultimate_MPa) {
    const found = `${row.yield} at yield, ${row.ultimate} at most`
    reading.report({
      code: 'wrong order',
      place: `${place}.ultimate`,
      found,
      needed: 'an ultimate strength no smaller than yield',
    })
  }
  return {
    name,
    density_kg_mm3: reading.above0(`${place}.density`, row.density, 'density'),
    modulus_MPa: reading.above0(`${place}.modulus`, row.modulus, 'pressure'),
    ...(row.poisson !== undefined && { poisson: poissonOf(place, row.poisson, reading) }),
    ...strengths,
    ...fatigueOf(place, row, reading),
    source: reading.text(`${place}.source`, row.source),
  }
}

/** Cycles and notch length; a fatigue strength without its cycles, or cycles without their strength, say nothing. */
function fatigueOf(
  place: string,
  { fatigue, fatigueCycles, notchLength }: NonNullable<Document['materials']>[string],
  reading: Reading,
): Pick<Material, 'fatigueCycles_count' | 'notchLength_mm'> {
  if ((fatigue === undefined) !== (fatigueCycles === undefined)) {
    const [has, lacks] = fatigue === undefined ? ['fatigueCycles', 'fatigue'] : ['fatigue', 'fatigueCycles']
    reading.report({ code: 'missing', place: `${place}.${lacks}`, found: `${has} alone`, needed: `${lacks} beside it` })
  }
  const cycles = fatigueCycles === undefined ? undefined : readCycles(`${place}.fatigueCycles`, fatigueCycles, reading)
  return {
    ...(cycles !== undefined && { fatigueCycles_count: cycles }),
    ...(notchLength !== undefined && { notchLength_mm: reading.above0(`${place}.notchLength`, notchLength, 'length') }),
  }
}

function readCycles(place: string, typed: string | number, reading: Reading): number {
  const value = reading.above0(place, typed, 'number')
  if (value < limits.fatigueCyclesLeast) {
    const needed = `at least ${limits.fatigueCyclesLeast}: below that the static strengths decide`
    reading.report({ code: 'too small', place, found: String(typed), needed })
  }
  return value
}

/** A material that keeps its volume has 0.5; no solid of this trade has less than 0. */
function poissonOf(place: string, typed: string | number, reading: Reading): number {
  const value = reading.atLeast(`${place}.poisson`, typed, { kind: 'number', least: 0 })
  if (value > 0.5) reading.report({ code: 'too large', place: `${place}.poisson`, found: String(typed), needed: 'at most 0.5' })
  return value
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
