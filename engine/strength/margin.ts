/** Margins of safety: allowable / (factor × stress) − 1. Zero is just enough, one is twice what is needed. */
import type { Material } from '../design/design.ts'

/** One way to fail: a stress against what the material bears. */
export interface Limit {
  /** What the part does when it fails so, e.g. `yields`. */
  readonly says: string
  /** MPa, unless `unit` says that something else is limited: a force, a way, a number of turns. */
  readonly stress: number
  readonly unit?: 'N' | 'mm' | '1'
  /** In the stress's unit; absent where nobody has stated it. */
  readonly allowable: number | undefined
  /** Whose allowable it is, where a material's row states it. */
  readonly material?: Pick<Material, 'name' | 'source'>
  /** What the allowable is of the material, e.g. `yield strength`, where it may be missing. */
  readonly property?: string
  readonly factor: number
}

/** The least margin of some limits, with the limit that it belongs to. */
export interface Margin {
  readonly value: number
  readonly limit: Limit
}

/** The least margin of those limits whose allowable is known; undefined where none is. Infinite without stress. */
export function leastMargin(limits: readonly Limit[]): Margin | undefined {
  let least: Margin | undefined
  for (const limit of limits) {
    const { stress, allowable, factor } = limit
    if (allowable === undefined) continue
    const value = stress > 0 ? allowable / (factor * stress) - 1 : Number.POSITIVE_INFINITY
    if (!least || value < least.value) least = { value, limit }
  }
  return least
}
