import type { LotReading } from './bench-book.ts'
import type { BenchEntry } from './entry-rules.ts'
import { lotNamed, Misfit, type Owner } from './look-up.ts'
import { readingsOf } from './readings-of.ts'

/**
 * A file that was written of this very lot would give every reading twice.
 *
 * @throws Misfit when each reading of a file is in the lot already, in the same words, and counts
 */
export function refuseThereAlready(
  owner: Owner,
  { lot, entries }: { readonly lot: string; readonly entries: readonly BenchEntry[] },
): void {
  const readings = entries.flatMap((entry) => (entry.kind === 'reading' ? [entry] : []))
  const there = readingsOf(owner.database, { lot: lotNamed(owner, lot).id })
  const known = new Set(there.filter(({ withdrawn }) => withdrawn === undefined).map(saidWords))
  if (readings.length === 0 || !readings.every((reading) => known.has(saidWords(reading)))) return
  throw new Misfit({
    code: 'taken in before',
    found: 'readings that are all in the lot, in the same words',
    needed: 'readings that it does not have yet',
    wayOut: 'Nothing has to be done. If they were read anew, say the day of each under date.',
  })
}

type Said = Pick<LotReading, 'serial' | 'characteristic' | 'visit'> & {
  readonly [Word in 'found' | 'x' | 'y' | 'by' | 'date']?: string | undefined
}

/** Two readings with the same words; the sign of the decimals is another where a file was written anew. */
function saidWords({ serial, characteristic, visit, found, x, y, by, date }: Said): string {
  const typed = [found, x, y].map((words = '') => words.replaceAll(',', '.'))
  return JSON.stringify([serial, characteristic, visit, typed, by, date])
}
