/**
 * Compares rates in one run. The ways take turns, so that a machine that slows down slows all of them; medians shrug off the rounds in which
 * something else ran; ratios hold from machine to machine where times do not.
 */
import { cpus } from 'node:os'

/** One way to do a piece of work. */
export interface Way {
  readonly name: string
  /** Does the work once; what it gives back is kept, so that no compiler leaves the work out. */
  readonly run: () => unknown
}

/** Median time of one run of a way. */
export interface Rate {
  readonly name: string
  readonly time_ms: number
}

/** Each way is run for this long before anything is timed, where nothing else is asked for: a designer who drags a pin has a warm program too. */
const WARM_ms = 1000
const ROUNDS = 151
/** Runs of one round take at least this long: a thousand times the clock's grain, and one run of anything that one waits for. */
const ROUND_ms = 4

/** Times several ways against each other. @param warm_ms for how long each is run before */
export function compare(ways: readonly Way[], warm_ms = WARM_ms): readonly Rate[] {
  const runs = ways.map((way) => runsOfARound(way, warm_ms))
  const times = ways.map((): number[] => [])
  for (let round = 0; round < ROUNDS; round++) {
    for (const [index, way] of ways.entries()) times[index].push(timed(way, runs[index]) / runs[index])
  }
  return ways.map(({ name }, index) => ({ name, time_ms: median(times[index]) }))
}

/** Rates as lines, each beside the ratio to the first. */
export function rateLines(rates: readonly Rate[]): readonly string[] {
  const width = Math.max(...rates.map((rate) => rate.name.length))
  return rates.map(
    ({ name, time_ms }) =>
      `${name.padEnd(width)}  ${time_ms.toFixed(3).padStart(9)} ms  ${Number((time_ms / rates[0].time_ms).toPrecision(2))
        .toString()
        .padStart(8)} ×`,
  )
}

/** The machine in a line, because times mean nothing without it. */
export function machineLine(): string {
  return `Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown processor'}`
}

/** Enough runs to fill a round, found by doubling once the way is warm. */
function runsOfARound(way: Way, warm_ms: number): number {
  for (const begun_ms = performance.now(); performance.now() - begun_ms < warm_ms; ) timed(way, 1)
  let runs = 1
  while (timed(way, runs) < ROUND_ms) runs *= 2
  return runs
}

function timed({ run }: Way, runs: number): number {
  const begun_ms = performance.now()
  let last: unknown
  for (let done = 0; done < runs; done++) last = run()
  if (last === undefined) throw new Error('the work gave nothing back')
  return performance.now() - begun_ms
}

/** The middle one of an odd count; of an even one the upper of the two. */
export function median(values: readonly number[]): number {
  return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)]
}
