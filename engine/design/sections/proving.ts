/** What is to be shown of a finger, how, and what may go wrong. */

/** A way in which something is shown, beside what the figures say of it. */
export type ShownBy =
  /** That share of counted sets meets the requirement. */
  | { readonly by: 'share'; readonly least_ratio: number }
  /** Bench test by index. */
  | { readonly by: 'test'; readonly test: number }
  | { readonly by: 'document'; readonly document: string; readonly isInHand: boolean }

/** Something that is asked of the finger and that no figure says. */
export interface Demand {
  readonly id: string
  readonly asks: string
  readonly reason: string
  readonly source: string
  readonly shownBy: readonly ShownBy[]
}

export type BenchTestSort = 'load' | 'let go' | 'cycles' | 'drop' | 'environment' | 'trial by the wearer' | 'look'

/** Kinds of test that the bench book keeps by serial number. */
export type BookTest = 'load to hold' | 'return after load' | 'cycles' | 'pinch force'

/** A test on the bench or by eye. */
export interface BenchTest {
  readonly id: string
  readonly sort: BenchTestSort
  readonly title: string
  /** What counts as passed. */
  readonly passes: string
  /** Absent until it has been done. */
  readonly done?: { readonly on: string; readonly tried_count: number; readonly failed_count: number; readonly record: string }
  /** Tests of the bench book that are of this kind, from that value on, N or closings; absent when not stated. */
  readonly inBook?: { readonly test: BookTest; readonly least: number }
}

/** Both scales in rising order, as the workshop defines them. */
export interface RiskScales {
  readonly probability: readonly {
    readonly name: string
    readonly means: string
    /** Share of fingers, in their whole life, up to which it goes; that of the last is 1. */
    readonly upTo_ratio: number
  }[]
  readonly severity: readonly {
    readonly name: string
    readonly means: string
    /** The highest probability, by index, at which such a harm is taken; absent where none is. */
    readonly acceptable?: number
  }[]
}

/** Ways to control a risk, the first to be looked for first. */
export type ControlKind = 'design' | 'protection' | 'information'

/** A risk from its hazard to what is left of it. Severities and probabilities are indices into the scales. */
export interface Risk {
  readonly id: string
  readonly hazard: string
  readonly sequence: string
  readonly harm: string
  readonly severity: number
  /** Before anything is done about it. */
  readonly probability: number
  readonly controls: readonly { readonly by: ControlKind; readonly does: string; readonly check: string }[]
  readonly residual: {
    readonly severity: number
    /** As the workshop judges it; absent where the figures say it. */
    readonly probability?: number
    /** Requirements, by index, whose falling short lets it happen; its probability is at least theirs. */
    readonly requirements: readonly number[]
    readonly reason: string
  }
}
