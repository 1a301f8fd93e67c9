// SOURCE hand (what each test itself enters)
import { cpSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { BenchEntry, Store } from '../index.ts'
import { newStore, revisionOfText, storeFolder } from '../test-support/store-bench.ts'

const heron = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')
const LINK = 'dimensions.topLinkLength'
const BORE = 'parts.middle.holes.dip.position'

let store: Store
const send = (entries: readonly BenchEntry[], file?: string) =>
  store.bench.keepEntries('heron', {
    ...{ entries, who: 'K1', engine: 'e 1' },
    ...(file !== undefined && { file: { lot: 'L7', name: `${file}.csv`, text: file } }),
  })
const keep = (...entries: readonly BenchEntry[]) => send(entries)
const gauge = { kind: 'gauge', gauge: 'caliper 1', resolution_mm: 0.01, uncertainty_mm: 0.02, calibrated: '2031-01-02' } as const
const size = (found: string, more: object = {}): BenchEntry => ({
  ...{ kind: 'reading', serial: 'A-001', characteristic: LINK, visit: 'finished', found },
  ...{ value: { least: Number(found), most: Number(found) }, ...more },
})
const readings = () => store.bench.serial('heron', 'A-001')?.readings ?? []
/** What stands: neither corrected nor taken back. */
const standing = () => readings().flatMap(({ found, correctedBy, withdrawn }) => ((correctedBy ?? withdrawn) ? [] : [found]))

// The plan is worked out once; every test has a copy of the store.
const begun = storeFolder()
beforeAll(async () => {
  store = await newStore(begun)
  store.keepRevision('heron', revisionOfText(heron))
  keep({ kind: 'lot', lot: 'L7', revision: 1 }, { kind: 'article', lot: 'L7', serial: 'A-001' })
})
beforeEach(async () => {
  const folder = storeFolder()
  cpSync(begun, folder, { recursive: true })
  store = await newStore(folder)
})

const test = {
  kind: 'test',
  serial: 'A-001',
  test: 'load to hold',
  value: 60,
  outcome: 'did',
  tested: '2031-04-04',
  rig: 'r',
} as const
const decided = { serial: 'A-001', characteristic: LINK, why: 'by a hair', consequence: 'holds' }
const decision = { ...decided, kind: 'decision', decision: 'use as is' } as const
const coated = { lot: 'L7', coating: 'film', coupons_mm: [0.012], issued: '2031-04-01' }
const certificate = { ...coated, kind: 'certificate' } as const

describe('a correction points to what it corrects, says why, and stands in its place:', () => {
  it.each<[string, BenchEntry, BenchEntry, () => readonly { readonly id: number; readonly correctedBy?: number }[]]>([
    [
      'a certificate',
      certificate,
      { ...certificate, coupons_mm: [0.021] },
      () => store.bench.serial('heron', 'A-001')!.certificates,
    ],
    ['a bench test', test, { ...test, outcome: 'did not' }, () => store.bench.serial('heron', 'A-001')!.tests],
    ['a decision', decision, { ...decision, decision: 'scrap' }, () => store.bench.serial('heron', 'A-001')!.decisions],
    ['a calibration', gauge, { ...gauge, uncertainty_mm: 0.01 }, () => store.bench.calibrations()],
  ])('%s', (_what, wrong, right, kept) => {
    keep(wrong)
    const corrected = { ...right, corrects: 1, reason: 'copied wrongly' } as BenchEntry
    expect(keep(corrected)).toHaveProperty('kept')
    expect(kept()).toMatchObject([
      { id: 1, correctedBy: 2 },
      { id: 2, corrects: 1, reason: 'copied wrongly' },
    ])
    // Once only, and never without a reason.
    expect(keep(corrected)).toMatchObject({ refused: [{ code: 'corrected before', wayOut: 'Correct 2.' }] })
    expect(keep({ ...right, corrects: 2 } as BenchEntry)).toMatchObject({
      refused: [{ found: expect.stringContaining('CHECK') }],
    })
    expect(keep({ ...right, corrects: 9, reason: 'x' } as BenchEntry)).toMatchObject({
      refused: [{ found: expect.stringContaining('a correction is of the same') }],
    })
  })
})

it('a calibration that was entered wrongly is mended in every reading that took its uncertainty from it', () => {
  const place = { characteristic: BORE, found: undefined, x: '0', y: '0', value: { x_mm: 0, y_mm: 0, uncertainty_mm: 0.02 } }
  keep(gauge, size('24.5', { gauge: 'caliper 1', value: { least: 24.48, most: 24.52 } }))
  keep(size('24.5', { gauge: 'caliper 1', uncertainty: '0.005 mm', value: { least: 24.495, most: 24.505 } }))
  expect(keep(size('', { ...place, gauge: 'caliper 1' }))).toHaveProperty('kept')
  // A later calibration changes nothing of what was read before, and stays the newest.
  keep({ ...gauge, calibrated: '2031-03-01', uncertainty_mm: 0.03 })
  keep({ ...gauge, uncertainty_mm: 0.012, corrects: 1, reason: 'its certificate says 12 µm' })
  const [taken, own, bore] = readings().map(({ value }) => value as Record<string, number>)
  // SOURCE hand: 24.5 ± 0.012
  expect([taken.least, taken.most]).toEqual([expect.closeTo(24.488, 12), expect.closeTo(24.512, 12)])
  expect([own.least, own.most]).toEqual([24.495, 24.505])
  expect(bore.uncertainty_mm).toBe(0.012)
  expect(store.bench.gauges()).toMatchObject([{ id: 2, calibrated: '2031-03-01', uncertainty_mm: 0.03 }])
})

describe('an import that is taken back', () => {
  const withdrawal = { kind: 'withdrawal', import: 1, reason: 'x and y were exchanged' } as const

  it('stays with its readings, which count no longer, and its table may come in again under another mapping', () => {
    send([size('24.5'), size('24.6')], 'box')
    expect(send([size('24.7')], 'box')).toMatchObject({
      refused: [{ place: 'file', wayOut: expect.stringContaining('take that import back') }],
    })
    expect(keep(withdrawal)).toHaveProperty('kept')
    expect(readings().map(({ withdrawn }) => withdrawn?.reason)).toEqual(Array(2).fill('x and y were exchanged'))
    expect(store.bench.lots('heron')[0]).toMatchObject({
      serials: [{ readings: 0 }],
      imports: [{ id: 1, file: 'box.csv', readings: 2, withdrawn: { who: 'K1', reason: 'x and y were exchanged' } }],
    })
    expect(send([size('24.5')], 'box')).toHaveProperty('kept')
    expect(standing()).toEqual(['24.5'])
    expect(send([size('24.5')], 'box')).toHaveProperty('refused')
    expect(keep(withdrawal)).toMatchObject({ refused: [{ code: 'taken back before' }] })
    expect(keep({ ...withdrawal, import: 7 })).toMatchObject({ refused: [{ found: expect.stringContaining('import 7') }] })
    expect(keep({ ...withdrawal, import: 2 })).toHaveProperty('kept')
    expect(send([size('24.5')], 'box')).toHaveProperty('kept')
    expect(store.bench.lots('heron')[0]?.serials[0]?.readings).toBe(1)
  })

  it('takes its corrections back with it, so that what they corrected stands again and can be corrected anew', () => {
    keep(size('25.4'))
    send([size('24.5', { corrects: 1, reason: 'read again' })], 'box')
    expect(standing()).toEqual(['24.5'])
    keep(withdrawal)
    expect(standing()).toEqual(['25.4'])
    expect(keep(size('24.6', { corrects: 1, reason: 'digits turned round' }))).toHaveProperty('kept')
    expect(standing()).toEqual(['24.6'])
    expect(readings()[0]).toMatchObject({ found: '25.4', correctedBy: 3 })
    expect(store.bench.lots('heron')[0]?.serials[0]?.readings).toBe(1)
  })

  it('goes along with the store to another machine', async () => {
    send([size('24.5')], 'box')
    keep(withdrawal)
    const there = await newStore()
    const file = join(store.file, '..', 'whole.sqlite')
    store.copyTo(file)
    there.bringIn(file)
    expect(there.bench.lots('heron')).toEqual(store.bench.lots('heron'))
    expect(there.bench.sets('heron', 'L7')).toEqual(store.bench.sets('heron', 'L7'))
    expect(there.bench.sets('heron', 'L7')?.[0]?.readings).toEqual(readings())
  })
})

it('a measured test keeps its figure and what its rig leaves open; only a force of the design, and only where something was measured', () => {
  const measured = { ...test, outcome: 'measured', figure: 'loadCase.carry.sustainingLoad', uncertainty: 0.5 } as const
  expect(keep(measured)).toHaveProperty('kept')
  expect(store.bench.tests('heron')).toMatchObject([{ figure: measured.figure, uncertainty: 0.5 }])
  const refused = [
    { ...measured, figure: 'none' },
    { ...measured, outcome: 'did' as const },
    { ...measured, figure: undefined },
  ]
  expect(refused.map((one) => 'refused' in keep(one))).toEqual([true, true, true])
})

it('a photo is a picture of the kind that it says', () => {
  const sent = (type: 'image/png' | 'image/jpeg', bytes: readonly number[]) =>
    keep({ ...test, photoFile: { type, base64: Buffer.from(bytes).toString('base64') } })
  // SOURCE standard: how PNG (ISO/IEC 15948) and JPEG (ITU-T T.81) begin, from memory
  expect(sent('image/jpeg', [0xff, 0xd8, 0xff, 0xe0])).toHaveProperty('kept')
  expect(sent('image/png', [0xff, 0xd8, 0xff, 0xe0])).toMatchObject({
    refused: [{ found: expect.stringContaining('no picture') }],
  })
  expect(sent('image/jpeg', [...Buffer.from('<svg/>')])).toHaveProperty('refused')
})
