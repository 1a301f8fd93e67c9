import { chmodSync, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { findStore, openAnyStore, openStore, StoreFault, storeFile } from './index.ts'
import { migrations } from './migrations.ts'
import { asAnotherUser } from './test-support/as-another-user.ts'
import { keptStore } from './test-support/kept-store.ts'
import { keepText, newStore, now, revisionOfText, storeFolder } from './test-support/store-bench.ts'

describe('a store that is opened', () => {
  it('waits for the disk at every save, and keeps rows that belong together', async () => {
    // SOURCE book (SQLite manual, PRAGMA synchronous: 2 is FULL; from memory)
    const { openDatabase } = await import('./open-database.ts')
    const { database } = openDatabase({ Database, file: storeFile(storeFolder()), now })
    const setting = (name: string) => database.pragma(name, { simple: true })
    expect([setting('journal_mode'), setting('synchronous'), setting('foreign_keys')]).toEqual(['wal', 2, 1])
    database.close()
  })

  it('is made in a folder that only its owner may enter', async () => {
    const folder = join(storeFolder(), 'deep/inside')
    await newStore(folder)
    // SOURCE hand (rwx for the owner, nothing for others)
    expect(statSync(folder).mode & 0o777).toBe(0o700)
  })

  it('is only looked for where nothing is to be saved: none is made', async () => {
    const folder = join(storeFolder(), 'nowhere')
    expect(await findStore({ folder, now })).toBeUndefined()
    expect(existsSync(folder)).toBe(false)
  })

  it('shows what another program saved', async () => {
    const folder = storeFolder()
    const [one, other] = [await newStore(folder), await newStore(folder)]
    one.keepRevision('heron', revisionOfText('one'))
    expect(other.revision('heron', 1)?.text).toBe('one')
    keepText(other, 'heron', 'one')
    expect(one.keepDraft('heron', { version: 0, keep: 0, steps: [], position: 0, base: 'x' })).toHaveProperty('newer.version', 1)
  })
})

describe('a file that cannot be a store', () => {
  const foreign = (file: string) => {
    const database = new Database(file)
    database.exec('create table letters (a)')
    database.close()
  }
  const later = (file: string) => {
    const database = new Database(file)
    database.exec(readFileSync(join(import.meta.dirname, `kept/schema-${migrations.length}.sql`), 'utf8'))
    database.pragma(`user_version = ${migrations.length + 1}`)
    database.close()
  }
  const altered = (file: string) => {
    const database = new Database(file)
    database.exec(readFileSync(join(import.meta.dirname, `kept/schema-${migrations.length}.sql`), 'utf8'))
    database.exec('create trigger more after insert on designs begin delete from draft_steps; end')
    database.close()
  }
  const torn = (file: string) => {
    const database = new Database(file)
    database.exec(readFileSync(join(import.meta.dirname, `kept/schema-${migrations.length}.sql`), 'utf8'))
    database.close()
    writeFileSync(file, readFileSync(file).subarray(0, 5000))
  }

  it.each([
    ['words', (file: string) => writeFileSync(file, 'no store at all'), 'no store of Fingerwright'],
    ['another program’s tables', foreign, 'no store of Fingerwright'],
    ['half a file', torn, 'damaged'],
    ['a folder', (file: string) => mkdirSync(file), 'may be opened'],
    ['tables that were altered', altered, 'not those of a store'],
    ['a store of a later version', later, `schema ${migrations.length + 1}, from a later version`],
  ])('%s: is told with its place and a way out, and left as it is', async (_what, make, words) => {
    const folder = storeFolder()
    const file = storeFile(folder)
    make(file)
    const before = statSync(file).isFile() ? readFileSync(file) : undefined
    await expect(openStore({ folder, now })).rejects.toThrow(StoreFault)
    const store = await openAnyStore({ folder, now })
    expect(store.notKept).toContain(file)
    expect(store.notKept).toContain(words)
    expect(store.notKept).toContain('Needed:')
    expect(store.designs()).toEqual([])
    expect(() => keepText(store, 'heron', 'x')).toThrow(store.notKept)
    if (before !== undefined) expect(readFileSync(file)).toEqual(before)
  })

  it('a folder that cannot be made is told', async () => {
    const file = join(storeFolder(), 'file')
    writeFileSync(file, '')
    for (const folder of [file, join(file, 'below'), join(file, 'far/below')]) {
      const store = await openAnyStore({ folder, now })
      expect(store.notKept).toContain('Name another folder with --store')
      store.close()
    }
  })
})

describe('a store that may only be read', () => {
  const asReadOnly = async (folder: string, work: () => Promise<void>) => {
    // What is loaded now need not be found by the other user.
    await newStore()
    chmodSync(folder, 0o555)
    for (const ending of ['', '-wal', '-shm']) {
      const file = `${storeFile(folder)}${ending}`
      if (existsSync(file)) chmodSync(file, 0o444)
    }
    await asAnotherUser(work)
    chmodSync(folder, 0o755)
  }

  it.each(['that was closed', 'that another program has open'])(
    '%s shows everything, and every save says why it is not kept',
    async (how) => {
      const folder = storeFolder()
      const writer = await newStore(folder)
      writer.keepRevision('heron', revisionOfText('one'))
      keepText(writer, 'heron', 'two')
      if (how === 'that was closed') writer.close()
      await asReadOnly(folder, async () => {
        const store = await openAnyStore({ folder, now })
        expect(store.notKept).toContain('may only be read')
        expect(store.revision('heron', 1)?.text).toBe('one')
        expect(store.draft('heron')?.text).toBe('two')
        expect(() => keepText(store, 'heron', 'three')).toThrow(store.notKept)
        expect(() => store.keepRevision('heron', revisionOfText('three'))).toThrow(store.notKept)
        store.close()
      })
      const again = await newStore(folder)
      expect([again.draft('heron')?.text, again.revisions('heron').length]).toEqual(['two', 1])
    },
  )

  it('is shown at an earlier schema too, which stays as it is', async () => {
    const folder = keptStore(1)
    const before = readFileSync(storeFile(folder))
    await asReadOnly(folder, async () => {
      const store = await openAnyStore({ folder, now })
      expect(store.revision('heron', 2)?.who).toBe('K2')
      store.close()
    })
    expect(readFileSync(storeFile(folder))).toEqual(before)
  })

  it('or cannot be made is told before the first save', async () => {
    const folder = storeFolder()
    await asReadOnly(folder, async () => {
      const store = await openAnyStore({ folder, now })
      expect(store.notKept).toContain('store.sqlite')
      expect(store.designs()).toEqual([])
    })
  })
})
