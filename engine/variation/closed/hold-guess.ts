import type { Variation } from '../sources/source.ts'
import type { HoldBegin, RootGuess } from './hold-room.ts'
import { type Slope, straightWriter } from './straight-writer.ts'

/** How far towards its drawn limit a source is moved for its slope: where the sets mostly are. */
const half = 0.5

/**
 * Where a set about closes, jams and slips: as drawn, and moved with each source by its slope. It saves trials; what they settle to is the
 * same.
 *
 * @param solved the begin of a set, found; undefined where it is not, and that source is then left out
 * @returns what is overwritten by the next one
 */
export function holdGuess(
  { sources }: Variation,
  solved: (values: Float64Array) => HoldBegin | undefined,
): (values: ArrayLike<number>) => HoldBegin {
  const nominal = Float64Array.from(sources, (source) => source.nominal)
  const drawn = numbersOf(solved(nominal))
  const slopes = Array.from(drawn, (): Slope[] => [])
  const slopesTowards = (source: number, end: number): readonly number[] => {
    const values = nominal.slice()
    const step = half * (end - nominal[source])
    values[source] += step
    const found = step === 0 ? [] : numbersOf(solved(values))
    return Array.from(drawn, (value, index) => (Number.isFinite(found[index] - value) ? (found[index] - value) / step : 0))
  }
  for (const [source, { least, most }] of sources.entries()) {
    const [down, up] = [slopesTowards(source, least), slopesTowards(source, most)]
    for (const [index, own] of slopes.entries())
      if (down[index] !== 0 || up[index] !== 0) own.push({ source, down: down[index], up: up[index] })
  }
  const write = straightWriter({ drawn, slopes, nominal })
  const numbers = drawn.slice()
  const begin: HoldBegin = {
    turn_rad: 0,
    jam: { margin_rad: 0, slope: 0, bend_ratio: 1 },
    slip: { margin_rad: 0, slope: 0, bend_ratio: 1 },
  }
  return (values) => {
    write(values, numbers)
    begin.turn_rad = numbers[0]
    putRoot(begin.jam, numbers, 1)
    putRoot(begin.slip, numbers, 1 + numbersOfRoot)
    return begin
  }
}

const numbersOfRoot = 3

function putRoot(root: RootGuess, numbers: Float64Array, at: number): void {
  root.margin_rad = numbers[at]
  root.slope = numbers[at + 1]
  root.bend_ratio = numbers[at + 2]
}

function numbersOf(found: HoldBegin | undefined): Float64Array {
  if (!found) return new Float64Array(0)
  const ofRoot = ({ margin_rad, slope, bend_ratio }: RootGuess): readonly number[] => [margin_rad, slope, bend_ratio]
  return Float64Array.of(found.turn_rad, ...ofRoot(found.jam), ...ofRoot(found.slip))
}
