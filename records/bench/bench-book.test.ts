// SOURCE hand (what each test itself enters; the plan of the example design as the engine numbers it)
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { beforeEach, describe, expect, it } from 'vitest'
import { inspectionPlan, readVariation } from '../../engine/index.ts'
import type { BenchEntry, EntryOf, Store } from '../index.ts'
import { benchEntry } from '../index.ts'
import { migrations } from '../migrations.ts'
import { keptStore } from '../test-support/kept-store.ts'
import { moment, newStore, revisionOfText } from '../test-support/store-bench.ts'

const heron = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')
const LINK = 'dimensions.topLinkLength'

let store: Store
beforeEach(async () => {
  store = await newStore()
  store.keepRevision('heron', revisionOfText(heron))
})

const keep = (...entries: readonly BenchEntry[]) => store.bench.keepEntries('heron', { entries, who: 'K1', engine: 'e 1' })
const lot = { kind: 'lot', lot: 'L7', revision: 1 } as const
const article = { kind: 'article', lot: 'L7', serial: 'A-001' } as const
const gauge = { kind: 'gauge', gauge: 'caliper 1', resolution_mm: 0.01, uncertainty_mm: 0.02, calibrated: '2031-01-02' } as const
const reading = (found: string, more: Partial<EntryOf<'reading'>> = {}): BenchEntry => ({
  kind: 'reading',
  serial: 'A-001',
  characteristic: LINK,
  visit: 'finished',
  found,
  value: { least: Number(found), most: Number(found) },
  ...more,
})

describe('the bench book', () => {
  it('freezes the plan of the revision with the first lot, and tells what was entered with who and when', () => {
    expect(keep(gauge, lot, article, reading('24.507', { gauge: 'caliper 1' }))).toEqual({ kept: [1] })
    // SOURCE other-method (the plan that the engine makes of the same text)
    expect(store.bench.plan('heron', 1)).toEqual(JSON.parse(JSON.stringify(inspectionPlan(readVariation(heron).value!))))
    const serials = [{ serial: 'A-001', readings: 1 }]
    expect(store.bench.lots('heron')).toEqual([{ lot: 'L7', revision: 1, who: 'K1', made: moment, serials, imports: [] }])
    expect(store.bench.serial('heron', 'A-001')).toMatchObject({
      lot: 'L7',
      revision: 1,
      readings: [{ id: 1, found: '24.507', value: { least: 24.507, most: 24.507 }, gauge: 'caliper 1', who: 'K1', made: moment }],
    })
    expect(store.bench.serial('heron', 'A-002')).toBeUndefined()
  })

  it('leaves a wrong reading where it is; its correction says why and which one it corrects', () => {
    keep(lot, article, reading('25.407'))
    keep(reading('24.507', { corrects: 1, reason: 'digits turned round' }))
    const [wrong, right] = store.bench.serial('heron', 'A-001')?.readings ?? []
    expect(wrong).toMatchObject({ found: '25.407', correctedBy: 2 })
    expect(right).toMatchObject({ found: '24.507', corrects: 1, reason: 'digits turned round' })
    expect(store.bench.lots('heron')[0]?.serials[0]?.readings).toBe(1)
    // One without a value takes the reading back.
    expect(keep(reading('0', { found: undefined, value: undefined, corrects: 2, reason: 'another set' }))).toHaveProperty('kept')
    expect(store.bench.lots('heron')[0]?.serials[0]?.readings).toBe(0)
  })

  it('keeps the newest calibration of a gauge for readings to come', () => {
    keep(gauge, lot, article, reading('24.5', { gauge: 'caliper 1' }))
    keep({ ...gauge, calibrated: '2031-03-01', uncertainty_mm: 0.01 })
    expect(store.bench.gauges()).toMatchObject([{ gauge: 'caliper 1', calibrated: '2031-03-01', uncertainty_mm: 0.01 }])
  })

  it('takes certificates, tests with a photo, decisions and sign-offs, and shows them by serial number', () => {
    const picture = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13])
    const photoFile = { type: 'image/png' as const, base64: picture.toString('base64') }
    const loaded = {
      kind: 'test',
      serial: 'A-001',
      test: 'load to hold',
      value: 60,
      outcome: 'did',
      tested: '2031-04-04',
      rig: 'rig 1',
    } as const
    const entries: readonly BenchEntry[] = [
      ...[lot, article],
      {
        kind: 'certificate',
        lot: 'L7',
        coating: 'film on the pins',
        coupons_mm: [0.012, 0.0125],
        cure_degC: 180,
        issued: '2031-04-01',
      },
      { ...loaded, photoFile },
      { kind: 'decision', serial: 'A-001', decision: 'use as is', why: 'by a hair', consequence: 'holds as measured' },
      { kind: 'sign-off', lot: 'L7', statement: 'the lot was looked through' },
    ]
    expect(entries.map((entry) => benchEntry.safeParse(entry).success)).not.toContain(false)
    expect(keep(...entries)).toEqual({ kept: [] })
    expect(store.bench.serial('heron', 'A-001')).toMatchObject({
      certificates: [{ coupons_mm: [0.012, 0.0125], cure_degC: 180 }],
      tests: [{ test: 'load to hold', value: 60, outcome: 'did', hasPhoto: true }],
      decisions: [{ decision: 'use as is', consequence: 'holds as measured' }],
      signOffs: [{ lot: 'L7', statement: 'the lot was looked through' }],
    })
    expect(Buffer.from(store.bench.photo('heron', 1)?.bytes ?? []).equals(picture)).toBe(true)
    expect(store.bench.photo('other', 1)).toBeUndefined()
  })

  it.each<[string, readonly BenchEntry[], string, string]>([
    ['a lot of a revision that is not there', [{ ...lot, revision: 2 }], 'entry 1', 'revision 2, which is not there'],
    ['a lot twice', [lot, lot], 'entry 2', 'lot L7, which was begun'],
    ['a serial of no lot', [article], 'entry 1', 'lot L7, which is not there'],
    ['a reading of no serial', [lot, reading('24.5')], 'entry 2', 'serial A-001, which is not there'],
    ['an unknown gauge', [lot, article, reading('24.5', { gauge: 'x' })], 'entry 3', 'gauge x, which is not there'],
    ['what is not in the plan', [lot, article, reading('1', { characteristic: 'pins.none' })], 'entry 3', 'of the plan'],
    ['a correction of nothing', [lot, article, reading('1', { corrects: 9, reason: 'x' })], 'entry 3', 'a correction is of'],
    ['a correction without a reason', [lot, article, reading('1'), reading('2', { corrects: 1 })], 'entry 4', 'CHECK'],
    ['a reading without a value', [lot, article, reading('1', { value: undefined })], 'entry 3', 'CHECK'],
  ])('refuses %s by its place, and keeps nothing of the batch', (_what, entries, place, found) => {
    const answer = keep(...entries)
    expect(answer).toMatchObject({ refused: [{ place, found: expect.stringContaining(found) }] })
    expect(store.bench.lots('heron')).toEqual([])
  })

  const field: EntryOf<'field'> = {
    kind: 'field',
    serial: 'A-001',
    sort: 'complaint',
    came: '2031-05-01',
    told: 'did not open once',
    harm: 'nobody hurt',
    risks: ['doesNotLetGo'],
    contact: 'C-014',
    contactsIn: 'green book, office safe',
  }

  it('keeps what came back with the set, its risks and a key of who told it; a correction stands beside it', () => {
    expect(keep(lot, article, field)).toEqual({ kept: [] })
    keep({ ...field, found: 'stiff grease', corrects: 1, reason: 'looked at on the bench' })
    expect(store.bench.field('heron')).toMatchObject([
      { id: 1, serial: 'A-001', lot: 'L7', revision: 1, risks: ['doesNotLetGo'], contact: 'C-014', correctedBy: 2 },
      { id: 2, found: 'stiff grease', contactsIn: 'green book, office safe', corrects: 1, who: 'K1' },
    ])
    expect(store.bench.serial('heron', 'A-001')?.field).toEqual(store.bench.field('heron'))
    expect(store.bench.field('other')).toEqual([])
  })

  it.each<[string, Partial<EntryOf<'field'>>, string]>([
    ['the telephone number of who told it', { contact: '+44 20 7946 0000' }, 'stays outside of the store'],
    ['an address', { contact: 'somebody@example.org' }, 'stays outside of the store'],
    ['a risk that the design does not name', { risks: ['bites'] }, 'risk bites, which is not there'],
    ['a correction of another set', { corrects: 7, reason: 'x' }, 'a correction is of the same article'],
  ])('does not take %s', (_what, changed, found) => {
    keep(lot, article)
    expect(keep({ ...field, ...changed })).toMatchObject({
      refused: [{ place: 'entry 1', found: expect.stringContaining(found) }],
    })
    expect(store.bench.field('heron')).toEqual([])
  })

  it('takes the text of a file once', () => {
    const file = { lot: 'L7', name: 'box.csv', text: 'serial, …' }
    const imported = () =>
      store.bench.keepEntries('heron', { entries: [article, reading('24.5')], who: 'K1', engine: 'e 1', file })
    keep(lot)
    expect(imported()).toHaveProperty('kept')
    expect(imported()).toMatchObject({
      refused: [{ place: 'file', found: expect.stringContaining('box.csv, taken in on 2031-04-05 by K1') }],
    })
    expect(store.bench.serial('heron', 'A-001')?.readings).toMatchObject([{ file: 'box.csv' }])
  })

  it('of a store of schema 3 is read as it was', async () => {
    const found = (await newStore(keptStore(3))).bench.serial('heron', 'A-001')
    expect(found?.readings.map(({ found: typed, correctedBy }) => [typed, correctedBy])).toEqual([
      ['2.697', 2],
      ['2.997', undefined],
    ])
    expect([found?.tests.length, found?.decisions.length, found?.certificates.length, found?.signOffs.length]).toEqual([
      1, 1, 1, 1,
    ])
  })
})

const TABLES = [
  'plans',
  'gauges',
  'lots',
  'articles',
  'imports',
  'withdrawals',
  'readings',
  'certificates',
  'bench_tests',
  'decisions',
  'sign_offs',
  'field_log',
]

describe('SQLite itself refuses, whatever program asks,', () => {
  it.each(TABLES)('to change, delete or replace an entry of %s', async (table) => {
    const { file } = await newStore(keptStore(migrations.length))
    const other = new Database(file)
    const column = table === 'plans' ? 'engine' : 'who'
    expect(() => other.exec(`update ${table} set ${column} = 'other'`)).toThrow('never changes')
    expect(() => other.exec(`delete from ${table}`)).toThrow('never deleted')
    expect(() => other.exec(`insert or replace into ${table} select * from ${table}`)).toThrow('never replaced')
    other.close()
  })
})
