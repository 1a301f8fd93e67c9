/** Sizes and limits as a drawing writes them, in millimetres. */
import type { DrawnSize, Limits } from '../../engine/index.ts'

/** Digits after the point: a tenth of a micrometre is noise of the arithmetic. */
const PLACES = 3

/** A length without zeros at its end, with a true minus. */
export function lengthText(value_mm: number): string {
  const text = value_mm.toFixed(PLACES).replace(/\.?0+$/, '')
  return (text === '-0' ? '0' : text).replace('-', '−')
}

/** `44`, `24.507 ±0.01`, or the limits where they do not lie evenly. */
export function sizeWords({ nominal_mm, limits }: DrawnSize): string {
  if (limits === undefined) return lengthText(nominal_mm)
  const [up, down] = [limits.most - nominal_mm, nominal_mm - limits.least]
  if (lengthText(up) === lengthText(down)) return `${lengthText(nominal_mm)} ±${lengthText(up)}`
  return limitsWords(limits)
}

/** `3.006 / 3.018`: both limits written out, rounded inwards so that nothing passes by rounding. */
export function limitsWords({ least, most }: Limits): string {
  return `${lengthText(inward(least, 1))} / ${lengthText(inward(most, -1))}`
}

/** `Ø3.006 / 3.018 (H7)`; a diameter without limits stands alone. */
export function diameterWords({ nominal_mm, limits, zone }: DrawnSize): string {
  const zoned = zone === undefined ? '' : ` (${zone})`
  return limits === undefined ? `Ø${lengthText(nominal_mm)}` : `Ø${limitsWords(limits)}${zoned}`
}

const STEPS_per_mm = 10 ** PLACES
/** What arithmetic adds to a typed decimal. */
const NOISE_mm = 1e-9

function inward(value_mm: number, towards: 1 | -1): number {
  const steps = (value_mm - towards * NOISE_mm) * STEPS_per_mm
  return (towards === 1 ? Math.ceil(steps) : Math.floor(steps)) / STEPS_per_mm
}
