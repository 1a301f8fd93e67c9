/** What happens when it breaks: every member by its margin of strength, with what the finger does without it. */
import { type Breakage, breakages, memberWords } from '../strength/breakage.ts'
import type { Evaluation } from './evaluation.ts'
import { type GivesWay, givesWayOf, weakestOf } from './gives-way.ts'
import { readyFor } from './ready-finger.ts'

/** One pin, part or spring. */
export interface BrokenMember extends Breakage {
  readonly words: string
  /** Least margin of its checks, and which that is; absent where none has a margin. */
  readonly margin?: number
  readonly says?: string
  /** Id of that check's figure. */
  readonly figure?: string
}

/** Everything that may give way. */
export interface Broken {
  /** The least margin first; those without one behind, in the order of the document. */
  readonly members: readonly BrokenMember[]
  /** The stated order against the margins; absent where the document states none. */
  readonly order?: GivesWay
}

/** @returns undefined for a finger that cannot be moved */
export function brokenOf({ design, strength = { ranked: [], open: [], refused: [] } }: Evaluation): Broken | undefined {
  const ready = readyFor(design)
  if (!ready) return undefined
  const members = breakages(ready).map((breakage): BrokenMember => {
    const weakest = weakestOf(design, breakage.member, strength)
    const words = memberWords(design, breakage.member)
    return { ...breakage, words, ...(weakest && { margin: weakest.margin, says: weakest.words, figure: weakest.figure }) }
  })
  const last = Number.POSITIVE_INFINITY
  const order = givesWayOf(design, strength)
  return { members: members.sort((one, other) => (one.margin ?? last) - (other.margin ?? last)), ...(order && { order }) }
}
