import type { SizeLaw, Tolerance } from '../../design/design.ts'
import type { Law } from './source.ts'

/** Least and most of something that varies. */
export interface Range {
  readonly least: number
  readonly most: number
}

/** Standard deviations between the middle and a limit at a capability of 1, by the meaning of the word. */
const deviationsOfCapability = 3

/** A law of sizes between two limits. */
export function lawWithin({ least, most }: Range, law: SizeLaw): Law {
  if (law.kind === 'sample') return { kind: 'sample', values: law.values }
  if (law.kind === 'uniform') return { kind: 'uniform', least, most }
  const mean = (least + most) / 2
  const deviation = (most - least) / 2 / (deviationsOfCapability * law.capability)
  return law.kind === 'normal' ? { kind: 'normal', mean, deviation } : { kind: 'truncatedNormal', mean, deviation, least, most }
}

/** A law of something that comes from a range and never from outside of it. */
export function lawOfRange(range: Range, word: 'uniform' | 'normal'): Law {
  return lawWithin(range, word === 'uniform' ? { kind: 'uniform' } : { kind: 'truncated', capability: 1 })
}

/** Limits of a toleranced size, in its inside unit. */
export function limitsOfSize(nominal: number, { lower, upper }: Pick<Tolerance, 'lower' | 'upper'>): Range {
  return { least: nominal + lower, most: nominal + upper }
}
