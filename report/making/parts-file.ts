/** The parts list as a file of comma-separated values (RFC 4180), to be opened in a spreadsheet. */
import { type Design, partsList } from '../../engine/index.ts'
import { csvText } from './csv-text.ts'

const HEADING = [
  'number',
  'kind',
  'id',
  'title',
  'per finger',
  'per set',
  'material',
  'coating',
  'diameter mm',
  'length mm',
  'mass g',
]
const GRAMS_PER_KG = 1000
/** Digits that a weighed part has in a file. */
const DIGITS = 6

/** One line an item; what is not known stays empty. */
export function partsFile(design: Design): string {
  const { items, perSet_count } = partsList(design)
  const lines = items.map(({ number, kind, id, title, perFinger_count, material, coating, size, mass_kg }) => [
    number,
    kind,
    id,
    title,
    perFinger_count,
    perFinger_count * perSet_count,
    material,
    coating,
    size?.diameter_mm,
    size?.length_mm,
    mass_kg === undefined ? undefined : Number((mass_kg * GRAMS_PER_KG).toPrecision(DIGITS)),
  ])
  return csvText([HEADING, ...lines])
}
