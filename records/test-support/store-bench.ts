/** TEST SUPPORT. Real stores in folders that go when the tests have run, with a clock that stands still. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'
import { type NewRevision, openStore, type Store } from '../index.ts'

/** The moment at which every test takes place. */
export const moment = '2031-04-05T06:07:08.009Z'

/** The clock of the tests. */
export const now = () => new Date(moment)

const opened: Store[] = []
const folders: string[] = []
afterAll(() => {
  for (const store of opened) store.close()
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
})

/** A folder of its own. */
export function storeFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-records-'))
  folders.push(folder)
  return folder
}

/** A store in a folder; both are new unless the folder is given. */
export async function newStore(folder = storeFolder()): Promise<Store> {
  const store = await openStore({ folder, now })
  opened.push(store)
  return store
}

/** A revision of a text; the store does not look into it. */
export function revisionOfText(text: string, says: Partial<NewRevision> = {}): NewRevision {
  const findings = '[{"verdict":"met"},{"verdict":"short"}]'
  return { text, engine: 'fingerwright 0.1.0', figures: '{}', findings, problems: '[]', who: 'K1', why: 'first try', ...says }
}

/** Begins a draft, or replaces the whole text of one as one step. */
export function keepText(store: Store, name: string, text: string): number {
  const draft = store.draft(name)
  const base = draft?.base ?? text
  const keep = draft?.position ?? 0
  const steps = draft === undefined ? [] : [{ splice: { at: 0, removed: draft.text, inserted: text }, said: 'new text' }]
  const saved = store.keepDraft(name, { version: draft?.version ?? 0, keep, steps, position: keep + steps.length, base })
  if (!('kept' in saved)) throw new Error(`not saved: ${JSON.stringify(saved)}`)
  return saved.kept.version
}
