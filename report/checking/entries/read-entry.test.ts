import { expect, it } from 'vitest'
import { readCorrection } from './read-correction.ts'
import { readDecisionEntry, readSignOff } from './read-decision.ts'
import { readCertificateEntry, readGaugeEntry } from './read-entry.ts'
import { readTestEntry } from './read-test.ts'

const places = ({ problems = [] }: { readonly problems?: readonly { readonly place: string }[] }) =>
  problems.map(({ place }) => place)

it('a gauge is read in mm whatever unit was typed, and every field that is wrong is told', () => {
  const typed = { gauge: ' caliper 1 ', resolution: '0.01', uncertainty: '0.001 in', calibrated: '2031-01-02' }
  // SOURCE standard ISO 80000-3 (an inch is 25.4 mm; from memory), and hand: 0.001 · 25.4
  const value = { kind: 'gauge', gauge: 'caliper 1', resolution_mm: 0.01, uncertainty_mm: 0.0254, calibrated: '2031-01-02' }
  expect(readGaugeEntry(typed)).toEqual({ value })
  const wrong = { gauge: ' ', resolution: '0', uncertainty: '0,02', calibrated: '2031-02-30' }
  expect(places(readGaugeEntry(wrong))).toEqual(['gauge', 'resolution', 'uncertainty', 'calibrated'])
  expect(readGaugeEntry(wrong).problems?.[2].wayOut).toContain('point')
  // A gauge may leave nothing open that its certificate speaks of; it never shows steps of nothing.
  expect(readGaugeEntry({ ...typed, uncertainty: '0' }).problems).toBeUndefined()
})

it('coupons are typed in µm and kept in mm; without one there is no certificate', () => {
  const typed = { coating: 'film', coupons: '12; 12.5 µm 11um', cureHeat: '180', cureTime: '', issued: '2031-04-01', note: '' }
  // SOURCE hand (thousandths)
  expect(readCertificateEntry(typed, 'L7').value).toEqual({
    ...{ kind: 'certificate', lot: 'L7', coating: 'film', coupons_mm: [0.012, 0.0125, 0.011] },
    ...{ cure_degC: 180, issued: '2031-04-01' },
  })
  for (const coupons of ['', 'twelve', '12 -1'])
    expect(places(readCertificateEntry({ ...typed, coupons }, 'L7'))).toEqual(['coupons'])
})

const loaded = { test: 'load to hold', value: '10 lbf', outcome: 'did', tested: '2031-04-04', rig: 'rig 1', note: 'by hand' }
const asked = { serial: 'A-001', figures: [{ id: 'loadCase.carry.sustainingLoad', title: 'Load that is sustained' }] }

it('a test is of a load, or of cycles that have no unit', () => {
  const typed = { ...loaded, figure: '', uncertainty: '' }
  // SOURCE standard ISO 80000-4 (a pound-force is 4.4482216 N; from memory)
  expect(readTestEntry(typed, asked).value?.value).toBeCloseTo(44.482216, 5)
  expect(readTestEntry({ ...typed, test: 'cycles', value: '20000' }, asked).value?.value).toBe(20_000)
  expect(places(readTestEntry({ ...typed, test: 'cycles', value: '60 N' }, asked))).toEqual(['value'])
  expect(places(readTestEntry({ ...typed, test: 'drop', outcome: 'broke', rig: '' }, asked))).toEqual(['test', 'outcome', 'rig'])
})

it('what was measured may be a figure of the design, with what the rig leaves open', () => {
  const measured = { ...loaded, outcome: 'measured', figure: 'Load that is sustained', uncertainty: '0.5' }
  expect(readTestEntry(measured, asked).value).toMatchObject({ figure: 'loadCase.carry.sustainingLoad', uncertainty: 0.5 })
  expect(readTestEntry({ ...measured, uncertainty: '' }, asked).value).not.toHaveProperty('uncertainty')
  const wrong = readTestEntry({ ...measured, figure: 'loadCase.carry.sustainLoad' }, asked)
  expect(wrong.problems).toMatchObject([{ place: 'figure', wayOut: 'Did you mean loadCase.carry.sustainingLoad?' }])
  for (const one of [{ outcome: 'did' }, { test: 'cycles', value: '9' }, { figure: '' }])
    expect(places(readTestEntry({ ...measured, ...one }, asked))).toEqual(['figure'])
})

it('a correction needs its reason, and tells every other problem too', () => {
  const read = readTestEntry({ ...loaded, figure: '', uncertainty: '' }, asked)
  expect(readCorrection(read, { corrects: 3, reason: ' misread ' }).value).toMatchObject({ corrects: 3, reason: 'misread' })
  expect(places(readCorrection(read, { corrects: 3, reason: ' ' }))).toEqual(['reason'])
  const wrong = readTestEntry({ ...loaded, rig: '', figure: '', uncertainty: '' }, asked)
  expect(places(readCorrection(wrong, { corrects: 3, reason: '' }))).toEqual(['rig', 'reason'])
})

it('what was calculated goes with a decision and with a sign-off', () => {
  const outcomes = [{ disposition: 'use as is', answer: 'met', words: 'it holds all the same' }] as const
  const asked = { serial: 'A-001', characteristic: 'dimensions.a', outcomes }
  expect(readDecisionEntry({ decision: 'use as is', why: 'by a hair' }, asked).value?.consequence).toBe('it holds all the same')
  // A place cannot be reworked to a limit: what is not offered cannot be chosen.
  expect(places(readDecisionEntry({ decision: 'rework', why: '' }, asked))).toEqual(['decision', 'why'])
  const signed = readSignOff({ statement: 'looked through' }, { lot: 'L7', serial: 'A-001', judged: 'Set A-001: 3 within.' })
  expect(signed.value?.statement).toBe('First article: looked through. As judged then: Set A-001: 3 within.')
  expect(places(readSignOff({ statement: ' ' }, { lot: 'L7', serial: 'A-001', judged: '' }))).toEqual(['statement'])
})
