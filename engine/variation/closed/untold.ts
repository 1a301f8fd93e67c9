/** Which hold numbers of a design are not told of its sets, because they mean nothing there or are not looked for. */
import { besideMargins } from './hold-room.ts'
import type { HoldStates } from './hold-states.ts'

/**
 * `reserve`: it closes inside its jam. There the worst state of rest has poles of its own (docs/theory/rest-states.md), and of the number
 * only its sign means anything: which sets stay jammed is told by their margin and that of the jam.
 * `window`: as drawn it jams nowhere, so that no margin bounds it; whether a set does on its way is for the whole count.
 */
export type Untold = 'reserve' | 'window'

/** What a design leaves untold. */
export function untoldOf({ closed, jam }: HoldStates): readonly Untold[] {
  return [...(closed ? [] : (['reserve'] as const)), ...(jam ? [] : (['window'] as const))]
}

/** Takes numbers that are not told out of a set's. */
export function leaveOut(untold: readonly Untold[], numbers: Float64Array): void {
  const reserve = numbers.length - besideMargins
  if (untold.includes('reserve')) numbers[reserve] = Number.NaN
  if (untold.includes('window')) numbers.fill(Number.NaN, reserve + 1)
}
