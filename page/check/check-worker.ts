/// <reference lib="webworker" />
/** Judges the sets of a file of readings apart from the page. */
import { CsvError, parse } from 'csv-parse/browser/esm/sync'
import { inspectionPlan, judgeMeasured, readVariation } from '../../engine/index.ts'
import { readReadings } from '../../report/index.ts'
import type { OpenedReadings } from './readings.ts'

/** Text of a design, and a file of readings. */
export interface CheckAsked {
  readonly text: string
  readonly file: string
  readonly csv: string
}

addEventListener('message', ({ data }: MessageEvent<CheckAsked>) => postMessage(judgedReadings(data)))

function judgedReadings({ text, file, csv }: CheckAsked): OpenedReadings {
  const variation = readVariation(text)
  if (variation.value === undefined) return { file, text, problems: variation.problems }
  const plan = inspectionPlan(variation.value)
  const rows = rowsOf(csv)
  if ('fault' in rows)
    return { file, text, problems: [{ code: 'no table', place: '', found: rows.fault, needed: 'comma-separated values' }] }
  const read = readReadings(rows.rows, plan)
  if (read.sets === undefined) return { file, text, problems: read.problems }
  const sets = read.sets.map(({ serial, readings }) => ({ serial, ...judgeMeasured(variation.value, plan, readings) }))
  return { file, text, sets, passedOver: read.passedOver }
}

function rowsOf(csv: string): { readonly rows: readonly (readonly string[])[] } | { readonly fault: string } {
  try {
    return { rows: parse(csv, { bom: true, delimiter: [',', ';', '\t'], relax_column_count: true }) }
  } catch (error) {
    if (error instanceof CsvError) return { fault: error.message }
    throw error
  }
}
