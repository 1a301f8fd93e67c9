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

/** Fields of a gauge. */
export type GaugeField = 'gauge' | 'resolution' | 'uncertainty' | 'calibrated'

/** Reads a gauge. What is typed without a unit is in mm. */
export function readGaugeEntry(typed: TypedFields<GaugeField>): Checked<GaugeEntry> {
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

/** Fields of a certificate. */
export type CertificateField = 'coating' | 'coupons' | 'cureHeat' | 'cureTime' | 'issued' | 'note'

/** Reads a coater's certificate. Coupons stand one after the other with blanks or semicolons between them, in µm where no unit stands. */
export function readCertificateEntry(typed: TypedFields<CertificateField>, lot: string): Checked<CertificateEntry> {
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
