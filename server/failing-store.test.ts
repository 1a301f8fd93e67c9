// SOURCE standard RFC 9110 (status codes 200, 503), from memory
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openAnyStore, type Store } from '../records/index.ts'
import { type Running, shelve, startServer } from './index.ts'
import { askJson } from './test-support/asked-json.ts'

const designs = join(import.meta.dirname, '../designs')
const folder = mkdtempSync(join(tmpdir(), 'fingerwright-failing-'))
const place = { folder, now: () => new Date(0) }

let store: Store
let server: Running
beforeAll(async () => {
  const whole = await openAnyStore(place)
  const results = { engine: 'fingerwright', figures: '{}', findings: '[]', problems: '[]', who: 'K1' }
  for (let count = 0; count < 20; count++)
    whole.keepRevision('heron', { ...results, text: `${count}`.repeat(9000), why: `try ${count}` })
  whole.close()
  // Damage behind the pages that hold the tables' own names, which come first: the store still opens.
  const bytes = readFileSync(whole.file)
  for (let at = firstHarmed(bytes.length); at < bytes.length; at += 1024) bytes.fill(0xff, at, at + 64)
  writeFileSync(whole.file, bytes)
  store = await openAnyStore(place)
  server = await startServer({ shelf: shelve([join(designs, 'heron.json')]), page: new Map(), store }, { port: 0, orNext: false })
})
afterAll(async () => {
  await server.close()
  store.close()
  rmSync(folder, { recursive: true, force: true })
})

/** The first page of the second half: the texts of the revisions fill the most of the file. */
function firstHarmed(bytes_count: number): number {
  const page_bytes = 4096
  return page_bytes * Math.ceil(bytes_count / page_bytes / 2)
}

const ask = (method: string, path: string, body?: unknown) => askJson(server.address, [method, path, body])

it('with a store that turns out to be damaged the files are served on', async () => {
  expect(store.notKept).toBeUndefined()
  expect((await ask('GET', '/api/designs')).json).toMatchObject({ designs: [{ name: 'heron', given: true }] })
  expect((await ask('GET', '/api/designs/heron')).text).toBe(readFileSync(join(designs, 'heron.json'), 'utf8'))
})

it('what the store cannot give or take is refused with its place, and a save says that it is not saved', async () => {
  const read = await ask('GET', '/api/designs/heron/revisions/20')
  expect(read.status).toBe(503)
  expect(read.json.error).toContain(`${store.file}: a damaged store`)
  const saved = await ask('POST', '/api/designs/heron/revisions', { version: 0, who: 'K1', why: 'one more' })
  expect(saved.status).toBe(503)
  expect(saved.json.error).toMatch(/^Not saved\. /)
})
