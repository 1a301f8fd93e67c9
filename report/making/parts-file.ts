/** The parts list as a file of comma-separated values (RFC 4180), to be opened in a spreadsheet. */
import { type Design, partsList } from '../../engine/index.ts'

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

/** One line an item, lines ended as RFC 4180 asks; what is not known stays empty. */
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
  return [HEADING, ...lines].map((cells) => `${cells.map(cellText).join(',')}\r\n`).join('')
}

/** A text that a spreadsheet would take for a formula is set apart by a blank before it. */
function cellText(value: string | number | undefined): string {
  if (value === undefined) return ''
  if (typeof value === 'number') return String(value)
  const text = /^[=+\-@]/.test(value) ? ` ${value}` : value
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
