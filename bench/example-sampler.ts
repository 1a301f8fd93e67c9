import { readFileSync } from 'node:fs'
import { closedSampler, readVariation, type Variation } from '../engine/index.ts'

/** Samples from the first up to the second, which is left out. */
export interface Range {
  readonly from: number
  readonly to: number
}

/** The example with all that varies in it. */
export function exampleVariation(): Variation {
  const { value } = readVariation(readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8'), 'heron')
  if (!value) throw new Error('the example is refused')
  return value
}

/** Makes hold verdicts of the example's sets. */
export function exampleSampler() {
  const made = closedSampler(exampleVariation(), 1)
  if ('why' in made) throw new Error('the short way does not serve the example')
  return made
}
