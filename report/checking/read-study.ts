/** A gauge study from the rows of a table: part, appraiser, found; one reading a row, repeats as further rows. */
import { type Checked, type Problem, readQuantity, type Study } from '../../engine/index.ts'

const COLUMNS = ['part', 'appraiser', 'found'] as const

/** A study with the names of its parts and appraisers, in the order in which they come first. */
export interface NamedStudy {
  readonly study: Study
  readonly parts: readonly string[]
  readonly appraisers: readonly string[]
}

/** @param rows cells as text, the heading first; a number without a unit is in mm */
export function readStudy(rows: readonly (readonly string[])[]): Checked<NamedStudy> {
  const heading = (rows[0] ?? []).map((cell) => cell.trim().toLowerCase())
  const places = COLUMNS.map((column) => heading.indexOf(column))
  if (places.some((place) => place < 0))
    return { problems: [problem('row 1', heading.join(', ') || 'nothing', 'a heading with part, appraiser and found')] }
  const problems: Problem[] = []
  const cells = new Map<string, Map<string, number[]>>()
  const appraisers = new Set<string>()
  for (const [index, row] of rows.slice(1).entries()) {
    if (row.every((cell) => cell.trim() === '')) continue
    const [part, appraiser, found] = places.map((place) => (row[place] ?? '').trim())
    const value = /^[-+]?[\d.]+$/.test(found) ? Number(found) : readQuantity(found, 'length').value
    if (part === '' || appraiser === '' || value === undefined || !Number.isFinite(value)) {
      problems.push(problem(`row ${index + 2}`, row.join(', '), 'a part, an appraiser and a size'))
      continue
    }
    const own = cells.get(part) ?? new Map<string, number[]>()
    own.set(appraiser, [...(own.get(appraiser) ?? []), value])
    cells.set(part, own)
    appraisers.add(appraiser)
  }
  if (problems.length > 0) return { problems }
  const study = [...cells.values()].map((own) => [...appraisers].map((appraiser) => own.get(appraiser) ?? []))
  const uneven = unevenness(study)
  return uneven ? { problems: [uneven] } : { value: { study, parts: [...cells.keys()], appraisers: [...appraisers] } }
}

/** A width as it is typed, in mm; a number without a unit is in mm. @returns undefined for nothing and for what is none */
export function readTolerance(typed: string): number | undefined {
  const text = typed.trim()
  const { value } = readQuantity(/^[\d.]+$/.test(text) ? `${text} mm` : text, 'length')
  return value !== undefined && value > 0 ? value : undefined
}

function unevenness(study: Study): Problem | undefined {
  const repeats = study[0]?.[0]?.length ?? 0
  const needed = 'at least two parts, and every part read equally often, at least twice, by every appraiser'
  if (study.length < 2 || repeats < 2) return problem('table', `${study.length} parts, ${repeats} readings of the first`, needed)
  const isEven = study.every((part) => part.every((own) => own.length === repeats))
  return isEven ? undefined : problem('table', 'parts that were read more often than others', needed)
}

const problem = (place: string, found: string, needed: string): Problem => ({ code: 'wrong value', place, found, needed })
