/**
 * SQLite refuses a page past `max_page_count` with SQLITE_FULL, the very answer that it gives where the operating system says ENOSPC
 * (SQLite manual, result code 13; from memory): from there on the road is the same.
 */
import Database from 'better-sqlite3'
import { expect, it } from 'vitest'
import { StoreFault, storeFile } from './index.ts'
import { openDatabase } from './open-database.ts'
import { addRevision } from './revisions.ts'
import { onFile } from './store-fault.ts'
import { moment, newStore, now, revisionOfText, storeFolder } from './test-support/store-bench.ts'

it('a full store says so, undoes the save as a whole, keeps what was saved, and goes on when there is room', async () => {
  const folder = storeFolder()
  const file = storeFile(folder)
  const { database } = openDatabase({ Database, file, now })
  const pages = database.pragma('page_count', { simple: true }) as number
  database.pragma(`max_page_count = ${pages + 20}`)
  const keep = (text: string) =>
    onFile(file, () =>
      database
        .transaction(() => addRevision(database, { name: 'heron', revision: revisionOfText(text), saved: moment }))
        .immediate(),
    )
  // A page has 4096 bytes.
  for (let count = 0; count < 4; count++) keep('x'.repeat(10_000))
  expect(() => keep('x'.repeat(100_000))).toThrow(StoreFault)
  expect(() => keep('x'.repeat(100_000))).toThrow('no room is left on the disk')
  database.pragma(`max_page_count = ${pages + 2000}`)
  // SOURCE hand (the fifth is the first that finds room after four)
  expect(keep('x'.repeat(100_000))).toBe(5)
  database.close()
  expect((await newStore(folder)).revisions('heron').map(({ number }) => number)).toEqual([1, 2, 3, 4, 5])
})
