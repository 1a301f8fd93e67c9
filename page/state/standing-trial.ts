/** Trials among the steps: which of them stands, and how it is taken back. A trial is an ordinary step that is known by its words. */
import { type Change, evaluate, putBack, readDesign, type Trial, trials } from '../../engine/index.ts'
import { type History, standing } from './history.ts'

/** What the step of a trial says, and that which takes it back when others came after it. */
export const trialWords = (title: string) => ({ made: `trial: ${title}`, takenBack: `trial taken back: ${title}` }) as const

/** Which step made the trial that stands now, counted from 0; undefined when none does. */
export function standingTrial({ steps, position }: History, title: string): number | undefined {
  const { made, takenBack } = trialWords(title)
  const last = steps.slice(0, position).findLastIndex(({ said }) => said === made || said === takenBack)
  return last >= 0 && steps[last].said === made ? last : undefined
}

/** A trial as it is for a text; undefined where the text cannot be read. */
export function trialOf(text: string, id: string): Trial | undefined {
  const { value } = readDesign(text)
  return value && trials(text, evaluate(value)).find((trial) => trial.id === id)
}

/**
 * What a trial changes in a text as it stands this moment: what is on the page may be a little older.
 *
 * @returns none where it cannot be tried
 */
export function trialChanges(text: string, id: string): readonly Change[] {
  return trialOf(text, id)?.changes ?? []
}

/** What takes a trial back: one step back when it was done last, else the changes that give its values back. */
export function takingBack(
  history: History,
  step: number,
): { readonly position: number } | { readonly changes: readonly Change[] } {
  if (step === history.position - 1) return { position: step }
  const before = standing(history, step).text
  const after = standing(history, step + 1).text
  return { changes: putBack(history.text, { before, after }) }
}
