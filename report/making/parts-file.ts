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
/** Digits of a number in the file: typed inches come to millimetres with their rounding. */
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
    inFile(size?.diameter_mm),
    inFile(size?.length_mm),
    inFile(mass_kg === undefined ? undefined : mass_kg * GRAMS_PER_KG),
  ])
  return csvText([HEADING, ...lines])
}

function inFile(value: number | undefined): number | undefined {
  return value === undefined ? undefined : Number(value.toPrecision(DIGITS))
}
