import type { DesignSpreadAsked } from '../engine/index.ts'
import { limits } from '../engine/index.ts'
import { WrongUse } from './terminal.ts'

/** Options of a run, as typed. */
export interface SpreadWords {
  readonly samples?: string
  readonly seed?: string
  readonly target?: string
  readonly advice?: boolean
  readonly offer?: readonly string[]
  readonly closed?: string
}

/** What is asked for when nothing is said. A target of 99 % is nobody's rule: one set in a hundred comes back. */
export const spreadDefaults = { samples: '2048', seed: '1', target: '99 %' } as const

const PERCENT = 100

/** Reads the options. @throws WrongUse with what was found and what is needed */
export function readSpreadAsked({
  samples = spreadDefaults.samples,
  seed = spreadDefaults.seed,
  target = spreadDefaults.target,
  advice = false,
  offer = [],
  closed,
}: SpreadWords): DesignSpreadAsked {
  return {
    samples: wholeNumber(samples, { option: '--samples', least: 1, most: limits.spreadSamples }),
    seed: wholeNumber(seed, { option: '--seed', least: 0, most: 2 ** 32 - 1 }),
    target_ratio: shareOf(target),
    advice,
    ...(offer.length > 0 && { offers: offer }),
    ...(closed !== undefined && { closed: wholeNumber(closed, { option: '--closed', least: 1, most: limits.spreadSamples }) }),
  }
}

interface Whole {
  readonly option: string
  readonly least: number
  readonly most: number
}

function wholeNumber(text: string, { option, least, most }: Whole): number {
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN
  if (value >= least && value <= most) return value
  throw new WrongUse(`${option} takes a whole number from ${least} to ${most}, not ${text}`)
}

function shareOf(text: string): number {
  const typed = /^(\d+(?:\.\d+)?)\s*(%?)$/.exec(text.trim())
  const value = typed ? Number(typed[1]) / (typed[2] === '%' ? PERCENT : 1) : Number.NaN
  if (value > 0 && value < 1) return value
  throw new WrongUse(`--target takes a share between 0 and 100 %, such as "99.5 %", not ${text}`)
}
