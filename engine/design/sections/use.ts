/** What is asked of a finger: how often it closes, and the bounds that it must meet. */

import type { ShownBy } from './proving.ts'

/** How often the finger is closed. */
export interface Use {
  readonly closingsPerDay: number
  readonly years: number
  /** By load case index, their sum at most 1, the rest without load; absent when not stated. */
  readonly shares?: readonly { readonly loadCase: number; readonly share_ratio: number }[]
}

/** By how much a strength must exceed its stress. */
export interface Factors {
  readonly yield: number
  readonly ultimate: number
  readonly reason: string
  /** Standard deviations as shares of the means, of loads in use and of strengths; absent when not stated. */
  readonly scatter?: { readonly load_ratio: number; readonly strength_ratio: number; readonly source: string }
}

/** A pin, a part or a spring by its index. */
export interface Member {
  readonly kind: 'pin' | 'part' | 'spring'
  readonly index: number
}

export interface Requirement {
  readonly id: string
  /** Figure name, e.g. `closed.toggle.distal.deadCentreMargin`. */
  readonly figure: string
  readonly bound:
    | { readonly kind: 'atLeast' | 'atMost'; readonly value: number; readonly unit: string; readonly typed: string }
    | { readonly kind: 'is'; readonly value: boolean }
  readonly reason: string
  readonly source: string
  /** How it is shown beside the figure; absent when not stated. */
  readonly shownBy?: readonly ShownBy[]
}
