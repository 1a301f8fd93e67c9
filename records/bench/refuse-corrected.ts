import { statementOf } from '../query.ts'
import type { BenchTables } from './bench-tables.ts'
import { Misfit, type Owner } from './look-up.ts'

/** Each entry is corrected once, so that of a chain of corrections the last one stands. @throws Misfit when another corrects it already */
export function refuseCorrected(
  { database }: Owner,
  { table, id }: { readonly table: keyof BenchTables; readonly id: number },
): void {
  const later = statementOf(database, `select id from ${table} where corrects = ?`).get(id) as { readonly id: number } | undefined
  if (later === undefined) return
  throw new Misfit({
    code: 'corrected before',
    found: `a correction of ${id}, which ${later.id} corrects already`,
    needed: 'the newest of its corrections',
    wayOut: `Correct ${later.id}.`,
  })
}
