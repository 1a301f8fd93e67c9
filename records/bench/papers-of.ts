/** Certificates, decisions and sign-offs as they are kept, oldest first, each with the entry that corrects it. */
import type { Database } from 'better-sqlite3'
import { rowsOf, tables } from '../query.ts'
import type { KeptCertificate } from './bench-book.ts'
import { withoutNulls } from './without-nulls.ts'

/** The coater's certificates of a lot. */
export function certificatesOf(database: Database, lot: number): readonly KeptCertificate[] {
  const query = tables
    .selectFrom('certificates')
    .innerJoin('lots', 'lots.id', 'certificates.lot')
    .leftJoin('certificates as later', 'later.corrects', 'certificates.id')
    .selectAll('certificates')
    .select(['lots.name as lot', 'later.id as correctedBy'])
    .where('certificates.lot', '=', lot)
    .orderBy('certificates.id')
  return rowsOf(database, query).map(({ coupons_mm, ...rest }) => ({ ...withoutNulls(rest), coupons_mm: JSON.parse(coupons_mm) }))
}

/** Every decision. */
export const decisionRows = () =>
  tables
    .selectFrom('decisions')
    .leftJoin('decisions as later', 'later.corrects', 'decisions.id')
    .selectAll('decisions')
    .select('later.id as correctedBy')
    .orderBy('decisions.id')

/** Every sign-off. */
export const signOffRows = () =>
  tables
    .selectFrom('sign_offs')
    .innerJoin('lots', 'lots.id', 'sign_offs.lot')
    .leftJoin('articles', 'articles.id', 'sign_offs.article')
    .select(['sign_offs.id', 'lots.name as lot', 'articles.serial', 'statement', 'sign_offs.who', 'sign_offs.made'])
    .orderBy('sign_offs.id')
