import coatingRows from '../../tables/coatings.json' with { type: 'json' }
import { quoted } from '../numbers/quote.ts'
import type { Coating } from './design.ts'
import type { Document } from './document.ts'
import { readCure } from './read-cure.ts'
import { Reading } from './reading.ts'

type TypedCoating = NonNullable<Document['coatings']>[string]

/** Rows of the table of coatings, by name. A row at fault is our own fault and stops the program. */
export const tableCoatings: ReadonlyMap<string, Coating> = new Map(
  (coatingRows as readonly (TypedCoating & { readonly name: string })[]).map((row) => {
    const reading = new Reading({ document: {}, problems: [], isBroken: () => false, brokenPlaces: [] })
    const coating = coatingOf(row.name, row, reading)
    const [fault] = reading.problems
    if (fault) throw new Error(`table of coatings: ${row.name}: ${fault.found}`)
    return [row.name, coating]
  }),
)

/** Coatings of the table and of the document, by name. A row of the table cannot be written over. */
export function readCoatings(reading: Reading): ReadonlyMap<string, Coating> {
  const own = Object.entries(reading.document.coatings ?? {}).map(([name, row]): [string, Coating] => {
    if (tableCoatings.has(name)) {
      const found = `${quoted(name)}, which the table has`
      reading.report({ code: 'wrong key', place: `coatings.${name}`, found, needed: 'a name of its own' })
    }
    return [name, coatingOf(name, row, reading)]
  })
  return new Map([...tableCoatings, ...own])
}

/** The coating of that name; undefined when it has been reported. */
export function coatingNamed(
  place: string,
  name: string,
  { reading, coatings }: { readonly reading: Reading; readonly coatings: ReadonlyMap<string, Coating> },
): Coating | undefined {
  const coating = coatings.get(name)
  if (!coating && !reading.wasTakenOut(`coatings.${name}`)) {
    reading.unknownName(place, { typed: name, what: 'a coating of the table or of coatings', known: [...coatings.keys()] })
  }
  return coating
}

function coatingOf(name: string, row: TypedCoating, reading: Reading): Coating {
  const place = `coatings.${name}`
  return {
    name,
    thickness: thicknessOf(`${place}.thickness`, row.thickness, reading),
    inward_ratio: row.inward === undefined ? 0 : reading.share(`${place}.inward`, row.inward),
    bore_ratio: row.bore === undefined ? 1 : partOf(`${place}.bore`, row.bore, reading),
    ...(row.keepsFatigue !== undefined && { keepsFatigue_ratio: partOf(`${place}.keepsFatigue`, row.keepsFatigue, reading) }),
    ...(row.cure && { cure: readCure(`${place}.cure`, row.cure, reading) }),
    source: reading.text(`${place}.source`, row.source),
  }
}

function thicknessOf(place: string, typed: TypedCoating['thickness'], reading: Reading): Coating['thickness'] {
  if ('nominal' in typed) {
    const nominal_mm = reading.above0(`${place}.nominal`, typed.nominal, 'length')
    const within_ratio = reading.share(`${place}.within`, typed.within)
    return { least_mm: nominal_mm * (1 - within_ratio), most_mm: nominal_mm * (1 + within_ratio) }
  }
  const least_mm = reading.atLeast(`${place}.from`, typed.from, { kind: 'length', least: 0 })
  const most_mm = reading.above0(`${place}.to`, typed.to, 'length')
  if (least_mm > most_mm) {
    const found = `from ${typed.from} to ${typed.to}`
    reading.report({ code: 'wrong order', place, found, needed: 'from no larger than to' })
  }
  return { least_mm, most_mm }
}

/** A share that leaves something and adds nothing: what gets into a bore, or what is left of a strength. */
function partOf(place: string, typed: string | number, reading: Reading): number {
  const value = reading.above0(place, typed, 'number')
  if (value > 1) {
    reading.report({ code: 'too large', place, found: quoted(String(typed)), needed: 'a share of at most 1 (100 %)' })
  }
  return value
}
