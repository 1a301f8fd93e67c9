import type { Source } from '../sources/source.ts'

/** Share of the way to its upper limit that a source is moved for the slope of the posture. */
const step_ratio = 0.1

/**
 * Where the closed posture of a set about is: as drawn, and moved with each source by its slope. It saves Newton's method half of its
 * derivatives; what it settles to is the same.
 *
 * @param solved the closed posture of a set; undefined where there is none
 * @returns a posture that is overwritten by the next one
 */
export function nearPosture(
  sources: readonly Source[],
  drawn: Float64Array,
  solved: (values: Float64Array) => Float64Array | undefined,
): (values: ArrayLike<number>) => Float64Array {
  const nominal = Float64Array.from(sources, (source) => source.nominal)
  const moving: { readonly source: number; readonly slope: Float64Array }[] = []
  for (const [source, { most }] of sources.entries()) {
    const values = nominal.slice()
    const step = step_ratio * (most - nominal[source])
    values[source] += step
    const slope = solved(values)?.map((value, index) => (value - drawn[index]) / step)
    if (slope?.every(Number.isFinite) && slope.some((value) => value !== 0)) moving.push({ source, slope })
  }
  const near = drawn.slice()
  return (values) => {
    near.set(drawn)
    for (let index = 0; index < moving.length; index++) {
      const { source, slope } = moving[index]
      const away = values[source] - nominal[source]
      for (let column = 3; column < near.length; column++) near[column] += away * slope[column]
    }
    return near
  }
}
