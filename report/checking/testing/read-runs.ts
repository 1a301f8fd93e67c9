/** Runs and loads of bench tests from the rows of a table: serial, ran, outcome; what ran is a count, or a force in N. */
import { type Checked, type Problem, type Run, readQuantity } from '../../../engine/index.ts'

/** A heading that makes a table one of runs. */
export const isRunsTable = (rows: readonly (readonly string[])[]): boolean =>
  (rows[0] ?? []).some((cell) => cell.trim().toLowerCase() === 'ran')

const FAILED: Readonly<Record<string, boolean>> = { did: false, passed: false, 'did not': true, failed: true }

/** @param rows cells as text, the heading first. @returns every problem by its row, or all runs */
export function readRuns(rows: readonly (readonly string[])[]): Checked<readonly Run[]> {
  const heading = (rows[0] ?? []).map((cell) => cell.trim().toLowerCase())
  if (['serial', 'ran', 'outcome'].some((column) => !heading.includes(column)))
    return { problems: [wrong('row 1', heading.join(', ') || 'nothing', 'a heading with serial, ran and outcome')] }
  const problems: Problem[] = []
  const runs = rows.slice(1).flatMap((row, index): readonly Run[] => {
    if (row.every((cell) => cell.trim() === '')) return []
    const cell = (column: string): string => (row[heading.indexOf(column)] ?? '').trim()
    const reached = Number(cell('ran')) || readQuantity(cell('ran'), 'force').value || Number.NaN
    const failed = FAILED[cell('outcome')]
    const place = `row ${index + 2}`
    if (!(reached > 0 && Number.isFinite(reached)))
      problems.push(wrong(`${place}, ran`, cell('ran') || 'nothing', 'how many cycles were run, or the load, such as 60 N'))
    if (failed === undefined)
      problems.push(wrong(`${place}, outcome`, cell('outcome') || 'nothing', 'did, did not, passed or failed'))
    return failed === undefined ? [] : [{ serial: cell('serial'), reached, failed }]
  })
  if (runs.length === 0 && problems.length === 0) problems.push(wrong('row 2', 'no run', 'at least one'))
  return problems.length > 0 ? { problems } : { value: runs }
}

const wrong = (place: string, found: string, needed: string): Problem => ({ code: 'wrong value', place, found, needed })
