/** Bench tests from the rows of a table: serial, figure, found, uncertainty; a figure by its id or by its title. */
import {
  type BenchTest,
  type Checked,
  type Design,
  type FigureName,
  figureNames,
  nearestName,
  type Problem,
  type QuantityKind,
  readQuantity,
} from '../../engine/index.ts'

/** Kinds of what a rig finds. */
const KINDS: Partial<Record<FigureName['unit'], QuantityKind>> = {
  mm: 'length',
  rad: 'angle',
  N: 'force',
  N·mm: 'couple',
  '1': 'number',
}

/** @param rows cells as text, the heading first. @returns every problem by its row, or all tests */
export function readBenchTests(rows: readonly (readonly string[])[], design: Design): Checked<readonly BenchTest[]> {
  const heading = (rows[0] ?? []).map((cell) => cell.trim().toLowerCase())
  const missing = ['serial', 'figure', 'found'].filter((column) => !heading.includes(column))
  if (missing.length > 0) {
    const found = heading.join(', ') || 'nothing'
    return { problems: [{ code: 'wrong value', place: 'row 1', found, needed: 'a heading with serial, figure and found' }] }
  }
  const names = figureNames(design)
  const read = rows.slice(1).flatMap((row, index) => {
    const cell = (column: string): string => (row[heading.indexOf(column)] ?? '').trim()
    return row.every((one) => one.trim() === '') ? [] : [readTest({ cell, names, place: `row ${index + 2}` })]
  })
  const problems = read.flatMap((one) => ('code' in one ? [one] : []))
  if (problems.length > 0) return { problems }
  return { value: read.flatMap((one) => ('code' in one ? [] : [one])) }
}

interface Row {
  readonly cell: (column: string) => string
  readonly names: readonly FigureName[]
  readonly place: string
}

function readTest({ cell, names, place }: Row): BenchTest | Problem {
  const typed = cell('figure')
  const name = names.find(({ id, title }) => id === typed || title === typed)
  const kind = name && KINDS[name.unit]
  if (!name || !kind) {
    const nearest = nearestName(
      typed,
      names.map(({ id }) => id),
    )
    const wayOut = nearest === undefined ? {} : { wayOut: `Did you mean ${nearest}?` }
    return {
      code: 'unknown name',
      place: `${place}, figure`,
      found: typed || 'nothing',
      needed: 'a figure that a rig can find',
      ...wayOut,
    }
  }
  const [found, uncertainty] = ['found', 'uncertainty'].map((column) => {
    const text = column === 'uncertainty' && cell(column) === '' ? '0' : cell(column)
    return readQuantity(Number(text) === 0 ? `0 ${ZERO[kind] ?? ''}`.trim() : text, kind)
  })
  const [problem] = [found, uncertainty].flatMap(({ problems = [] }) => problems)
  if (found.value === undefined || uncertainty.value === undefined) return { ...problem, place: `${place}, found` }
  return { serial: cell('serial'), figure: name.id, found: found.value, uncertainty: uncertainty.value }
}

/** Units of nothing: 0 needs none when it is typed. */
const ZERO: Partial<Record<QuantityKind, string>> = { length: 'mm', angle: 'deg', force: 'N', couple: 'N*mm' }
