/** One side of a comparison: a revision, or what stands on the page now. */
import type { Answer } from '../state/messages.ts'
import type { OpenDesign } from '../state/open-design.ts'
import { useJudged } from './use-judged.ts'
import { useRevision } from './use-revision.ts'

/** Which text is compared. */
export type Side = number | 'now'

/** The text of a side and what today's engine says of it; absent while they are fetched or worked out. */
export interface JudgedSide {
  readonly words: string
  readonly text?: string
  readonly answer?: Answer
  readonly fault?: string
}

/** What a side is called. */
export function sideWords(side: Side): string {
  return side === 'now' ? 'what stands now' : `revision ${side}`
}

/** Fetches and judges a side. */
export function useSide(open: OpenDesign, side: Side): JudgedSide {
  const { revision, fault } = useRevision(open.name, side === 'now' ? undefined : side)
  const text = side === 'now' ? open.history.text : revision?.text
  const answer = useJudged(open.name, text)
  return {
    words: sideWords(side),
    ...(text === undefined ? {} : { text }),
    ...(answer === undefined ? {} : { answer }),
    ...(fault === undefined ? {} : { fault }),
  }
}
