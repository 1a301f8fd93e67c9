import type { Insertable } from 'kysely'
import { inspectionPlan, readVariation } from '../../engine/index.ts'
import { rowsOf, statementOf, tables } from '../query.ts'
import { revisionNumbered } from '../revisions.ts'
import type { BenchTables } from './bench-tables.ts'
import type { BenchEntry, EntryOf } from './entry-rules.ts'
import { refuseUnknownRisks } from './field-log.ts'
import { articleNamed, articleOf, gaugeNamed, lotNamed, Misfit, notThere, type Owner } from './look-up.ts'
import { refuseCorrected } from './refuse-corrected.ts'
import { refuseUnknownFigure } from './tested-figure.ts'
import { openPlace, withdrawalRow } from './withdrawal.ts'

/** Who makes an entry and when, by which engine a plan is frozen, and the import that readings belong to. */
export interface Signature {
  readonly who: string
  readonly made: string
  readonly engine: string
  readonly import?: number
}

/** Adds one entry, within a transaction of the caller. @returns its number in its table. @throws Misfit when it names what is not there */
export function addEntry(owner: Owner, entry: BenchEntry, sign: Signature): number {
  const signed = { who: sign.who, made: sign.made }
  switch (entry.kind) {
    case 'gauge': {
      const { kind: _, gauge, corrects = null, reason = null, ...rest } = entry
      return insert(owner, 'gauges', { name: gauge, ...rest, corrects, reason, ...signed })
    }
    case 'lot':
      return addLot(owner, entry, sign)
    case 'article':
      return addArticle(owner, entry, sign)
    case 'reading':
      return insert(owner, 'readings', { ...readingRow(owner, entry), ...signed, import: sign.import ?? null })
    case 'certificate':
      return insert(owner, 'certificates', { ...certificateRow(owner, entry), ...signed })
    case 'test':
      return insert(owner, 'bench_tests', { ...testRow(owner, entry), ...signed })
    case 'decision': {
      const { kind: _, serial, characteristic = null, corrects = null, reason = null, ...rest } = entry
      const about = { article: articleOf(owner, serial), characteristic }
      return insert(owner, 'decisions', { ...about, ...rest, corrects, reason, ...signed })
    }
    case 'withdrawal':
      return insert(owner, 'withdrawals', { ...withdrawalRow(owner, entry), ...signed })
    case 'field':
      return insert(owner, 'field_log', { ...fieldRow(owner, entry), ...signed })
    case 'sign-off': {
      const article = entry.serial === undefined ? null : articleOf(owner, entry.serial)
      return insert(owner, 'sign_offs', { lot: lotNamed(owner, entry.lot).id, article, statement: entry.statement, ...signed })
    }
  }
}

function insert<Table extends keyof BenchTables>(owner: Owner, table: Table, row: Insertable<BenchTables[Table]>): number {
  const { database } = owner
  if ('corrects' in row && typeof row.corrects === 'number') refuseCorrected(owner, { table, id: row.corrects })
  const { sql, parameters } = tables
    .insertInto(table as never)
    .values(row as never)
    .compile()
  return Number(statementOf(database, sql).run(...parameters).lastInsertRowid)
}

function addLot(owner: Owner, { lot, revision, note }: EntryOf<'lot'>, sign: Signature): number {
  const { database, design } = owner
  freezePlan(owner, { revision, sign })
  const before = tables.selectFrom('lots').select('revision').where('design', '=', design).where('name', '=', lot)
  const [taken] = rowsOf(database, before)
  if (taken !== undefined)
    throw new Misfit({
      code: 'name taken',
      found: `lot ${lot}, which was begun to revision ${taken.revision}`,
      needed: 'another name',
    })
  return insert(owner, 'lots', { design, revision, name: lot, note: note ?? null, who: sign.who, made: sign.made })
}

/** The plan is what the engine of the day makes of the revision; it stays, however the program numbers sizes later. */
function freezePlan(
  { database, design }: Owner,
  { revision, sign }: { readonly revision: number; readonly sign: Signature },
): void {
  const there = tables.selectFrom('plans').select('revision').where('design', '=', design).where('revision', '=', revision)
  if (rowsOf(database, there).length > 0) return
  const text = revisionNumbered(database, { design, number: revision })
  if (text === undefined)
    throw notThere(`revision ${revision}`, 'a revision that is kept', 'Keep what stands as a revision first.')
  const variation = readVariation(text)
  if (variation.value === undefined) {
    const { place: _, ...problem } = variation.problems[0]
    throw new Misfit(problem)
  }
  const plan = JSON.stringify(inspectionPlan(variation.value))
  insert({ database, design }, 'plans', { design, revision, characteristics: plan, engine: sign.engine, made: sign.made })
}

/** A serial number that is in the lot already is left as it is. */
function addArticle(owner: Owner, { lot, serial, piece }: EntryOf<'article'>, { who, made }: Signature): number {
  const { id } = lotNamed(owner, lot)
  const there = articleNamed(owner, serial)
  if (there === undefined)
    return insert(owner, 'articles', { design: owner.design, lot: id, serial, piece: piece ?? null, who, made })
  if (there.lot === id) return there.id
  throw new Misfit({
    code: 'name taken',
    found: `serial ${serial}, which is of another lot`,
    needed: 'a serial number of its own',
  })
}

function readingRow(owner: Owner, entry: EntryOf<'reading'>) {
  const { kind: _, serial, characteristic, visit, value, gauge, by, date, ...typed } = entry
  const { found = null, x = null, y = null, uncertainty = null, corrects = null, reason = null } = typed
  const size = value !== undefined && 'least' in value ? value : { least: null, most: null }
  const at = value !== undefined && 'x_mm' in value ? value : { x_mm: null, y_mm: null, uncertainty_mm: null }
  return {
    ...{ article: articleOf(owner, serial), characteristic, visit, found, x, y, uncertainty, ...size },
    ...{ at_x_mm: at.x_mm, at_y_mm: at.y_mm, uncertainty_mm: at.uncertainty_mm },
    ...{ gauge: gauge === undefined ? null : gaugeNamed(owner, gauge), corrects: corrects && openPlace(owner, corrects), reason },
    ...{ measured_by: by ?? null, measured_on: date ?? null },
  }
}

function certificateRow(owner: Owner, entry: EntryOf<'certificate'>) {
  const { coating, coupons_mm, cure_degC = null, cure_min = null, issued, note = null, corrects = null, reason = null } = entry
  const { id: lot } = lotNamed(owner, entry.lot)
  return { lot, coating, coupons_mm: JSON.stringify(coupons_mm), cure_degC, cure_min, issued, note, corrects, reason }
}

function testRow(owner: Owner, entry: EntryOf<'test'>) {
  const { test, value, outcome, tested, rig, note = null, photo = null, photoFile, corrects = null, reason = null } = entry
  const { figure = null, uncertainty = null } = entry
  if (figure !== null) refuseUnknownFigure(owner, { serial: entry.serial, figure })
  return {
    ...{ article: articleOf(owner, entry.serial), test, value, unit: test === 'cycles' ? ('cycles' as const) : ('N' as const) },
    ...{ figure, uncertainty, outcome, tested, rig, note, photo, photo_type: photoFile?.type ?? null },
    ...{ photo_bytes: photoFile === undefined ? null : Buffer.from(photoFile.base64, 'base64'), corrects, reason },
  }
}

function fieldRow(owner: Owner, { kind: _, serial, risks, contactsIn, ...entry }: EntryOf<'field'>) {
  refuseUnknownRisks(owner, { serial, risks })
  const { found = null, corrects = null, reason = null, ...rest } = entry
  return {
    ...{ article: articleOf(owner, serial), ...rest, found, risks: JSON.stringify(risks) },
    ...{ contacts_in: contactsIn, corrects, reason },
  }
}
