/** Columns of a table for the bench book, and how a workshop's own headings are told apart. */

/** In the order in which they are printed. */
export const benchColumns = [
  'serial',
  'characteristic',
  'found',
  'x',
  'y',
  'unit',
  'uncertainty',
  'visit',
  'gauge',
  'by',
  'date',
  'reading',
  'corrects',
  'reason',
] as const
export type BenchColumn = (typeof benchColumns)[number]

/** A row by its columns; empty where nothing stands. */
export type BenchCells = Readonly<Record<BenchColumn, string>>

/** Heading of a column here by the column that it is. */
export type NamedColumns = Partial<Record<BenchColumn, string>>

/** What a column is, for the reader who says which is which. */
export const columnWords: Readonly<Record<BenchColumn, string>> = {
  serial: 'serial number',
  characteristic: 'characteristic',
  found: 'what was read',
  x: 'x of a position',
  y: 'y of a position',
  unit: 'unit',
  uncertainty: 'uncertainty',
  visit: 'visit',
  gauge: 'gauge',
  by: 'who measured',
  date: 'day',
  reading: 'number of the reading',
  corrects: 'number of the one that it corrects',
  reason: 'why it corrects',
}

/** SOURCE trade: words that shops write over their columns. A heading that could be two of them is left to the reader. */
const HEADINGS: Readonly<Record<BenchColumn, readonly string[]>> = {
  serial: ['serial number', 'serial no', 'set', 'set no', 'article', 'sn', 's n', 'piece', 'piece no', 'seriennummer', 'serie'],
  characteristic: [
    'char',
    'char no',
    'characteristic no',
    'characteristic number',
    'no',
    'nr',
    'number',
    'item',
    'balloon',
    'feature',
    'merkmal',
    'maß',
  ],
  found: ['measured', 'measurement', 'value', 'actual', 'result', 'size', 'read', 'wert', 'istmaß', 'messwert'],
  x: ['x found', 'x measured', 'x mm'],
  y: ['y found', 'y measured', 'y mm'],
  unit: ['units', 'einheit'],
  uncertainty: ['plus minus', 'u', 'unsicherheit'],
  visit: ['stage', 'state', 'when', 'zustand'],
  gauge: ['instrument', 'measured with', 'tool', 'gage', 'messmittel'],
  by: ['measured by', 'inspector', 'operator', 'appraiser', 'who', 'name', 'prüfer'],
  date: ['day', 'measured on', 'date measured', 'datum'],
  reading: ['reading no', 'reading number'],
  corrects: ['correction of', 'instead of'],
  reason: ['why', 'grund'],
}

const plain = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/**
 * Which column is likely which, by the headings. Only a guess: whoever brings the table sees it and may say otherwise. A heading of our own name
 * goes before one of a like meaning, and none is taken twice.
 */
export function guessColumns(heading: readonly string[]): NamedColumns {
  const cells = heading.map((cell) => cell.trim())
  const own = benchColumns.flatMap((column) => {
    const found = cells.find((cell) => plain(cell) === column)
    return found === undefined ? [] : [[column, found] as const]
  })
  const named: Partial<Record<BenchColumn, string>> = Object.fromEntries(own)
  for (const column of benchColumns) {
    const free = cells.filter((cell) => !Object.values(named).includes(cell))
    const like = free.find((cell) => HEADINGS[column].includes(plain(cell)))
    if (named[column] === undefined && like !== undefined) named[column] = like
  }
  // A column called reading holds what was read where nothing else does.
  if (named.found === undefined && named.reading !== undefined) {
    const { reading, ...others } = named
    return { ...others, found: reading }
  }
  return named
}

/** Whether the decimals are likely commas: some number under the headings has one, and none has a point. */
export function guessDecimal(rows: readonly (readonly string[])[], named: NamedColumns): 'point' | 'comma' {
  const heading = (rows[0] ?? []).map((cell) => cell.trim())
  const names = [named.found, named.x, named.y, named.uncertainty]
  const sizes = names.flatMap((name) => (name === undefined ? [] : [heading.indexOf(name)]))
  const cells = rows.slice(1).flatMap((row) => sizes.map((index) => row[index] ?? ''))
  const isComma = cells.some((cell) => /\d,\d/.test(cell)) && !cells.some((cell) => /\d\.\d/.test(cell))
  return isComma ? 'comma' : 'point'
}
