// SOURCE property (whatever a file holds, it gives readings or problems, and never a fault; what is written is read again)
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { guessColumns, guessDecimal } from './bench-columns.ts'
import { readBenchTable } from './bench-table.ts'
import { farOutsideRows } from './far-outside.ts'
import { fileRows, tableRows } from './table-rows.ts'
import { plan } from './test-support/small-plan.ts'

/** What stands in tables of readings, and what should not. */
const SNIPPETS = [
  ...['serial', 'characteristic', 'found', 'x', 'y', 'unit', 'visit', 'date', 'reading', 'corrects', 'reason', '__proto__'],
  ...[',', ';', '\t', '\n', '\r\n', '\r', '"', '""', "'", '\ufeff', ' ', '\u0000', '\u2028'],
  ...['A-001', '1', '2', '2.997', '2,997', '3.004 to 3.006', '1e999', '-0.003', '=1+1', '+1', '@x', '0.118 in', 'NaN', '../..'],
  ...['before coating', '2031-02-30', '9999999999', 'mm', 'N', '9'.repeat(400), '('.repeat(50)],
]
const text = fc.oneof(
  fc.array(fc.constantFrom(...SNIPPETS), { maxLength: 40 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .array(fc.array(fc.constantFrom(...SNIPPETS), { maxLength: 8 }), { maxLength: 6 })
    .map((rows) =>
      ['serial;characteristic;found;x;y;unit;reading;corrects;reason', ...rows.map((row) => row.join(';'))].join('\n'),
    ),
)

describe('any text', () => {
  it('gives readings or problems', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const { value, problems } = tableRows(typed)
        const rows = value ?? []
        const named = guessColumns(rows[0] ?? [])
        const table = { rows, named, decimal: guessDecimal(rows, named) }
        const read = readBenchTable(table, { plan, gauges: [{ gauge: 'A-001', uncertainty_mm: 0.01 }] })
        farOutsideRows(read.rows)
        expect(value === undefined ? problems.length : read.problems.length + read.rows.length).toBeGreaterThan(0)
      }),
      { numRuns: 1000, seed: 41_207 },
    )
  })

  it('and any bytes are a table or refused', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const { value, problems } = fileRows(bytes)
        expect((value === undefined) === (problems !== undefined)).toBe(true)
      }),
      { numRuns: 300, seed: 41_207 },
    )
  })
})
