/** A typed bound such as 0.12 in has been turned into mm and back: what differs by so little stands at the bound. */
const rounding_ratio = 1e-9

/** Bounds of the bands of a row, in ascending order. */
export function bounds(row: object): readonly string[] {
  return Object.keys(row).sort((one, other) => Number(one) - Number(other))
}

/** The band that a size lies in, named by its upper bound, which belongs to it; undefined above the last. */
export function band(size: number, of: readonly string[]): string | undefined {
  return of.find((bound) => size <= Number(bound) * (1 + rounding_ratio))
}
