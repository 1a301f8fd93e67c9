/** Numbers that follow sources in straight lines, with one bend at most where a source stands as drawn. */

/** How a number follows one source. */
export interface Slope {
  readonly source: number
  /** Change of the number with the source below and above what is drawn. */
  readonly down: number
  readonly up: number
}

export interface StraightLines {
  /** The numbers as drawn. */
  readonly drawn: Float64Array
  /** Of each number, for the sources that move it. */
  readonly slopes: readonly (readonly Slope[])[]
  /** The sources as drawn. */
  readonly nominal: Float64Array
}

/**
 * Writes numbers for any values of the sources; those that nothing moves are left as they stand. Numbers that are equal in every set are
 * worked out once; tables are flat, so that no list is made for a set.
 */
export function straightWriter({
  drawn,
  slopes,
  nominal,
}: StraightLines): (values: ArrayLike<number>, out: Float64Array) => void {
  const rows = new Map<string, number[]>()
  for (const [index, own] of slopes.entries()) {
    if (own.length === 0) continue
    const key = JSON.stringify([drawn[index], own])
    rows.set(key, [...(rows.get(key) ?? []), index])
  }
  const groups = [...rows.values()]
  const starts = startsOf(groups.map(([first]) => slopes[first].length))
  const targetStarts = startsOf(groups.map(({ length }) => length))
  const all = groups.flatMap(([first]) => slopes[first])
  const sources = Int32Array.from(all, ({ source }) => source)
  const downs = Float64Array.from(all, ({ down }) => down)
  const ups = Float64Array.from(all, ({ up }) => up)
  const begins = Float64Array.from(groups, ([first]) => drawn[first])
  const targets = Int32Array.from(groups.flat())
  return (values, out) => {
    for (let row = 0; row < begins.length; row++) {
      let sum = begins[row]
      for (let at = starts[row]; at < starts[row + 1]; at++) {
        const away = values[sources[at]] - nominal[sources[at]]
        sum += away * (away < 0 ? downs[at] : ups[at])
      }
      for (let at = targetStarts[row]; at < targetStarts[row + 1]; at++) out[targets[at]] = sum
    }
  }
}

function startsOf(lengths: readonly number[]): Int32Array {
  const starts = new Int32Array(lengths.length + 1)
  for (const [index, length] of lengths.entries()) starts[index + 1] = starts[index] + length
  return starts
}
