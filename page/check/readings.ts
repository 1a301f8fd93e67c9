import type { Consequence, MeasuredSpread, Problem } from '../../engine/index.ts'
import type { CheckedSet } from '../../report/index.ts'
import { sharedState, useShared } from '../state/shared-state.ts'

/** One set as it was judged; `spread` follows when its ways have been counted. */
export interface PageSet extends CheckedSet {
  readonly spread?: MeasuredSpread
  readonly decisions: readonly Consequence[]
}

/** A file of readings that was opened: every set judged, or why nothing was. */
export type OpenedReadings =
  | { readonly file: string; readonly text: string; readonly sets: readonly PageSet[]; readonly passedOver: readonly string[] }
  | { readonly file: string; readonly text: string; readonly problems: readonly Problem[] }

/** What the page last read; absent before the first file. */
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
