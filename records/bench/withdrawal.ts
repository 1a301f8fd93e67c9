/** An import that is taken back as a whole: the withdrawal is an entry, and its readings stay where they are. */
import { rowsOf, tables } from '../query.ts'
import type { EntryOf } from './entry-rules.ts'
import { Misfit, notThere, type Owner } from './look-up.ts'

/** @throws Misfit when the import is not of this design, or was taken back before */
export function withdrawalRow({ database, design }: Owner, { import: id, reason }: EntryOf<'withdrawal'>) {
  const query = tables
    .selectFrom('imports')
    .innerJoin('lots', 'lots.id', 'imports.lot')
    .leftJoin('withdrawals', 'withdrawals.import', 'imports.id')
    .select(['imports.file', 'withdrawals.who', 'withdrawals.made'])
    .where('imports.id', '=', id)
    .where('lots.design', '=', design)
  const [found] = rowsOf(database, query)
  if (found === undefined) throw notThere(`import ${id}`, 'an import of a lot of this design', 'The list of its lots names them.')
  if (found.who === null) return { import: id, reason }
  throw new Misfit({
    code: 'taken back before',
    found: `import ${id} of ${found.file}, which ${found.who} took back on ${found.made?.slice(0, 'YYYY-MM-DD'.length)}`,
    needed: 'an import that counts',
    wayOut: 'Nothing has to be done: its readings do not count.',
  })
}

/** Where a correction of a reading goes: behind corrections that were taken back with their import, so that each entry still has one. */
export function openPlace(owner: Owner, reading: number): number {
  const query = tables
    .selectFrom('readings')
    .innerJoin('withdrawals', 'withdrawals.import', 'readings.import')
    .select('readings.id')
    .where('readings.corrects', '=', reading)
  const [withdrawn] = rowsOf(owner.database, query)
  return withdrawn === undefined ? reading : openPlace(owner, withdrawn.id)
}
