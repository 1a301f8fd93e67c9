import * as z from 'zod'
import type { Place } from '../json-places.ts'
import { facesOf } from '../masked-faces.ts'
import { tableCoatings } from '../read-coatings.ts'
import { tableMaterials } from '../read-materials.ts'
import { tableWearRates } from '../read-wear-rates.ts'
import type { NamedSection, PartSection } from '../schema-meaning.ts'
import type { Desk } from './desk.ts'
import type { Leaf } from './leaves.ts'
import { entriesOf, valueAt } from './value-at.ts'

/** What may be typed at a leaf that takes one of a few: words of the format, or names of things that the document has. */
export function choicesOf(desk: Desk, { schema, meaning, place }: Leaf): readonly string[] | undefined {
  switch (meaning?.is) {
    case 'name':
      return namesOf(desk, meaning.of)
    case 'partThing':
      return partThings(desk, meaning.of)
    case 'thingOfPart':
      return thingsOf(desk, meaning.of, valueAt(desk.document, [...place.slice(0, -1), 'part']))
    case 'face':
      return facesOf({
        holes: thingsOf(desk, 'holes', place[1]),
        edges: thingsOf(desk, 'edges', place[1]),
        threads: screwsIn(desk, place[1]),
      })
    case 'figure':
      return desk.figures.filter(({ unit }) => unit !== 'words').map(({ id }) => id)
    default:
      return schema instanceof z.ZodEnum ? schema.options.map(String) : undefined
  }
}

function screwsIn({ document }: Desk, part: Place[number]): readonly string[] {
  return entriesOf(valueAt(document, ['screws'])).flatMap(([id, screw]) => (valueAt(screw, ['in']) === part ? [id] : []))
}

function namesOf({ document }: Desk, section: NamedSection): readonly string[] {
  const own = entriesOf(valueAt(document, [section])).map(([name]) => name)
  if (section === 'materials') return [...tableMaterials.keys(), ...own]
  if (section === 'wearRates') return [...tableWearRates.keys(), ...own]
  return section === 'coatings' ? [...tableCoatings.keys(), ...own] : own
}

/** All holes, edges or pads of a document as `part.thing`. */
export function partThings(desk: Desk, of: PartSection): readonly string[] {
  return namesOf(desk, 'parts').flatMap((part) => thingsOf(desk, of, part).map((thing) => `${part}.${thing}`))
}

function thingsOf({ document }: Desk, of: PartSection, part: unknown): readonly string[] {
  return typeof part === 'string' ? entriesOf(valueAt(document, ['parts', part, of])).map(([id]) => id) : []
}
