import type { Working } from '../../engine/index.ts'

/** A line of words that opens how its numbers come about. */
export interface OpenedLine {
  readonly words: string
  /** Worked out when somebody opens it; none where the line has no number of its own. */
  readonly workings: () => readonly Working[]
}

/** A line without a number. */
export function plainLine(words: string): OpenedLine {
  return { words, workings: () => [] }
}
