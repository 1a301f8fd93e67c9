// SOURCE hand (numbers count the saves of each test)
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import type { Store } from './index.ts'
import { keptStore } from './test-support/kept-store.ts'
import { keepText, newStore, revisionOfText, storeFolder } from './test-support/store-bench.ts'

/** The whole of a store as a file, as it stands. */
function packed(store: Store): string {
  const file = join(storeFolder(), 'whole.sqlite')
  store.copyTo(file)
  return file
}

const everything = (store: Store) =>
  store.designs().map(({ name, revisions }) => ({
    name,
    draft: store.draft(name),
    revisions: Array.from({ length: revisions }, (_, index) => store.revision(name, index + 1)),
  }))

async function storeWith(...texts: readonly string[]): Promise<Store> {
  const store = await newStore()
  for (const text of texts) store.keepRevision('heron', revisionOfText(text))
  return store
}

describe('a whole store', () => {
  it('is the same on another machine, and brings nothing new the second time', async () => {
    const here = await storeWith('one', 'two')
    keepText(here, 'heron', 'three')
    keepText(here, 'heron', 'four')
    keepText(here, 'own', 'five')
    const there = await newStore()
    expect(there.bringIn(packed(here))).toEqual([
      { name: 'heron', came: 'new', as: 'heron', revisions: 2 },
      { name: 'own', came: 'new', as: 'own', revisions: 0 },
    ])
    expect(everything(there)).toEqual(everything(here))
    const before = everything(there)
    expect(there.bringIn(packed(here)).map(({ came }) => came)).toEqual(['there', 'there'])
    expect(everything(there)).toEqual(before)
  })

  it('goes home again with what was added elsewhere', async () => {
    const here = await storeWith('one')
    keepText(here, 'heron', 'one')
    const there = await newStore()
    there.bringIn(packed(here))
    there.keepRevision('heron', revisionOfText('two', { who: 'K2' }))
    keepText(there, 'heron', 'three')
    const version = here.draft('heron')?.version ?? 0
    expect(here.bringIn(packed(there))).toEqual([{ name: 'heron', came: 'further', as: 'heron', revisions: 1 }])
    expect(here.revision('heron', 2)).toEqual(there.revision('heron', 2))
    expect(here.draft('heron')?.text).toBe('three')
    expect(here.draft('heron')?.version).toBeGreaterThan(version)
    expect(there.bringIn(packed(here))[0]?.came).toBe('there')
  })

  it('that has parted comes in beside the one here, whole and under a free name', async () => {
    const [here, there] = [await storeWith('one', 'two'), await storeWith('one', 'other')]
    keepText(there, 'heron-2', 'taken')
    keepText(here, 'heron', 'draft')
    const before = everything(there)
    expect(there.bringIn(packed(here))).toEqual([{ name: 'heron', came: 'new', as: 'heron-3', revisions: 2 }])
    expect(everything(there).filter(({ name }) => name !== 'heron-3')).toEqual(before)
    expect(there.revision('heron-3', 1)?.text).toBe('one')
    expect(there.draft('heron-3')?.text).toBe('draft')
  })

  it('whose draft has parted comes in beside the one here, although the revisions agree', async () => {
    const [here, there] = [await storeWith('one'), await storeWith('one')]
    keepText(here, 'heron', 'a')
    keepText(there, 'heron', 'b')
    expect(there.bringIn(packed(here))[0]).toMatchObject({ came: 'new', as: 'heron-2' })
    expect([there.draft('heron')?.text, there.draft('heron-2')?.text]).toEqual(['b', 'a'])
  })

  it('of an earlier schema comes in, and its file is left as it is', async () => {
    const file = join(keptStore(1), 'store.sqlite')
    const before = readFileSync(file)
    const there = await newStore()
    expect(there.bringIn(file)).toContainEqual({ name: 'heron', came: 'new', as: 'heron', revisions: 2 })
    expect(readFileSync(file)).toEqual(before)
  })

  it('is not written over a file that exists', async () => {
    const here = await storeWith('one')
    const file = join(storeFolder(), 'mine')
    writeFileSync(file, 'mine')
    expect(() => here.copyTo(file)).toThrow('exists already')
    expect(readFileSync(file, 'utf8')).toBe('mine')
    expect(() => here.copyTo(join(storeFolder(), 'nowhere/whole.sqlite'))).toThrow('nowhere')
  })
})

describe('nothing comes in from a store', () => {
  it.each<[string, string]>([
    ['whose tables were altered', 'create view more as select 1'],
    ['with a name that hides something', "insert into designs values (9, 'a\u202eb', '2031-01-01T00:00:00.000Z')"],
    ['with a revision out of its order', 'update revisions set number = 5 where number = 2'],
    ['with a revision said by nobody', "update revisions set who = ' '"],
    ['with a moment that is none', "update revisions set saved = 'yesterday'"],
    ['with a revision over the limit', "update revisions set text = printf('%.*c', 2000001, 'x')"],
    ['with a draft that its steps do not lead to', "update drafts set version = version + 1, text = 'other'"],
    ['with a step that fits nowhere', 'update draft_steps set splice = \'{"at":7,"removed":"x","inserted":""}\''],
    ['with a step that is no splice', "update draft_steps set splice = '[]'"],
    ['with a step of many keys', 'update draft_steps set splice = \'{"__proto__":{},"at":0,"removed":"","inserted":""}\''],
    ['with a position past its steps', 'update drafts set version = version + 1, position = 9'],
    ['with a draft of nothing', 'pragma foreign_keys = off; delete from designs where id = 2'],
  ])('%s', async (_what, statement) => {
    const file = join(keptStore(2), 'store.sqlite')
    const database = new Database(file)
    // Whoever alters a file can take its triggers away and put them back.
    const triggers = database.prepare<[], { name: string; sql: string }>(
      "select name, sql from sqlite_schema where type = 'trigger'",
    )
    const kept = triggers.all()
    for (const { name } of kept) database.exec(`drop trigger ${name}`)
    database.exec(statement)
    for (const { sql } of kept) database.exec(sql)
    database.close()
    const there = await storeWith('one')
    const before = everything(there)
    expect(() => there.bringIn(file)).toThrow(file)
    expect(everything(there)).toEqual(before)
  })

  it('that was damaged on the way', async () => {
    const here = await storeWith(...Array.from({ length: 20 }, (_, index) => `${index}`.repeat(4000)))
    const file = packed(here)
    const bytes = readFileSync(file)
    // Every place but the head, where damage is seen at once.
    for (let at = 4096; at < bytes.length; at += 1024) bytes.fill(0xff, at, at + 16)
    writeFileSync(file, bytes)
    const there = await newStore()
    expect(() => there.bringIn(file)).toThrow('damaged')
    expect(there.designs()).toEqual([])
  })

  it('that is not there, or is empty', async () => {
    const there = await newStore()
    const file = join(storeFolder(), 'empty.sqlite')
    expect(() => there.bringIn(file)).toThrow(file)
    writeFileSync(file, '')
    expect(() => there.bringIn(file)).toThrow('an empty file')
  })
})
