/** Where a centre lies within its round zone, in shares of the zone's radius. */
export interface ZonePlace {
  readonly x: number
  readonly y: number
  /** The zone grows by what the hole is larger than this; absent for a zone without a bonus. */
  readonly leastSize_mm?: number
}

/** Sizes of one set, as they differ from those typed. Places are those of the document. */
export interface OtherSizes {
  /** What is added to the quantity at a place, in the inside unit of its kind; what is computed from a dimension follows it. */
  readonly shifts: ReadonlyMap<string, number>
  /** What stands at a place instead of what is typed there, in the inside unit. */
  readonly values: ReadonlyMap<string, number>
  /** By the place of the hole. */
  readonly zones: ReadonlyMap<string, ZonePlace>
}

/** All sizes as typed. */
export const asTyped: OtherSizes = { shifts: new Map(), values: new Map(), zones: new Map() }
