import type { Change, JsonValue } from './change.ts'
import { changedValues } from './changed-values.ts'
import { valueAt } from './value-at.ts'

/** A step of the past, by the texts before and after it. */
export interface PastStep {
  readonly before: string
  readonly after: string
}

/**
 * The changes that give back what a step changed and leave everything that was done since.
 *
 * @param text JSON as it stands now
 * @returns none for values whose owner is gone by now; values that were changed again since are given back all the same
 */
export function putBack(text: string, { before, after }: PastStep): readonly Change[] {
  const now = JSON.parse(text) as JsonValue
  return changedValues(before, after).flatMap(({ place, before: was }): readonly Change[] => {
    const hasOwner = valueAt(now, place.slice(0, -1)) !== undefined
    if (!hasOwner) return []
    return [was === undefined ? { kind: 'remove', place } : { kind: 'set', place, value: was }]
  })
}
