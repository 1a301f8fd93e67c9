import type { Database } from 'better-sqlite3'
import type { Problem } from '../../engine/index.ts'
import { rowsOf, tables } from '../query.ts'

/** A design in the tables. */
export interface Owner {
  readonly database: Database
  readonly design: number
}

/** A problem without its place, thrown where an entry names what is not there. */
export class Misfit extends Error {
  readonly problem: Omit<Problem, 'place'>

  constructor(problem: Omit<Problem, 'place'>) {
    super(problem.found)
    this.problem = problem
  }
}

/** The lot of a name. @throws Misfit when it is not there */
export function lotNamed({ database, design }: Owner, name: string): { readonly id: number; readonly revision: number } {
  const query = tables.selectFrom('lots').select(['id', 'revision']).where('design', '=', design).where('name', '=', name)
  const [found] = rowsOf(database, query)
  if (found === undefined) throw notThere(`lot ${name}`, 'a lot of this design', 'Begin the lot first.')
  return found
}

/** The article of a serial number; undefined when there is none. */
export function articleNamed(
  { database, design }: Owner,
  serial: string,
): { readonly id: number; readonly lot: number } | undefined {
  const query = tables.selectFrom('articles').select(['id', 'lot']).where('design', '=', design).where('serial', '=', serial)
  return rowsOf(database, query)[0]
}

/** The article of a serial number. @throws Misfit when it is not there */
export function articleOf(owner: Owner, serial: string): number {
  const needed = 'a serial number of one of its lots'
  const found = articleNamed(owner, serial)
  if (found === undefined) throw notThere(`serial ${serial}`, needed, 'Enter the serial number into its lot first.')
  return found.id
}

/** The gauge of a name since its last calibration, as that stands. @throws Misfit when it is not there */
export function gaugeNamed({ database }: Owner, name: string): number {
  const query = tables
    .selectFrom('gauges')
    .innerJoin('calibrations', 'calibrations.stands', 'gauges.id')
    .innerJoin('gauges as first', 'first.id', 'calibrations.first')
    .select('gauges.id')
    .where('gauges.name', '=', name)
    .orderBy('first.made', 'desc')
    .orderBy('first.id', 'desc')
    .limit(1)
  const [found] = rowsOf(database, query)
  if (found === undefined) throw notThere(`gauge ${name}`, 'a gauge of the store', 'Enter the gauge first.')
  return found.id
}

/** What is to be thrown where an entry names something that is not there. */
export function notThere(found: string, needed: string, wayOut: string): Misfit {
  return new Misfit({ code: 'not there', found: `${found}, which is not there`, needed, wayOut })
}
