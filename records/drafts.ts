import type { Database } from 'better-sqlite3'
import type { Problem } from '../engine/index.ts'
import { designId, enteredDesign, nameProblem } from './design-id.ts'
import { digest } from './digest.ts'
import { change, rowsOf, tables } from './query.ts'
import type { Draft, DraftChange, Saved, Step } from './store.ts'
import { documentWords } from './store-rules.ts'
import { walkSteps } from './walk-steps.ts'

/** The draft of a design with its whole history; undefined when there is none. */
export function draftOf(database: Database, name: string): Draft | undefined {
  const design = designId(database, name)
  if (design === undefined) return undefined
  const [draft] = rowsOf(database, tables.selectFrom('drafts').selectAll().where('design', '=', design))
  if (draft === undefined) return undefined
  const { design: _, ...kept } = draft
  return { ...kept, steps: stepsOf(database, design) }
}

function stepsOf(database: Database, design: number): readonly Step[] {
  const query = tables.selectFrom('draft_steps').select(['splice', 'said']).where('design', '=', design).orderBy('number')
  return rowsOf(database, query).map(({ splice, said }) => ({ splice: JSON.parse(splice), said }))
}

/** A change of the draft of one design, and the moment. */
export interface KeptChange {
  readonly name: string
  readonly change: DraftChange
  readonly saved: string
}

/** Saves a change of a draft, within a transaction of the caller. Nothing is written when it is refused or another save was faster. */
export function keepDraft(database: Database, { name, change: asked, saved }: KeptChange): Saved<{ readonly version: number }> {
  const wrong = nameProblem(name)
  if (wrong !== undefined) return { refused: wrong }
  const before = draftOf(database, name)
  if (before !== undefined && isSentTwice(before, asked)) return { kept: { version: before.version } }
  if ((before?.version ?? 0) !== asked.version) return { newer: before ?? { version: 0, text: asked.base } }
  const text = changedText(before, asked)
  if (typeof text !== 'string') return { refused: text }
  const design = enteredDesign(database, { name, made: saved })
  const version = asked.version + 1
  const given = givenAfter({ before, asked, text })
  writeDraft(database, { design, keep: asked.keep, draft: { ...asked, version, text, given, saved } })
  return { kept: { version } }
}

/** Whether a save is the one that led to the draft as it is: its answer was lost on the way, and it was sent again. */
function isSentTwice(draft: Draft, { version, base, keep, steps, position }: DraftChange): boolean {
  if (version + 1 !== draft.version || base !== draft.base || position !== draft.position) return false
  return JSON.stringify(steps) === JSON.stringify(draft.steps.slice(keep))
}

interface Changed {
  readonly before: Draft | undefined
  readonly asked: DraftChange
  readonly text: string
}

/** A draft agrees with the file of its name when it begins, and again whenever its text is that of the file. */
function givenAfter({ before, asked, text }: Changed): string | null {
  const isBegun = before === undefined || before.base !== asked.base
  if (!isBegun && asked.given !== text) return before.given
  return asked.given === undefined ? null : digest(asked.given)
}

/** A draft to be written, whose first `keep` steps are stored already; `draft.steps` are those that follow. */
export interface WrittenDraft {
  readonly design: number
  readonly keep: number
  readonly draft: Draft
}

/** Writes a draft that was found to fit, within a transaction of the caller. */
export function writeDraft(database: Database, { design, keep, draft }: WrittenDraft): void {
  const { version, base, text, position, given, saved, steps } = draft
  const row = { version, base, text, position, given, saved }
  const added = tables.insertInto('drafts').values({ design, ...row })
  change(
    database,
    added.onConflict((conflict) => conflict.column('design').doUpdateSet(row)),
  )
  change(database, tables.deleteFrom('draft_steps').where('design', '=', design).where('number', '>=', keep))
  steps.forEach(({ splice, said }, index) => {
    const kept = { design, number: keep + index, splice: JSON.stringify(splice), said }
    change(database, tables.insertInto('draft_steps').values(kept))
  })
}

/** The text that a change leads to, or why it does not fit. */
function changedText(before: Draft | undefined, { base, keep, steps, position }: DraftChange): string | Problem {
  const stored = before?.steps ?? []
  if (keep > stored.length) return misfit('keep', `${keep} steps to be kept`, `at most the ${stored.length} that are stored`)
  if (before !== undefined && base !== before.base && keep > 0)
    return misfit('keep', 'steps of another history', 'none of the stored steps with a new base')
  const all = [...stored.slice(0, keep), ...steps]
  if (position > all.length) return misfit('position', `position ${position}`, `at most the ${all.length} steps there are`)
  const start = before === undefined || base !== before.base ? { text: base, position: 0 } : before
  const kept = walkSteps(stored, start, keep)
  const done = kept === undefined ? undefined : walkSteps(all, { text: kept, position: keep }, all.length)
  const text = done === undefined ? undefined : walkSteps(all, { text: done, position: all.length }, position)
  if (text === undefined) return misfit('steps', 'a step that does not fit the text', 'steps that follow one another')
  const checked = documentWords.safeParse(text)
  return checked.success ? text : misfit('steps', 'a text that is no document', checked.error.issues[0].message)
}

function misfit(place: string, found: string, needed: string): Problem {
  return { code: 'draft does not fit', place, found, needed }
}
