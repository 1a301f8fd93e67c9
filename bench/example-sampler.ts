import { readFileSync } from 'node:fs'
import { closedSampler, readVariation } from '../engine/index.ts'

/** Samples from the first up to the second, which is left out. */
export interface Range {
  readonly from: number
  readonly to: number
}

/** Makes hold verdicts of the example's sets. */
export function exampleSampler() {
  const { value } = readVariation(readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8'), 'heron')
  const made = value && closedSampler(value, 1)
  if (!made || 'why' in made) throw new Error('the short way does not serve the example')
  return made
}
