/** Entries of the bench book as they are typed at a form: each is read whole, with every problem by its field. */
import type { Checked } from '../../../engine/index.ts'
import { fieldReader, type TypedFields } from './field-reader.ts'

/** A gauge since its last calibration. */
export interface GaugeEntry {
  readonly kind: 'gauge'
  readonly gauge: string
  readonly resolution_mm: number
  /** Expanded (k = 2). */
  readonly uncertainty_mm: number
  readonly calibrated: string
}

/** Reads a gauge. What is typed without a unit is in mm. */
export function readGaugeEntry(typed: TypedFields<'gauge' | 'resolution' | 'uncertainty' | 'calibrated'>): Checked<GaugeEntry> {
  const { problems, words, quantity, day } = fieldReader(typed)
  const length = { kind: 'length', bare: 'mm' } as const
  const value: GaugeEntry = {
    kind: 'gauge',
    gauge: words('gauge', 'what the gauge is called, such as caliper 1'),
    resolution_mm: quantity('resolution', { ...length, needed: 'the least step that it shows' }),
    uncertainty_mm: quantity('uncertainty', {
      ...length,
      needed: 'what its certificate leaves open either way',
      mayBeZero: true,
    }),
    calibrated: day('calibrated', 'the day of its calibration'),
  }
  return problems.length > 0 ? { problems } : { value }
}

/** What the coater says of a lot. */
export interface CertificateEntry {
  readonly kind: 'certificate'
  readonly lot: string
  readonly coating: string
  readonly coupons_mm: readonly number[]
  readonly cure_degC?: number
  readonly cure_min?: number
  readonly issued: string
  readonly note?: string
}

/** Reads a coater's certificate. Coupons stand one after the other with blanks or semicolons between them, in µm where no unit stands. */
export function readCertificateEntry(
  typed: TypedFields<'coating' | 'coupons' | 'cureHeat' | 'cureTime' | 'issued' | 'note'>,
  lot: string,
): Checked<CertificateEntry> {
  const reader = fieldReader(typed)
  const { problems, words, quantity, day } = reader
  const optional = (field: 'cureHeat' | 'cureTime', needed: string): number | undefined =>
    typed[field].trim() === '' ? undefined : quantity(field, { kind: 'number', bare: '', needed })
  const [heat, time] = [optional('cureHeat', 'degrees Celsius'), optional('cureTime', 'minutes')]
  const note = words('note')
  const value: CertificateEntry = {
    kind: 'certificate',
    lot,
    coating: words('coating', 'which coating it is about'),
    coupons_mm: readCoupons(typed.coupons),
    ...(heat !== undefined && { cure_degC: heat }),
    ...(time !== undefined && { cure_min: time }),
    issued: day('issued', 'the day of the certificate'),
    ...(note !== '' && { note }),
  }
  const wrong = value.coupons_mm.length === 0 || value.coupons_mm.some((one) => !(one > 0))
  if (wrong)
    reader.refuse('coupons', {
      code: 'wrong value',
      found: typed.coupons.trim() || 'nothing',
      needed: 'the thickness of every coupon in µm, such as 12 12.5 11',
    })
  return problems.length > 0 ? { problems } : { value }
}

/** A film is told in µm. */
const MICROMETRES = 1000

/** @returns mm; NaN for what is no number */
function readCoupons(typed: string): readonly number[] {
  const words = typed.replaceAll(/\s*(µm|um)\b|\s*µm/g, ' ').split(/[\s;]+/)
  return words.filter((word) => word !== '').map((word) => Number(word) / MICROMETRES)
}

/** Kinds of bench tests, in the order in which they are mostly done. */
export const testKinds = ['load to hold', 'return after load', 'pinch force', 'cycles'] as const
/** A kind of bench test. */
export type TestKind = (typeof testKinds)[number]

/** What came of a test; `measured` where the value itself is what was found. */
export const testOutcomes = ['did', 'did not', 'measured'] as const
/** What came of a test. */
export type TestOutcome = (typeof testOutcomes)[number]

/** A bench test of one serial number. */
export interface TestEntry {
  readonly kind: 'test'
  readonly serial: string
  readonly test: TestKind
  /** N, of cycles a count. */
  readonly value: number
  readonly outcome: TestOutcome
  readonly tested: string
  readonly rig: string
  readonly note?: string
}

/** Reads a bench test. A force without a unit is in N; cycles are a count. */
export function readTestEntry(
  typed: TypedFields<'test' | 'value' | 'outcome' | 'tested' | 'rig' | 'note'>,
  serial: string,
): Checked<TestEntry> {
  const { problems, words, quantity, day, refuse } = fieldReader(typed)
  const test = testKinds.find((one) => one === typed.test)
  const outcome = testOutcomes.find((one) => one === typed.outcome)
  if (test === undefined) refuse('test', { code: 'missing', found: typed.test || 'nothing', needed: testKinds.join(', ') })
  if (outcome === undefined)
    refuse('outcome', { code: 'missing', found: typed.outcome || 'nothing', needed: testOutcomes.join(', ') })
  const asked =
    test === 'cycles'
      ? ({ kind: 'number', bare: '', needed: 'how many cycles were run' } as const)
      : ({ kind: 'force', bare: 'N', needed: 'the load or force' } as const)
  const note = words('note')
  const value = {
    kind: 'test' as const,
    serial,
    value: quantity('value', asked),
    tested: day('tested', 'the day of the test'),
    rig: words('rig', 'on what it was tested'),
    ...(note !== '' && { note }),
  }
  if (problems.length > 0 || test === undefined || outcome === undefined) return { problems }
  return { value: { ...value, test, outcome } }
}
