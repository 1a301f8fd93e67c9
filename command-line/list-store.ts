import type { DesignEntry, RevisionEntry } from '../records/index.ts'
import { aligned, type Cell } from './columns.ts'
import { refuseUnknown } from './find-design.ts'
import { momentText, verdictText } from './revision-text.ts'
import { lookInStore, type StoreAsked } from './use-store.ts'

/** Widest that a reason may be in the list, so that a row stays within a line of readable length. */
const WHY_columns = 50

const cell = (text: string, side: Cell['side'] = 'left'): Cell => ({ text, side })

/** Prints every design of the store: how many revisions, the verdict of the newest, the draft. */
export async function listDesigns(asked: StoreAsked): Promise<void> {
  const { file, designs } = await lookInStore(asked, (store) => ({ file: store.file, designs: store.designs() }))
  const heading = [cell('design'), cell('revisions', 'right'), cell('the newest'), cell('draft')]
  const lines = aligned([heading, ...designs.map(designRow)])
  asked.terminal.write(designs.length === 0 ? `Nothing is kept in ${file} yet.\n` : `${lines.join('\n')}\n\nKept in ${file}\n`)
}

function designRow({ name, revisions, newest, draft }: DesignEntry): readonly Cell[] {
  const verdict = newest === undefined ? '' : verdictText(newest)
  return [
    cell(name),
    cell(String(revisions), 'right'),
    cell(verdict),
    cell(draft === undefined ? '' : `saved ${momentText(draft.saved)}`),
  ]
}

/**
 * Prints every revision of a design, oldest first, and its draft.
 *
 * @throws WrongUse for a name that is not in the store
 */
export async function listRevisions(name: string, asked: StoreAsked): Promise<void> {
  const { revisions, draft } = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    return { revisions: store.revisions(name), draft: store.draft(name) }
  })
  const table = revisions.length === 0 ? [`  ${name} has no revision yet.`] : aligned(revisions.map(revisionRow))
  const last = draft === undefined ? [] : [`  draft, saved ${momentText(draft.saved)}`]
  asked.terminal.write(`${[...table, ...last].join('\n')}\n`)
}

function revisionRow({ number, saved, who, why, ...entry }: RevisionEntry): readonly Cell[] {
  const reason = { ...cell(why), most_columns: WHY_columns }
  const verdict = verdictText({ number, saved, who, why, ...entry })
  return [cell(String(number), 'right'), cell(momentText(saved)), cell(verdict), cell(who), reason]
}
