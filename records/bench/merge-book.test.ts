// SOURCE hand (the contents of records/kept/, read by eye, and what each test itself enters)
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import type { BenchEntry, Store } from '../index.ts'
import { migrations } from '../migrations.ts'
import { keptStore } from '../test-support/kept-store.ts'
import { newStore, storeFolder } from '../test-support/store-bench.ts'

/** A store with a lot of one set, of which everything was entered that can be. */
const benched = (): Promise<Store> => newStore(keptStore(migrations.length))

function packed(store: Store): string {
  const file = join(storeFolder(), 'whole.sqlite')
  store.copyTo(file)
  return file
}

const heronOf = (answers: ReturnType<Store['bringIn']>) => answers.find(({ name }) => name === 'heron')
const reading = (found: string, more: object = {}): BenchEntry => ({
  kind: 'reading',
  serial: 'A-001',
  characteristic: 'dimensions.pinDiameter',
  visit: 'finished',
  found,
  value: { least: Number(found), most: Number(found) },
  ...more,
})
const keep = (store: Store, who: string, ...entries: readonly BenchEntry[]) =>
  expect(store.bench.keepEntries('heron', { entries, who, engine: 'e 1' })).toHaveProperty('kept')
const foundIn = (store: Store, design = 'heron') =>
  store.bench
    .readings(design, 'L7')
    ?.map(({ serial, found, who, correctedBy }) => [serial, found, who, correctedBy !== undefined])

describe('a bench book', () => {
  it('is the same on another machine, and brings nothing new the second time', async () => {
    const [here, there] = [await benched(), await newStore()]
    // Three readings, a withdrawal, a certificate, two tests, two decisions, a signature, a complaint.
    expect(heronOf(there.bringIn(packed(here)))).toEqual({
      name: 'heron',
      came: 'new',
      as: 'heron',
      revisions: 2,
      lots: 1,
      entries: 11,
    })
    const whole = (store: Store) => [
      store.bench.lots('heron'),
      store.bench.gauges(),
      store.bench.serial('heron', 'A-001'),
      store.bench.plan('heron', 2),
    ]
    expect(whole(there)).toEqual(whole(here))
    expect(there.bench.photo('heron', 1)).toEqual(here.bench.photo('heron', 1))
    expect(heronOf(there.bringIn(packed(here)))).toEqual({ name: 'heron', came: 'there', as: 'heron', revisions: 0 })
    expect(whole(there)).toEqual(whole(here))
  })

  it('that went on at two benches has every entry of both, once, and loses none', async () => {
    const [here, there] = [await benched(), await benched()]
    const article = { kind: 'article', lot: 'L7', serial: 'A-002' } as const
    keep(here, 'K1', article, reading('2.991', { serial: 'A-002' }))
    keep(there, 'K2', article, reading('2.992', { serial: 'A-002' }), reading('2.993', { corrects: 2, reason: 'read again' }))
    expect(heronOf(here.bringIn(packed(there)))).toMatchObject({ came: 'further', entries: 2 })
    expect(heronOf(there.bringIn(packed(here)))).toMatchObject({ came: 'further', entries: 1 })
    const all = [
      ['A-001', '2.697', 'K1', true],
      ['A-001', '2.997', 'K2', true],
      ['A-001', '29.97', 'K1', false],
      ['A-002', '2.991', 'K1', false],
      ['A-002', '2.992', 'K2', false],
      ['A-001', '2.993', 'K2', false],
    ]
    expect(foundIn(here)).toEqual(all)
    expect(new Set(foundIn(there)?.map(String))).toEqual(new Set(all.map(String)))
    expect(here.bench.serial('heron', 'A-002')?.who).toBe('K1')
    expect([heronOf(here.bringIn(packed(there)))?.came, heronOf(there.bringIn(packed(here)))?.came]).toEqual(['there', 'there'])
  })

  it('takes a file that was taken in at both benches once', async () => {
    const [here, there] = [await benched(), await benched()]
    const file = { lot: 'L7', name: 'box.csv', text: 'serial, …' }
    for (const [store, who] of [
      [here, 'K1'],
      [there, 'K2'],
    ] as const)
      store.bench.keepEntries('heron', { entries: [reading('2.994'), reading('2.994')], who, engine: 'e 1', file })
    expect(heronOf(here.bringIn(packed(there)))?.came).toBe('there')
    expect(foundIn(here)?.filter(([, found]) => found === '2.994')).toHaveLength(2)
  })

  it.each<[string, (store: Store, who: string) => void]>([
    [
      'where one reading was corrected in two ways',
      (store, who) => keep(store, who, reading('2.99', { corrects: 2, reason: `as ${who} saw it` })),
    ],
    ['where lots of one name were begun apart', (store, who) => keep(store, who, { kind: 'lot', lot: 'L8', revision: 2 })],
  ])('comes in beside the one here, whole and once, %s', async (_what, go) => {
    const [here, there] = [await benched(), await benched()]
    go(here, 'K1')
    go(there, 'K2')
    const before = foundIn(here)
    expect(heronOf(here.bringIn(packed(there)))).toMatchObject({ came: 'new', as: 'heron-2', revisions: 2 })
    expect(foundIn(here)).toEqual(before)
    expect(foundIn(here, 'heron-2')).toEqual(foundIn(there))
    expect(heronOf(here.bringIn(packed(there)))).toMatchObject({ came: 'there', as: 'heron-2' })
    expect(here.designs().map(({ name }) => name)).not.toContain('heron-3')
  })
})

describe('nothing comes in from a bench book', () => {
  it.each([
    ['with words that hide something', "update readings set found = '2.9\u202e7'"],
    ['with a plan that is none', "update plans set characteristics = '{}'"],
    ['with a reading of nothing in the plan', "update readings set characteristic = 'pins.none'"],
    ['with a number beyond any size', 'update readings set least = 1e300, most = 1e300'],
    [
      'with a correction of another set',
      "insert into articles values (2, 1, 1, 'A-002', null, 'K1', '2031-01-04T03:04:05.678Z'); update readings set article = 2 where id = 2",
    ],
  ])('%s', async (_what, statement) => {
    const file = join(keptStore(migrations.length), 'store.sqlite')
    const database = new Database(file)
    // Whoever alters a file can take its triggers away and put them back.
    const kept = database
      .prepare<[], { name: string; sql: string }>("select name, sql from sqlite_schema where type = 'trigger'")
      .all()
    for (const { name } of kept) database.exec(`drop trigger ${name}`)
    database.exec(statement)
    for (const { sql } of kept) database.exec(sql)
    database.close()
    const there = await newStore()
    expect(() => there.bringIn(file)).toThrow(file)
    expect([there.designs(), there.bench.gauges()]).toEqual([[], []])
  })
})
