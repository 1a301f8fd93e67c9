import type { Consequence, MeasuredSpread, Problem } from '../../engine/index.ts'
import type { CheckedSet, MeasuredWith } from '../../report/index.ts'
import { sharedState, useShared } from '../state/shared-state.ts'
import type { KeptDecision } from './bench/bench.ts'

/** One set as it was judged; `spread` follows when its ways have been counted. */
export interface PageSet extends CheckedSet {
  readonly spread?: MeasuredSpread
  readonly decisions: readonly Consequence[]
  /** What the bench book keeps as decided and signed off; absent for a set of a file. */
  readonly papers?: readonly string[]
  /** With what each of its readings was taken. */
  readonly measuredWith?: MeasuredWith
  /** Its decisions that stand. */
  readonly decided?: readonly KeptDecision[]
}

/** Sets that are kept at the bench: of which design and lot, to which revision. */
export interface FromBench {
  readonly design: string
  readonly lot: string
  readonly revision: number
}

/** Where readings come from. */
export interface OpenedFrom {
  /** A file by its name, or a lot in words. */
  readonly file: string
  /** Of the design that they are judged against. */
  readonly text: string
  /** Absent for a file. */
  readonly bench?: FromBench
}

/** Readings that were opened: every set judged, or why nothing was. */
export type OpenedReadings = OpenedFrom &
  (
    | { readonly sets: readonly PageSet[]; readonly passedOver: readonly string[]; readonly takenAs: readonly string[] }
    | { readonly problems: readonly Problem[] }
  )

/** What the page last read; absent before the first. */
export const readingsNow = sharedState<OpenedReadings | undefined>(undefined)

/** The readings of now. */
export function useReadings(): OpenedReadings | undefined {
  return useShared(readingsNow)
}

/** For the list of questions. */
export function checkWords(opened: OpenedReadings | undefined): string {
  if (opened === undefined) return 'nothing measured yet'
  if (!('sets' in opened)) return `${opened.file}: refused`
  return opened.sets.length === 1 ? '1 set measured' : `${opened.sets.length} sets measured`
}
