// SOURCE hand (the contents of records/kept/, read by eye)
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { migrate, schemaOf, schemaText } from './migrate.ts'
import { migrations } from './migrations.ts'
import { keptStore } from './test-support/kept-store.ts'
import { newStore, storeFolder } from './test-support/store-bench.ts'

const schemas = migrations.map((_, index) => index + 1)
const earlier = schemas.slice(0, -1)

it('a store of every schema is kept', () => {
  expect(earlier.length).toBeGreaterThan(0)
  expect(readdirSync(join(import.meta.dirname, 'kept')).sort()).toEqual(schemas.map((schema) => `schema-${schema}.sql`))
})

describe.each(schemas)('a store of schema %i', (schema) => {
  it('is opened with everything that was in it', async () => {
    const store = await newStore(keptStore(schema))
    expect(store.notKept).toBeUndefined()
    expect(store.designs().map(({ name, revisions }) => [name, revisions])).toEqual([
      ['W3’s ring finger', 0],
      ['heron', 2],
    ])
    expect(store.revision('heron', 2)).toMatchObject({ who: 'K2', why: 'the margin was small;\nseen on the bench' })
    expect(store.revisions('heron')[0]?.verdicts).toEqual(['met'])
    if (schema >= 2) expect(store.draft('W3’s ring finger')).toMatchObject({ version: 3, text: 'cd', position: 1 })
  })

  it('comes to the newest schema, to the letter that of a new store', async () => {
    const open = async (folder: string) => {
      const database = new Database((await newStore(folder)).file, { readonly: true })
      const found = [schemaOf(database), schemaText(database), database.pragma('integrity_check', { simple: true })]
      database.close()
      return found
    }
    expect(await open(keptStore(schema))).toEqual(await open(storeFolder()))
  })
})

describe.each(earlier)('before a store of schema %i is migrated', (schema) => {
  it('it is copied as it is, and the message names the copy', async () => {
    const folder = keptStore(schema)
    const { notes } = await newStore(folder)
    const copy = join(folder, `store-schema-${schema}-2031-04-05T06-07-08.009Z.sqlite`)
    expect(notes).toHaveLength(1)
    expect(notes[0]).toContain(copy)
    const database = new Database(copy, { readonly: true })
    expect(schemaOf(database)).toBe(schema)
    expect(database.pragma('integrity_check', { simple: true })).toBe('ok')
    expect(database.prepare('select count(*) as count from revisions').get()).toEqual({ count: 2 })
    database.close()
  })

  it('it is left as it is when the copy cannot be written', async () => {
    const folder = keptStore(schema)
    const first = await newStore(folder)
    first.close()
    const again = keptStore(schema, folder)
    await expect(newStore(again)).rejects.toThrow('exists already')
    const database = new Database(join(again, 'store.sqlite'), { readonly: true })
    expect(schemaOf(database)).toBe(schema)
    database.close()
  })
})

it('a store of the newest schema is not copied', async () => {
  const folder = keptStore(migrations.length)
  expect((await newStore(folder)).notes).toEqual([])
  expect(readdirSync(folder).filter((name) => name.includes('schema'))).toEqual([])
})

it('a migration that fails leaves the store at its schema with everything in it', async () => {
  const store = await newStore(keptStore(migrations.length))
  const database = new Database(store.file)
  const broken = [...migrations, 'create table half (a); insert into revisions select * from nowhere;']
  expect(() => migrate(database, broken)).toThrow('nowhere')
  expect(schemaOf(database)).toBe(migrations.length)
  expect(schemaText(database)).not.toContain('half')
  database.close()
  expect(store.revision('heron', 2)?.who).toBe('K2')
})

it('a migration that leaves rows without what they belong to is undone', async () => {
  const store = await newStore(keptStore(migrations.length))
  const database = new Database(store.file)
  database.pragma('foreign_keys = off')
  expect(() => migrate(database, [...migrations, 'delete from designs'])).toThrow('without what they belong to')
  database.close()
  expect(store.designs()).toHaveLength(2)
})

it('two programs that open an earlier store at once both find the newest schema', async () => {
  const folder = keptStore(1)
  const one = new Database(join(folder, 'store.sqlite'))
  const other = new Database(join(folder, 'store.sqlite'))
  migrate(one)
  migrate(other)
  expect([schemaOf(one), schemaOf(other)]).toEqual([migrations.length, migrations.length])
  one.close()
  other.close()
})
