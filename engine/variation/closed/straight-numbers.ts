/**
 * Numbers of a design for any set, without a document in between.
 *
 *     a set's values ─▶ each number = what it is as drawn + Σ slope × (value − nominal)
 *
 * A document is read with expressions, so nothing says beforehand that its numbers follow the sources in straight lines. They mostly do: a
 * zone moves a hole along x and y, a film adds to a diameter, friction runs straight from likely to either end. So the slopes are taken from
 * sets that were read in full, one to either side of each source, and the result is tried on further sets that were read in full too. A
 * number that does not follow is named, and whoever asks has to take the long way.
 */
import type { Design } from '../../design/design.ts'
import { randomWords } from '../../numbers/random-words.ts'
import type { Variation } from '../sources/source.ts'
import { type Slope, type StraightWriter, straightWriter } from './straight-writer.ts'

/** A list of numbers of a design, always the same ones in the same order. */
export interface NumberList {
  readonly read: (design: Design) => readonly number[]
  /** Of the number at an index, e.g. `pin dip: radius`. */
  readonly wordsOf: (index: number) => string
}

/** The list for any set. */
export interface StraightNumbers {
  readonly drawn: Float64Array
  /** Sources that move any of them, by their places. */
  readonly moving: readonly number[]
  /** Values as `Variation.setOf` takes them; the numbers begin as `drawn`. */
  readonly write: StraightWriter
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

/** @returns the numbers as drawn, ready to be written for any set; or why they cannot be */
export function straightNumbers(variation: Variation, list: NumberList): StraightNumbers | NotStraight {
  const nominal = Float64Array.from(variation.sources, (source) => source.nominal)
  const base = variation.setOf(nominal).value
  if (!base) return { why: 'the design as drawn is refused as a set' }
  const drawn = Float64Array.from(list.read(base))
  const slopes = Array.from(drawn, (): Slope[] => [])
  for (const [source, { words, least, most }] of variation.sources.entries()) {
    const [down, up] = [least, most].map((end) => slopesTowards(variation, list, { nominal, drawn, source, end }))
    if (!down || !up) return { why: `${words}: no set can be built half-way to its limits` }
    for (let index = 0; index < drawn.length; index++)
      if (down[index] !== 0 || up[index] !== 0) slopes[index].push({ source, down: down[index], up: up[index] })
  }
  const write = straightWriter({ drawn, slopes, nominal })
  const bent = bentNumber(variation, list, { drawn, write })
  if (bent !== undefined) return { why: `${list.wordsOf(bent)} does not follow the sources in straight lines` }
  const moving = [...new Set(slopes.flatMap((own) => own.map(({ source }) => source)))].sort((one, other) => one - other)
  return { drawn, moving, write }
}

interface Step {
  readonly nominal: Float64Array
  readonly drawn: Float64Array
  readonly source: number
  readonly end: number
}

function slopesTowards({ setOf }: Variation, { read }: NumberList, { nominal, drawn, source, end }: Step) {
  const values = nominal.slice()
  const step = half * (end - nominal[source])
  values[source] += step
  const set = setOf(values).value
  return set && read(set).map((value, index) => (step === 0 ? 0 : (value - drawn[index]) / step))
}

/** Tries the writer on sets that are read in full. @returns a number that is not as read; undefined where all are */
function bentNumber(
  { sources, setOf }: Variation,
  { read }: NumberList,
  { drawn, write }: Pick<StraightNumbers, 'drawn' | 'write'>,
): number | undefined {
  const next = randomWords(tried_seed)
  const written = Array.from(drawn, (value) => Float64Array.of(value))
  for (let tried = 0; tried < tried_count; tried++) {
    const values = sources.map(({ least, most, law }) => {
      // A zone allows its disc and not the square about it.
      const share = next() / 2 ** 32
      return law.kind === 'disc' ? (2 * share - 1) * Math.SQRT1_2 : least + share * (most - least)
    })
    const set = setOf(values).value
    if (!set) continue
    write(
      values.map((value) => Float64Array.of(value)),
      written,
    )
    const bent = read(set).findIndex(
      (value, index) => !(Math.abs(written[index][0] - value) <= rounding_ratio * Math.max(1, Math.abs(value))),
    )
    if (bent >= 0) return bent
  }
  return undefined
}
