import { limits } from '../numbers/limits.ts'
import type { Json } from './json-text.ts'
import type { Problem } from './problem.ts'

const bounds: readonly (readonly [place: string, most: number])[] = [
  ['dimensions', limits.dimensions],
  ['materials', limits.materials],
  ['coatings', limits.coatings],
  ['friction', limits.frictionPairs],
  ['wearRates', limits.wearRates],
  ['parts', limits.parts],
  ['pins', limits.pins],
  ['stops', limits.stops],
  ['springs', limits.springs],
  ['screws', limits.screws],
  ['loadCases', limits.loadCases],
  ['toggles', limits.toggles],
  ['requirements', limits.requirements],
  ['grease', limits.greasePoints],
  ['orders', limits.orders],
  ['bought', limits.boughtItems],
  ['demands', limits.demands],
  ['benchTests', limits.benchTests],
  ['risks', limits.risks],
]

const boundsOfPart: typeof bounds = [
  ['holes', limits.holesOfPart],
  ['edges', limits.edgesOfPart],
  ['pads', limits.padsOfPart],
  ['outline', limits.outlinePoints],
  ['across', limits.acrossOfPart],
]

const entriesOf = (json: Json | undefined): readonly (readonly [string, Json])[] =>
  typeof json === 'object' && json !== null ? Object.entries(json) : []

/** Things of which there are more than the program takes on. With any of these nothing more of the file is read. */
export function tooManyThings(json: Json): readonly Problem[] {
  const document = new Map(entriesOf(json))
  const parts = entriesOf(document.get('parts'))
  return [
    ...tooManyIn(document, '', bounds),
    ...parts.flatMap(([id, part]) => tooManyIn(new Map(entriesOf(part)), `parts.${id}.`, boundsOfPart)),
  ].slice(0, limits.problems)
}

function tooManyIn(sections: ReadonlyMap<string, Json>, place: string, most: typeof bounds): readonly Problem[] {
  return most.flatMap(([section, bound]) => {
    const count = entriesOf(sections.get(section)).length
    return count > bound ? [{ code: 'too many', place: place + section, found: `${count}`, needed: `at most ${bound}` }] : []
  })
}
