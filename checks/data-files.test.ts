import { basename } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDesign } from '../engine/index.ts'
import { projectFiles } from './source-file.ts'

const files = projectFiles()
const designs = files.filter((file) => /^designs\/[^/]+\.json$/.test(file.path))
const tables = files.filter((file) => /^tables\/[^/]+\.json$/.test(file.path))

it('there are designs and tables to check', () => {
  expect(designs.length).toBeGreaterThan(0)
  expect(tables.length).toBeGreaterThan(0)
})

describe('every example design is read without problems and says that it is invented', () => {
  it.each(designs)('$path', ({ path, text }) => {
    const read = readDesign(text, basename(path, '.json'))
    expect(read.problems ?? []).toEqual([])
    expect(read.value?.note).toMatch(/[Ii]nvented/)
  })
})

describe('every row of a table names its source', () => {
  it.each(tables)('$path', ({ text }) => {
    const rows = rowsOf(JSON.parse(text))
    expect(rows.length).toBeGreaterThan(0)
    expect(rows.filter((row) => typeof row.source !== 'string' || row.source.trim().length < 4)).toEqual([])
  })

  it('a row without one is seen', () => {
    expect(rowsOf({ rows: [{ density: 1 }] })[0].source).toBeUndefined()
    expect(rowsOf([{ source: 'x' }])).toHaveLength(1)
  })
})

interface Row {
  readonly source?: unknown
}

/** Rows stand in a list, in the values of an object, or in a list inside of it. */
function rowsOf(table: unknown): readonly Row[] {
  if (Array.isArray(table)) return table
  const values = Object.values(table as object)
  const lists = values.filter(Array.isArray)
  return lists.length > 0 ? lists.flat() : values.filter((value) => typeof value === 'object' && value !== null)
}
