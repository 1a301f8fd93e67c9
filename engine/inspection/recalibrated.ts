/** What a reading said once it is known that the uncertainty of its gauge was entered wrongly. */

/** A size between two ends, or a place with its uncertainty, mm. */
export type GaugedValue =
  | { readonly least: number; readonly most: number }
  | { readonly x_mm: number; readonly y_mm: number; readonly uncertainty_mm: number }

/** What the certificate of a gauge was taken to leave open (k = 2), and what it does leave open, mm. */
export interface Recalibration {
  readonly then_mm: number
  readonly now_mm: number
}

/** The value with the uncertainty that its gauge has, in the place of the one that was added when it was read. */
export function recalibrated(value: GaugedValue, { then_mm, now_mm }: Recalibration): GaugedValue {
  if ('x_mm' in value) return { ...value, uncertainty_mm: now_mm }
  const wider_mm = now_mm - then_mm
  return { least: value.least - wider_mm, most: value.most + wider_mm }
}
