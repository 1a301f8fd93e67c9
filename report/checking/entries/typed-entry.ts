/** Entries that are kept, as the fields of their form are typed: what is corrected stands in the form that corrects it. */
import { filmText, type ToldCertificate, type ToldTest } from '../kept-words.ts'
import type { TypedFields } from './field-reader.ts'
import type { CertificateField, GaugeEntry, GaugeField } from './read-entry.ts'
import type { TestField } from './read-test.ts'

/** A kept test as its fields are typed, for the form that corrects it. */
export function typedTest(kept: ToldTest): TypedFields<TestField> {
  const { test, value, outcome, figure = '', uncertainty, tested, rig, note = '' } = kept
  const unit = test === 'cycles' ? '' : ' N'
  return {
    ...{ test, value: `${value}${unit}`, outcome, figure, tested, rig, note },
    uncertainty: uncertainty === undefined ? '' : `${uncertainty} N`,
  }
}

/** A kept certificate as its fields are typed, for the form that corrects it. */
export function typedCertificate(kept: ToldCertificate): TypedFields<CertificateField> {
  const { coating, coupons_mm, cure_degC, cure_min, issued, note = '' } = kept
  const typed = (value: number | undefined): string => (value === undefined ? '' : String(value))
  return {
    coating,
    coupons: coupons_mm.map(filmText).join(' '),
    cureHeat: typed(cure_degC),
    cureTime: typed(cure_min),
    issued,
    note,
  }
}

/** A kept calibration as its fields are typed. */
export function typedGauge(kept: Omit<GaugeEntry, 'kind'>): TypedFields<GaugeField> {
  const { gauge, resolution_mm, uncertainty_mm, calibrated } = kept
  return { gauge, resolution: `${resolution_mm} mm`, uncertainty: `${uncertainty_mm} mm`, calibrated }
}
