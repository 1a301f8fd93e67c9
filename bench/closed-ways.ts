/**
 * The hold verdict of the example's sets (closed margin, return from rest, jam angle, slip angle): the short way beside the road that every set could take, reading included.
 * This file looks behind the engine's door, because what is timed is one piece of it.
 */
import { readFileSync } from 'node:fs'
import { block_sets, type HoldBlock, holdFingers } from '../engine/variation/closed/hold-finger.ts'
import { holdPlainly } from '../engine/variation/closed/hold-plainly.ts'
import { valuesOf } from '../engine/variation/sources/law.ts'
import { readVariation } from '../engine/variation/sources/read-variation.ts'
import { cloudOf } from '../engine/variation/spread/cloud.ts'
import type { Way } from './compare.ts'

/** Angles (rad) and reserves (N·mm a pin) of the two ways may differ by rounding only. */
const AGREES = 1e-9

/** Both ways as work to be timed, the long one first. Throws when they do not agree. */
export function closedWays(): readonly Way[] {
  const read = readVariation(readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8'), 'heron')
  if (read.problems !== undefined) throw new Error('the example is refused')
  const variation = read.value
  const fingers = holdFingers(variation)
  if ('why' in fingers) throw new Error(`the short way does not serve: ${fingers.why}`)
  const { fill } = cloudOf({ dimensions: variation.sources.length, seed: 1 })
  const fillValues = valuesOf(variation.sources)
  const columns = (count: number) => Array.from({ length: count }, () => new Float64Array(block_sets))
  const block: HoldBlock = {
    values: columns(variation.sources.length),
    numbers: columns(fingers.numbers_count),
    isLong: new Uint8Array(block_sets),
  }
  const sets = Array.from({ length: block_sets }, (_, sample) => {
    const values = new Float64Array(variation.sources.length)
    fill(sample, values)
    fillValues(values.slice(), values)
    for (const [source, value] of values.entries()) block.values[source][sample] = value
    return values
  })
  const longWay = (): Float64Array => {
    const all = new Float64Array(block_sets * fingers.numbers_count)
    for (const [index, values] of sets.entries())
      holdPlainly(variation, values, all.subarray(index * fingers.numbers_count, (index + 1) * fingers.numbers_count))
    return all
  }
  const shortWay = (): Float64Array => {
    fingers.solveBlock(block)
    return Float64Array.from(sets.flatMap((_, set) => block.numbers.map((column) => column[set])))
  }
  const long = longWay()
  const apart = shortWay().reduce((most, value, index) => Math.max(most, Math.abs(value - long[index])), 0)
  if (!(apart < AGREES)) throw new Error(`the two ways to the hold verdict are ${apart} apart`)
  return [
    { name: `${block_sets} hold verdicts, long way`, run: longWay },
    { name: `${block_sets} hold verdicts, short way`, run: shortWay },
  ]
}
