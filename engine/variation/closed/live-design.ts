/**
 * One design whose sizes are written anew for every set, without a document in between.
 *
 *     a set's values ─▶ each number of the design = what it is as drawn + Σ slope × (value − nominal) ─▶ written where it stands
 *
 * A document is read with expressions, so nothing says beforehand that its numbers follow the sources in straight lines. They mostly do: a
 * zone moves a hole along x and y, a film adds to a diameter, friction runs straight from likely to either end. So the slopes are taken from
 * sets that were read in full, one to either side of each source, and the result is tried on further sets that were read in full too. A
 * number that does not follow is named, and whoever asks has to take the long way.
 */
import type { Design } from '../../design/design.ts'
import { randomWords } from '../../numbers/random-words.ts'
import type { Variation } from '../sources/source.ts'
import { type NumberPlace, numberPlaces, valueAt } from './number-places.ts'

/** A design of its own that can be turned into any set. */
export interface LiveDesign {
  /** The same object all along; its numbers are those of the set that was written last, and of nothing else. */
  readonly design: Design
  /** Writes a set. @param values one a source, as `Variation.setOf` takes them */
  readonly write: (values: ArrayLike<number>) => void
}

/** Why the short way does not serve. */
export interface NotStraight {
  readonly why: string
}

/** How far towards its drawn limit a source is moved for its slope. */
const half = 0.5

/** Sets that the straight lines are tried on, and the seed that they are drawn from: which ones they are does not matter. */
const tried_count = 12
const tried_seed = 1

/** Rounding that a number may differ by, against its own size or 1, whichever is larger. */
const rounding_ratio = 1e-13

/** @returns the design as drawn, ready to be written; or why its numbers cannot be */
export function liveDesign(variation: Variation): LiveDesign | NotStraight {
  const nominal = Float64Array.from(variation.sources, (source) => source.nominal)
  const base = variation.setOf(nominal).value
  if (!base) return { why: 'the design as drawn is refused as a set' }
  const places = numberPlaces(base)
  const drawn = places.map(({ holder, key }) => holder[key])
  const moved = places.map((): Slope[] => [])
  for (const [source, { words, least, most }] of variation.sources.entries()) {
    const [down, up] = [least, most].map((end) => stepTo(variation, { nominal, source, end }))
    if (!down || !up) return { why: `${words}: no set can be built half-way to its limits` }
    for (const [index, { path }] of places.entries()) {
      const slope = { source, down: down.slopeOf(path, drawn[index]), up: up.slopeOf(path, drawn[index]) }
      if (slope.down !== 0 || slope.up !== 0) moved[index].push(slope)
    }
  }
  const numbers = places.flatMap((place, index) =>
    moved[index].length > 0 ? [{ place, drawn: drawn[index], slopes: moved[index] }] : [],
  )
  const write = writerOf(numbers, nominal)
  const bent = bentNumber(variation, places, write)
  write(nominal)
  return bent === undefined ? { design: base, write } : { why: `${bent} does not follow the sources in straight lines` }
}

interface Slope {
  readonly source: number
  /** Change of the number with the source below and above what is drawn. */
  readonly down: number
  readonly up: number
}

interface MovedNumber {
  readonly place: NumberPlace
  readonly drawn: number
  readonly slopes: readonly Slope[]
}

interface Step {
  readonly slopeOf: (path: readonly string[], drawn: number) => number
}

interface Stepped {
  readonly nominal: Float64Array
  readonly source: number
  readonly end: number
}

function stepTo({ setOf }: Variation, { nominal, source, end }: Stepped): Step | undefined {
  const values = nominal.slice()
  const step = half * (end - nominal[source])
  values[source] += step
  const set = setOf(values).value
  if (!set) return undefined
  return { slopeOf: (path, drawn) => (step === 0 ? 0 : (valueAt(set, path) - drawn) / step) }
}

/** Flat tables, so that a set is written without a list being made. */
function writerOf(numbers: readonly MovedNumber[], nominal: Float64Array): LiveDesign['write'] {
  const starts = new Int32Array(numbers.length + 1)
  for (const [index, { slopes }] of numbers.entries()) starts[index + 1] = starts[index] + slopes.length
  const all = numbers.flatMap(({ slopes }) => slopes)
  const sources = Int32Array.from(all, ({ source }) => source)
  const downs = Float64Array.from(all, ({ down }) => down)
  const ups = Float64Array.from(all, ({ up }) => up)
  const drawn = Float64Array.from(numbers, (number) => number.drawn)
  const holders = numbers.map(({ place }) => place.holder)
  const keys = numbers.map(({ place }) => place.key)
  return (values) => {
    for (let index = 0; index < drawn.length; index++) {
      let sum = drawn[index]
      for (let at = starts[index]; at < starts[index + 1]; at++) {
        const away = values[sources[at]] - nominal[sources[at]]
        sum += away * (away < 0 ? downs[at] : ups[at])
      }
      holders[index][keys[index]] = sum
    }
  }
}

/** Tries the writer on sets that are read in full. @returns the place of a number that is not as read; undefined where all are */
function bentNumber(variation: Variation, places: readonly NumberPlace[], write: LiveDesign['write']): string | undefined {
  const next = randomWords(tried_seed)
  for (let tried = 0; tried < tried_count; tried++) {
    const values = variation.sources.map(({ least, most, law }) => {
      // A zone allows its disc and not the square about it.
      const share = next() / 2 ** 32
      return law.kind === 'disc' ? (2 * share - 1) * Math.SQRT1_2 : least + share * (most - least)
    })
    const set = variation.setOf(values).value
    if (!set) continue
    write(values)
    const bent = places.find(({ holder, key, path }) => {
      const read = valueAt(set, path)
      return !(Math.abs(holder[key] - read) <= rounding_ratio * Math.max(1, Math.abs(read)))
    })
    if (bent) return bent.path.join('.')
  }
  return undefined
}
