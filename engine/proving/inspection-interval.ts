/**
 * How often a finger is looked over, from its wear: often enough that it is seen several times between new and the first closing after which a
 * requirement may no longer be met, at the most wear.
 */
import type { Design } from '../design/design.ts'
import type { Life } from '../variation/wear/life-of.ts'

/** Looks between new and the first that may fall short: one may be missed, one may see nothing yet. */
const LOOKS_count = 4
/** Skin, screws and cracks are looked at twice a year whatever the wear. */
const LONGEST_days = 182
/** A wearer can look every week; below that the finger is not fit for its use. */
const SHORTEST_days = 7

/** The interval, and what it comes from. */
export interface InspectionInterval {
  readonly interval_days: number
  /** Closings after which a requirement may fall short first, at the most wear, and which; absent where none does in the stated life. */
  readonly first?: { readonly closings: number; readonly requirement: string }
  /** Wear asks for looks that nobody keeps up. */
  readonly isTooOften: boolean
}

/** @returns undefined where the design does not say how often it is closed */
export function inspectionInterval(
  { use }: Pick<Design, 'use'>,
  { findings }: Pick<Life, 'findings'>,
): InspectionInterval | undefined {
  if (!use) return undefined
  const [first] = findings.flatMap(({ untilMost, requirement }) =>
    untilMost === undefined ? [] : [{ closings: untilMost, requirement }],
  )
  if (!first) return { interval_days: LONGEST_days, isTooOften: false }
  const wanted = Math.floor(first.closings / use.closingsPerDay / LOOKS_count)
  const interval_days = Math.min(LONGEST_days, Math.max(SHORTEST_days, wanted))
  return { interval_days, first, isTooOften: wanted < SHORTEST_days }
}
