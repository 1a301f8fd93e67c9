/** What a shop will stumble over, as rows that page and command line share; places with the same fault are one row. */
import type { MakingDoubt } from '../../engine/index.ts'

export interface DoubtRow extends Omit<MakingDoubt, 'place'> {
  readonly places: readonly string[]
}

/** One row for each fault, in the order of its first place. */
export function doubtRows(doubts: readonly MakingDoubt[]): readonly DoubtRow[] {
  const rows = new Map<string, { readonly fault: Omit<MakingDoubt, 'place'>; readonly places: string[] }>()
  for (const { place, ...fault } of doubts) {
    const key = JSON.stringify(fault)
    const known = rows.get(key) ?? { fault, places: [] }
    known.places.push(place)
    rows.set(key, known)
  }
  return [...rows.values()].map(({ fault, places }) => ({ ...fault, places }))
}

/** `a wall of 0.59 mm … Needed: at least 0.8 mm. Move the hole …`: the row in one piece. */
export function doubtText({ places, found, needed, wayOut }: DoubtRow): string {
  return `${places.join(', ')}: ${found}. Needed: ${needed}. ${wayOut}`
}

/** The line that stands where nothing was found: what was looked at is said, so that silence is not taken for more. */
export const nothingDoubted =
  'Nothing was found in inside corners, walls, depths of holes, reamers, bought pins, tapped holes, edges, roughness, racks of coated parts, datums and parts that look alike. What joins the plates of a fork, how parts are clamped and in which order they are cut were not looked at.'
