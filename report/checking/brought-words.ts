/** What came of a design when a store was brought in: how many of each. */
export interface CameAlong {
  readonly revisions: number
  readonly lots?: number | undefined
  readonly entries?: number | undefined
}

/** `2 revisions, one lot, 130 entries at the bench`; empty where there are none of them. */
export function cameAlong({ revisions, lots = 0, entries = 0 }: CameAlong): string {
  const counted: readonly (readonly [number, string, string])[] = [
    [revisions, 'one revision', 'revisions'],
    [lots, 'one lot', 'lots'],
    [entries, 'one entry at the bench', 'entries at the bench'],
  ]
  return counted.flatMap(([count, one, many]) => (count === 0 ? [] : [count === 1 ? one : `${count} ${many}`])).join(', ')
}
