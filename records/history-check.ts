import * as z from 'zod'
import type { Problem } from '../engine/index.ts'
import { storeLimits } from './limits.ts'
import type { History } from './store.ts'
import { documentWords, step, storedName, who, why } from './store-rules.ts'
import { walkSteps } from './walk-steps.ts'

const moment = z.iso.datetime()
const json = z.string().max(storeLimits.resultLength)
const revision = z.object({
  number: z.int(),
  text: documentWords,
  engine: z.string().min(1).max(200),
  figures: json,
  findings: json,
  problems: json,
  who,
  why,
  saved: moment,
})
const draft = z.object({
  version: z.int().min(1),
  base: documentWords,
  steps: z.array(step),
  position: z.int().min(0),
  text: documentWords,
  given: z.string().max(100).nullable(),
  saved: moment,
})
const history = z.object({ name: storedName, revisions: z.array(revision), draft: draft.optional() })

/**
 * Whether a design of a store from elsewhere keeps the rules that every save here has kept.
 *
 * @returns the first problem; undefined when there is none
 */
export function historyProblem(found: History): Problem | undefined {
  const checked = history.safeParse(found)
  if (!checked.success) {
    const [issue] = checked.error.issues
    return misfit([found.name, ...issue.path.map(String)].join(' › '), issue.message)
  }
  if (found.revisions.some(({ number }, index) => number !== index + 1))
    return misfit(`${found.name} › revisions`, 'numbers that do not follow one another')
  if (found.draft === undefined) return undefined
  const { base, steps, position, text } = found.draft
  const whole = walkSteps(steps, { text: base, position: 0 }, steps.length)
  const done = position > steps.length ? undefined : walkSteps(steps, { text: base, position: 0 }, position)
  return whole === undefined || done !== text ? misfit(`${found.name} › draft`, 'steps that do not lead to its text') : undefined
}

/** What is told of a store that was not written here, or was altered. */
export function misfit(place: string, found: string): Problem {
  return { code: 'store does not fit', place, found, needed: 'a store that was written by Fingerwright' }
}
