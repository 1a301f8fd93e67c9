import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Context, Hono } from 'hono'
import { sentence } from '../engine/index.ts'
import { type Store, StoreFault, storeLimits } from '../records/index.ts'
import { bodyAtMost } from './body-limit.ts'

/** The media type of an SQLite file, registered by its makers (from memory). */
const STORE_FILE = 'application/vnd.sqlite3'

/** Faults of the file that was sent; all others are faults of the store here. */
const OF_THE_FILE: ReadonlySet<string> = new Set([
  'no store',
  'store damaged',
  'store does not fit',
  'store too large',
  'later version',
])

/** The whole store as one file: handed out, and brought in. */
export function addStoreFileRoutes(app: Hono, store: Store): void {
  app.get('/api/store', (context) => {
    const bytes = withTemporaryFile((file) => {
      store.copyTo(file)
      return readFileSync(file)
    })
    const disposition = 'attachment; filename="fingerwright-store.sqlite"'
    return context.body(new Uint8Array(bytes), 200, { 'Content-Type': STORE_FILE, 'Content-Disposition': disposition })
  })
  app.post('/api/store', bodyAtMost(storeLimits.storeBytes), async (context) => {
    if (context.req.header('content-type') !== STORE_FILE) return context.json({ error: `send a store as ${STORE_FILE}` }, 415)
    const bytes = new Uint8Array(await context.req.arrayBuffer())
    return withTemporaryFile((file) => {
      writeFileSync(file, bytes, { flag: 'wx', mode: 0o600 })
      return broughtIn(context, { store, file })
    })
  })
}

function broughtIn(context: Context, { store, file }: { readonly store: Store; readonly file: string }): Response {
  try {
    return context.json({ designs: store.bringIn(file) })
  } catch (error) {
    if (!(error instanceof StoreFault) || !OF_THE_FILE.has(error.problem.code)) throw error
    return context.json({ error: `Nothing was brought in. ${sentence('The file', error.problem)}` }, 422)
  }
}

function withTemporaryFile<Result>(use: (file: string) => Result): Result {
  const folder = mkdtempSync(join(tmpdir(), 'fingerwright-store-'))
  try {
    return use(join(folder, 'store.sqlite'))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
