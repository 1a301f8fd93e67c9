/**
 * Closed posture and return from rest of the example's sets: the short way of many samples beside the road that every set could take.
 * This file looks behind the engine's door, because what is timed is one piece of it.
 */
import { readFileSync } from 'node:fs'
import { type ClosedFingers, closedFingers } from '../engine/variation/closed/closed-finger.ts'
import { closedSamples } from '../engine/variation/closed/closed-samples.ts'
import { readVariation } from '../engine/variation/sources/read-variation.ts'
import type { Way } from './compare.ts'

const SETS = 256
/** Margins (rad) and reserves (N·mm a pin) of the two ways may differ by rounding only. */
const AGREES = 1e-9

/** Both ways as work to be timed, the long one first. Throws when they do not agree. */
export function closedWays(): readonly Way[] {
  const read = readVariation(readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8'), 'heron')
  if (read.problems !== undefined) throw new Error('the example is refused')
  const variation = read.value
  const fingers = closedFingers(variation)
  if ('why' in fingers) throw new Error(`the short way does not serve: ${fingers.why}`)
  const cloud = { dimensions: variation.sources.filter(({ of }) => of === 'sets').length, seed: 1 }
  const by = (ways: ClosedFingers): Float64Array => closedSamples({ variation, fingers: ways, cloud, from: 0, to: SETS }).numbers
  const shortWay = (): Float64Array => by(fingers)
  const longWay = (): Float64Array => by({ ...fingers, solve: () => false })
  const long = longWay()
  const apart = shortWay().reduce((most, value, index) => Math.max(most, Math.abs(value - long[index])), 0)
  if (!(apart < AGREES)) throw new Error(`the two ways to the closed posture are ${apart} apart`)
  return [
    { name: `${SETS} closed postures, long way`, run: longWay },
    { name: `${SETS} closed postures, short way`, run: shortWay },
  ]
}
