/**
 * The coefficient of one friction pair with which the model gives what the bench found. Each test is inverted by itself: its figure is worked out over
 * a ladder of coefficients, and between two rungs on either side of what was found the coefficient is closed in. A figure that comes to
 * the same value at two coefficients, or at none, tells nothing of friction and is said so.
 *
 * The coefficient is that at rest; that of motion keeps the ratio to it that was typed.
 */

import type { Design, FrictionPair } from '../design/design.ts'
import type { Change } from '../design/edit/change.ts'
import { rootBetween } from '../numbers/root.ts'
import { type BenchTest, numbersOf } from './bench-comparison.ts'
import { withFriction } from './with-friction.ts'

/** What one test says of the coefficient at rest; `why` where it says nothing. */
export interface TestedFriction {
  readonly test: BenchTest
  readonly rest?: { readonly least: number; readonly likely: number; readonly most: number }
  readonly why?: 'no coefficient gives it' | 'two coefficients give it'
}

/** A pair as the bench found it: likely the mean of the tests, least and most the ends of what any of them leaves open. */
export interface FittedFriction {
  readonly pair: FrictionPair
  readonly tests: readonly TestedFriction[]
  /** Absent where no test says anything. */
  readonly rest?: { readonly least: number; readonly likely: number; readonly most: number }
}

/** Rungs of the ladder, and its ends: drier than any film and rougher than dry metal. */
const RUNGS = 24
const LEAST = 0.01
const MOST = 1
/** A coefficient is never known closer. */
const WIDTH = 1e-4

/** Fits the pair of that name. @throws when the design has no such pair: our own fault, since the door asks */
export function fitFriction(design: Design, name: string, tests: readonly BenchTest[]): FittedFriction {
  const pair = design.frictionPairs.find((one) => one.name === name)
  if (!pair) throw new Error(`no friction pair ${name}`)
  const tested = tests.map((test) => invert({ design, pair, test }))
  const said = tested.flatMap(({ rest }) => rest ?? [])
  if (said.length === 0) return { pair, tests: tested }
  const likely = said.reduce((sum, one) => sum + one.likely, 0) / said.length
  const rest = { least: Math.min(...said.map(({ least }) => least)), likely, most: Math.max(...said.map(({ most }) => most)) }
  return { pair, tests: tested, rest }
}

interface Inverting {
  readonly design: Design
  readonly pair: FrictionPair
  readonly test: BenchTest
}

function invert({ design, pair, test }: Inverting): TestedFriction {
  const ratio = pair.rest.likely > 0 ? pair.moving.likely / pair.rest.likely : 1
  const valueAt = (rest: number): number | undefined =>
    numbersOf(
      withFriction(design, ({ name }) => (name === pair.name ? { rest, moving: ratio * rest } : undefined)),
      [test.figure],
    ).get(test.figure)
  const ladder = Array.from({ length: RUNGS + 1 }, (_, rung) => LEAST * (MOST / LEAST) ** (rung / RUNGS))
  const rungs = ladder.map((at) => ({ at, value: valueAt(at) ?? Number.NaN }))
  const at = (wanted: number) => coefficientsAt(rungs, { wanted, valueAt })
  const likely = at(test.found)
  if (likely.length !== 1) return { test, why: likely.length === 0 ? 'no coefficient gives it' : 'two coefficients give it' }
  const ends = [test.found - test.uncertainty, test.found + test.uncertainty].map((wanted) => at(wanted)[0] ?? likely[0])
  return { test, rest: { least: Math.min(...ends), likely: likely[0], most: Math.max(...ends) } }
}

interface Wanted {
  readonly wanted: number
  readonly valueAt: (rest: number) => number | undefined
}

function coefficientsAt(
  rungs: readonly { readonly at: number; readonly value: number }[],
  { wanted, valueAt }: Wanted,
): readonly number[] {
  const offAt = (rest: number): number | undefined => {
    const value = valueAt(rest)
    return value === undefined ? undefined : value - wanted
  }
  return rungs.slice(1).flatMap((high, index) => {
    const { [index]: low } = rungs
    const [atLow, atHigh] = [low.value - wanted, high.value - wanted]
    // A rung without a value, such as one at which the finger jams, has nothing on either side of it.
    if (!(atLow * atHigh < 0 || atHigh === 0)) return []
    if (atHigh === 0) return [high.at]
    return rootBetween(offAt, { low: low.at, high: high.at, atLow, atHigh }, WIDTH) ?? []
  })
}

/** The edit with which a design adopts what the bench found, with where it is from. @returns undefined where no test says anything */
export function adoptFriction({ pair, rest, tests }: FittedFriction, origin: string): readonly Change[] | undefined {
  if (!rest) return undefined
  const ratio = pair.rest.likely > 0 ? pair.moving.likely / pair.rest.likely : 1
  const count = tests.filter((one) => one.rest !== undefined).length
  const said = `fitted from ${count} bench ${count === 1 ? 'test' : 'tests'}, ${origin}; moving in the ratio of before`
  const rounded = (value: number): number => Number(value.toPrecision(DIGITS))
  const ends = ['least', 'likely', 'most'] as const
  return [
    ...ends.map((end): Change => ({ kind: 'set', place: ['friction', pair.name, 'rest', end], value: rounded(rest[end]) })),
    ...ends.map(
      (end): Change => ({ kind: 'set', place: ['friction', pair.name, 'moving', end], value: rounded(ratio * rest[end]) }),
    ),
    { kind: 'set', place: ['friction', pair.name, 'source'], value: said },
  ]
}

/** A coefficient from the bench has two certain digits, and a third so that least, likely and most stay apart. */
const DIGITS = 3
