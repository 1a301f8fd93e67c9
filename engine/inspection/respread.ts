import type { MadeDiameter } from '../variation/sources/diameter.ts'
import type { Source, Variation } from '../variation/sources/source.ts'

/** What is set before the sources of a variation speak: values of its sources in their order, and diameters as made. */
export interface Standing {
  readonly values: Float64Array
  readonly diameters: Map<string, MadeDiameter>
}

/** A source of its own, and where its value goes. */
export interface OwnSource {
  readonly source: Source
  readonly put: (value: number, standing: Standing) => void
}

/** What varies, and what stands still. */
export interface Respread {
  readonly standing: { readonly values: Float64Array; readonly diameters: ReadonlyMap<string, MadeDiameter> }
  /** Places of the sources that go on varying as they did. */
  readonly kept: readonly number[]
  readonly own: readonly OwnSource[]
}

/**
 * A variation of the same design over other sources: some kept, in their order, then some of their own; everything else stands still.
 * What counts samples of a variation counts them of this one.
 */
export function respread(variation: Variation, { standing, kept, own }: Respread): Variation {
  return {
    ...variation,
    sources: [...kept.map((place) => variation.sources[place]), ...own.map(({ source }) => source)],
    setOf: (values) => {
      const now: Standing = { values: standing.values.slice(), diameters: new Map(standing.diameters) }
      for (const [index, place] of kept.entries()) now.values[place] = values[index]
      for (const [index, { put }] of own.entries()) put(values[kept.length + index], now)
      return variation.setOf(now.values, now.diameters)
    },
  }
}
