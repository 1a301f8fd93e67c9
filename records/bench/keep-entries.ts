import type { Database } from 'better-sqlite3'
import type { Problem } from '../../engine/index.ts'
import { designId } from '../design-id.ts'
import { digest } from '../digest.ts'
import { change, rowsOf, tables } from '../query.ts'
import { isRuleBroken } from '../rule-broken.ts'
import { addEntry, type Signature } from './add-entry.ts'
import type { KeptEntries, NewEntries } from './bench-book.ts'
import { type BenchEntry, benchEntry } from './entry-rules.ts'
import { lotNamed, Misfit, type Owner } from './look-up.ts'
import { refuseThereAlready } from './there-already.ts'

/** Which design, what, and the moment. */
export interface EntriesToKeep {
  readonly name: string
  readonly asked: NewEntries
  readonly made: string
}

/** Keeps entries of one design, all or none, within a transaction of the caller. */
export function keepEntries(database: Database, { name, asked, made }: EntriesToKeep): KeptEntries {
  const design = designId(database, name)
  if (design === undefined) return { refused: [notKept(name)] }
  const owner = { database, design }
  const problems: Problem[] = []
  const kept: number[] = []
  const all = database.transaction(() => {
    const { who, engine } = asked
    const sign = { who, engine, made }
    const signed = tried('file', problems, () => ({ ...sign, ...imported(owner, asked, sign) })) ?? sign
    const numbered = new Map<number, number>()
    for (const [index, entry] of asked.entries.entries()) {
      const id = tried(`entry ${index + 1}`, problems, () => addEntry(owner, pointing(fitting(entry), numbered), signed))
      if (id === undefined || entry.kind !== 'reading') continue
      kept.push(id)
      if (entry.number !== undefined) numbered.set(entry.number, id)
    }
    if (problems.length > 0) throw new Undone()
  })
  try {
    all()
  } catch (error) {
    if (!(error instanceof Undone)) throw error
    return { refused: problems }
  }
  return { kept }
}

/** Whatever door an entry comes through, it is held to the rules here. @throws Misfit */
function fitting(entry: BenchEntry): BenchEntry {
  const checked = benchEntry.safeParse(entry)
  if (checked.success) return checked.data
  const [{ path, message }] = checked.error.issues
  throw new Misfit({ code: 'does not fit', found: `${path.join('.')} that ${message}`, needed: 'words and numbers that fit' })
}

/** A reading that corrects one of the same batch is pointed to where that one stands here. */
function pointing(entry: BenchEntry, numbered: ReadonlyMap<number, number>): BenchEntry {
  if (entry.kind !== 'reading' || entry.corrects === undefined) return entry
  return { ...entry, corrects: numbered.get(entry.corrects) ?? entry.corrects }
}

/** Takes back everything of the batch. */
class Undone extends Error {}

function notKept(name: string): Problem {
  const needed = 'a design with a revision that is kept'
  return {
    code: 'not there',
    place: '',
    found: `${name}, of which nothing is kept`,
    needed,
    wayOut: 'Keep a revision of it first.',
  }
}

/** Does one thing; what does not fit becomes a problem at its place. */
function tried<Result>(place: string, problems: Problem[], work: () => Result): Result | undefined {
  try {
    return work()
  } catch (error) {
    const problem = error instanceof Misfit ? error.problem : ruleBroken(error)
    problems.push({ ...problem, place })
    return undefined
  }
}

/** SQLite holds what no program may break; which rule it was is in its own words. */
function ruleBroken(error: unknown): Omit<Problem, 'place'> {
  if (!isRuleBroken(error)) throw error
  return { code: 'against a rule', found: error.message, needed: 'an entry that keeps the rules of the bench book' }
}

/** Notes the file that readings come from. @throws Misfit when its text was taken in before, and counts */
function imported(owner: Owner, { file, entries }: NewEntries, { who, made }: Signature): { readonly import?: number } {
  if (file === undefined) return {}
  const { database } = owner
  const lot = lotNamed(owner, file.lot).id
  const known = freeDigest(owner, { lot, known: digest(file.text) })
  refuseThereAlready(owner, { lot: file.lot, entries })
  change(database, tables.insertInto('imports').values({ lot, file: file.name, digest: known, who, made }))
  return { import: rowsOf(database, importOf({ lot, known }))[0].id }
}

interface KnownText {
  readonly lot: number
  readonly known: string
}

const importOf = ({ lot, known }: KnownText) =>
  tables
    .selectFrom('imports')
    .leftJoin('withdrawals', 'withdrawals.import', 'imports.id')
    .select(['imports.id', 'imports.file', 'imports.who', 'imports.made', 'withdrawals.id as withdrawn'])
    .where('lot', '=', lot)
    .where('digest', '=', known)

/** By what a text is known: one that comes in again after it was taken back by the digest of its digest. @throws Misfit when it counts */
function freeDigest(owner: Owner, text: KnownText): string {
  const [before] = rowsOf(owner.database, importOf(text))
  if (before === undefined) return text.known
  if (before.withdrawn !== null) return freeDigest(owner, { ...text, known: digest(text.known) })
  throw new Misfit({
    code: 'taken in before',
    found: `the text of ${before.file}, taken in on ${before.made.slice(0, 'YYYY-MM-DD'.length)} by ${before.who}`,
    needed: 'a file that was not taken in before',
    wayOut: 'Nothing has to be done: its readings are there. If they came in wrongly, take that import back first.',
  })
}
