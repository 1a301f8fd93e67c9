import { type Limit, leastMargin, type Margin } from './margin.ts'
import type { Pressed } from './pressed.ts'

/** A value on the way to a margin, for its working. */
export interface StrengthStep {
  readonly name: string
  readonly value: number
  readonly unit: 'N' | 'N·mm' | 'mm' | 'MPa' | '1'
}

/** What one check found: its least margin with where it stands. */
export interface Found {
  readonly margin: Margin
  /** Absent where the force is no joint's, such as a stop's. */
  readonly state?: Pressed
  /** Name of the part that it is, where several could be. */
  readonly part?: string
  readonly steps: readonly StrengthStep[]
}

/** No margin: because something is missing, or because nothing presses there at all (`spared`). */
export interface NotFound {
  readonly margin?: undefined
  readonly why: string
  readonly spared?: true
}

/** A check: found, or why there is nothing to find. */
export type Strength = Found | NotFound

/** Where no load of any state reaches. */
export const UNPRESSED: NotFound = { why: 'no load case that acts in the plane presses it', spared: true }

/** What no push from the side goes through. */
export const UNLEANT: NotFound = { why: 'no load case pushes it from the side', spared: true }

/** What is checked at one state. */
export interface Checked {
  readonly limits: readonly Limit[]
  readonly steps: readonly StrengthStep[]
}

/** The worse of two, where the first may not be there yet. */
export function worse(one: Strength | undefined, other: Strength): Strength {
  if (!one?.margin) return one === undefined || other.margin ? other : one
  return other.margin && other.margin.value < one.margin.value ? other : one
}

/**
 * A check at one state as a finding of it.
 *
 * A limit whose allowable nobody has stated leaves the check open, unless another one falls short by itself.
 *
 * @param owner whose strengths they are, e.g. `material acetal`
 */
export function foundAt(
  { limits, steps }: Checked,
  at: { readonly state?: Pressed; readonly part?: string },
  owner: string,
): Strength {
  const missing = limits.filter(({ allowable, stress }) => allowable === undefined && stress > 0)
  const margin = leastMargin(limits)
  if (missing.length > 0 && !(margin && margin.value < 0)) return { why: unstated(owner, missing) }
  return margin && Number.isFinite(margin.value) ? { margin, steps, ...at } : UNPRESSED
}

function unstated(owner: string, missing: readonly Limit[]): string {
  const names = missing.map(({ property, says }) => `no ${property ?? `allowable where it ${says}`}`)
  return `${owner} states ${[...new Set(names)].join(' and ')}`
}

/** The least of checks on several parts; one that cannot be worked out leaves all open, unless another falls short by itself. */
export function leastOf(checks: readonly Strength[]): Strength {
  const worst = checks.reduce<Strength | undefined>(worse, undefined)
  const open = checks.find((check) => check.margin === undefined && !check.spared)
  if (worst?.margin && worst.margin.value < 0) return worst
  return open ?? worst ?? UNPRESSED
}
