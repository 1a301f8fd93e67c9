import type { Use } from './design.ts'

/** A year of wear; the leap day is far inside of how well anybody knows the closings of a day. */
const DAYS_A_YEAR = 365

/** Closings over the life that the design states, each with its way back. */
export function closingsOver({ closingsPerDay, years }: Use): number {
  return closingsPerDay * DAYS_A_YEAR * years
}

/** Years in which that many closings are made. */
export function yearsOf({ closingsPerDay }: Use, closings: number): number {
  return closings / (closingsPerDay * DAYS_A_YEAR)
}
