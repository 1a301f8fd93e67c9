import type { Variation } from '../sources/source.ts'
import { type Column, columns } from './columns.ts'
import type { HoldBegin, RootGuess } from './hold-room.ts'
import { type Slope, straightWriter } from './straight-writer.ts'

/** How far towards its drawn limit a source is moved for its slope: where the sets mostly are, and less far where that set is not found from the one as drawn. */
const shares = [1 / 2, 1 / 8]

/** Where the sets of a block about close, jam and slip. */
export interface HoldGuess {
  readonly turn: Column
  readonly jam: RootGuesses
  readonly slip: RootGuesses
}

/** As `RootGuess`, of every set. */
export interface RootGuesses {
  readonly margin: Column
  readonly slope: Column
  readonly bend: Column
}

/** Room for the guesses of so many sets. */
export function holdGuess(sets_count: number): HoldGuess {
  const root = (): RootGuesses => {
    const [margin, slope, bend] = columns(3, sets_count)
    return { margin, slope, bend }
  }
  return { turn: new Float64Array(sets_count), jam: root(), slip: root() }
}

/** Share of a number below which it is not worth while to follow a source in a guess. */
const telling_ratio = 1e-4

/**
 * Guesses from the design as drawn, moved with each source by its slope. It saves trials; what they settle to is the same.
 *
 * @param solved the begin of a set, found; undefined where it is not, and that source is then left out
 */
export function holdGuesser(
  { sources }: Variation,
  solved: (values: Float64Array) => HoldBegin | undefined,
): (values: readonly Column[], out: HoldGuess) => void {
  const nominal = Float64Array.from(sources, (source) => source.nominal)
  const drawn = numbersOf(solved(nominal))
  const slopes = Array.from(drawn, (): Slope[] => [])
  const slopesTowards = (source: number, end: number): readonly number[] => {
    const numbersAt = (step: number): Float64Array =>
      step === 0 ? new Float64Array(0) : numbersOf(solved(nominal.map((value, at) => (at === source ? value + step : value))))
    const steps = shares.map((share) => share * (end - nominal[source]))
    for (const step of steps) {
      const found = numbersAt(step)
      if (found.length > 0)
        return Array.from(drawn, (value, index) => (Number.isFinite(found[index] - value) ? (found[index] - value) / step : 0))
    }
    return Array.from(drawn, () => 0)
  }
  for (const [source, { least, most }] of sources.entries()) {
    const [down, up] = [slopesTowards(source, least), slopesTowards(source, most)]
    for (const [index, own] of slopes.entries())
      if (
        Math.abs(down[index] * (nominal[source] - least)) + Math.abs(up[index] * (most - nominal[source])) >
        telling_ratio * Math.abs(drawn[index])
      )
        own.push({ source, down: down[index], up: up[index] })
  }
  const write = straightWriter({ drawn, slopes, nominal })
  return (values, out) => {
    const numbers = columnsOf(out)
    for (const [index, column] of numbers.entries()) column.fill(drawn[index])
    write(values, numbers)
  }
}

function columnsOf({ turn, jam, slip }: HoldGuess): readonly Column[] {
  return [turn, jam.margin, jam.slope, jam.bend, slip.margin, slip.slope, slip.bend]
}

function numbersOf(found: HoldBegin | undefined): Float64Array {
  if (!found) return new Float64Array(0)
  const ofRoot = ({ margin_rad, slope, bend_ratio }: RootGuess): readonly number[] => [margin_rad, slope, bend_ratio]
  return Float64Array.of(found.turn_rad, ...ofRoot(found.jam), ...ofRoot(found.slip))
}

/** The guess of a set that stands alone. */
export function beginOf({ turn, jam, slip }: HoldGuess): HoldBegin {
  const rootOf = ({ margin, slope, bend }: RootGuesses): RootGuess => {
    return { margin_rad: margin[0], slope: slope[0], bend_ratio: bend[0] }
  }
  return { turn_rad: turn[0], jam: rootOf(jam), slip: rootOf(slip) }
}
