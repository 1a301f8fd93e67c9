import { applySplice, inverseSplice, type Splice } from '../engine/index.ts'
import type { Step } from './store.ts'

/** Where a text stands in its history. */
export interface Stand {
  readonly text: string
  readonly position: number
}

/**
 * Does or takes back steps one after another until the text stands at another position.
 *
 * @param steps of the whole history, or at least those between the two positions at their numbers
 * @returns undefined when a step does not fit the text that it meets
 */
export function walkSteps(steps: readonly Step[], from: Stand, to: number): string | undefined {
  let { text, position } = from
  while (position !== to) {
    const forward = position < to
    const { splice } = steps[forward ? position : position - 1]
    const done = forward ? splice : inverseSplice(splice)
    if (!fits(text, done)) return undefined
    text = applySplice(text, done)
    position += forward ? 1 : -1
  }
  return text
}

function fits(text: string, { at, removed }: Splice): boolean {
  return at <= text.length && text.startsWith(removed, at)
}
