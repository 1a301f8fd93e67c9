/**
 * Pins that are larger than the hole they are fixed in. How tight such a pin is pressed in decides whether it stays and whether the lug splits,
 * so a press fit is one only where both say how far their sizes may be off: by a tolerance of their own, or of the dimension that is their diameter.
 */
import { limits } from '../numbers/limits.ts'
import type { Design, Dimension, Pin, Tolerance } from './design.ts'
import type { Reading } from './reading.ts'

type Made = Pick<Design, 'dimensions' | 'parts' | 'pins'>

/** Reports each pin that is larger than its fixed hole, as far as tolerances say, where no press fit is stated or it is too tight. */
export function reportPressFits(reading: Reading, made: Made): void {
  for (const pin of made.pins) {
    const index = pin.joins.findIndex(({ part }) => part === pin.fixedIn)
    const fit = index < 0 ? undefined : fitOf(reading, made, { pin, index })
    // A nominal too small has been reported; a hole no smaller than the least pin is no press fit.
    if (!fit || fit.nominal_mm > limits.pressFit_ratio * pin.diameter_mm || !(fit.least_mm > 0)) continue
    if (!fit.isStated) reportUnstated(`pins.${pin.id}.joins.${index}`, { pin, fit }, reading)
    else if (fit.most_mm > limits.pressFit_ratio * pin.diameter_mm)
      reportTooTight(`pins.${pin.id}.joins.${index}`, { pin, fit }, reading)
  }
}

/** By how much a pin is larger than its hole, mm. */
interface Fit {
  readonly nominal_mm: number
  readonly least_mm: number
  readonly most_mm: number
  readonly isStated: boolean
}

function fitOf(reading: Reading, { dimensions, parts }: Made, { pin, index }: { pin: Pin; index: number }): Fit | undefined {
  const { part, hole } = pin.joins[index]
  const bore = parts[part]?.holes[hole]
  if (!bore) return undefined
  const { pins = {}, parts: typed = {} } = reading.document
  const toleranceOf = (own: Tolerance | undefined, text: string | undefined) => own ?? named(dimensions, text)?.tolerance
  const ofPin = toleranceOf(pin.tolerance, pins[pin.id]?.diameter)
  const ofHole = toleranceOf(bore.tolerance, typed[parts[part].id]?.holes?.[bore.id]?.diameter)
  const nominal_mm = pin.diameter_mm - bore.diameter_mm
  return {
    nominal_mm,
    least_mm: nominal_mm + (ofPin?.lower ?? 0) - (ofHole?.upper ?? 0),
    most_mm: nominal_mm + (ofPin?.upper ?? 0) - (ofHole?.lower ?? 0),
    isStated: ofPin !== undefined && ofHole !== undefined,
  }
}

function named(dimensions: readonly Dimension[], typed: string | undefined): Dimension | undefined {
  return dimensions.find(({ name }) => name === typed?.trim())
}

interface Pressed {
  readonly pin: Pin
  readonly fit: Fit
}

function reportUnstated(place: string, { pin, fit }: Pressed, reading: Reading): void {
  reading.report({
    code: 'does not fit',
    place,
    found: `a pin of ${pin.diameter_mm} mm that is at least ${shown(fit.least_mm)} mm larger than the hole it is fixed in, and no press fit stated`,
    needed: 'a hole no smaller than the pin, or a tolerance of both that says how tight it is pressed in',
    wayOut: `Open the hole by ${shown(fit.least_mm)} mm, or give both a tolerance, such as P7 in the hole and h6 on the pin.`,
  })
}

function reportTooTight(place: string, { pin, fit }: Pressed, reading: Reading): void {
  reading.report({
    code: 'does not fit',
    place,
    found: `a pin of ${pin.diameter_mm} mm that may be ${shown(fit.most_mm)} mm larger than the hole it is pressed into`,
    needed: `at most ${100 * limits.pressFit_ratio} % of its diameter, ${shown(limits.pressFit_ratio * pin.diameter_mm)} mm`,
    wayOut: 'Take a wider hole, or narrower tolerances.',
  })
}

/** A workshop measures no finer than a tenth of a micrometre. */
const SHOWN_digits = 3
const shown = (value_mm: number): string => `${Number(value_mm.toPrecision(SHOWN_digits))}`
