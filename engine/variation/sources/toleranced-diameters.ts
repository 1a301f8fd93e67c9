/**
 * Diameters of pins and holes that the drawing limits, one by one. A dimension that stands as the diameter of seven pins is one size on paper
 * and one source of the spread (one bar of stock), but seven things on the bench: each is measured, and each may be off by itself.
 */
import type { Coating, Design, Hole, Pin, Tolerance } from '../../design/design.ts'
import type { Document } from '../../design/document.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import type { CoatedFeature } from '../../design/fits/coated-features.ts'
import { beforeCoating, changeOfSize } from '../../design/fits/coated-size.ts'
import type { MadeDiameter, TolerancedDiameter } from './diameter.ts'
import { limitsOfSize } from './law-of.ts'
import type { SetSizes } from './varying.ts'

interface Drawn {
  readonly place: string
  readonly steps: readonly string[]
  readonly of: Pin | Hole
  readonly typed: string | undefined
  readonly rounds: readonly string[]
}

/** All limited diameters, holes first, in the order of the document. */
export function tolerancedDiameters(
  design: Design,
  document: Document,
  coated: readonly CoatedFeature[],
): readonly TolerancedDiameter[] {
  const ofHoles = design.parts.flatMap((part) =>
    part.holes.map((hole): Drawn => {
      const steps = ['parts', part.id, 'holes', hole.id]
      const typed = document.parts?.[part.id]?.holes?.[hole.id]?.diameter
      return { place: steps.join('.'), steps, of: hole, typed, rounds: [] }
    }),
  )
  const ofPins = design.pins.map((pin): Drawn => {
    const typed = document.pins?.[pin.id]?.diameter
    const rounds = roundsOf(pin, design, document)
    return { place: `pins.${pin.id}`, steps: ['pins', pin.id], of: pin, typed, rounds }
  })
  return [...ofHoles, ...ofPins].flatMap((drawn) => limited(drawn, design, coated))
}

function limited({ place, steps, of, typed, rounds }: Drawn, { dimensions }: Design, coated: readonly CoatedFeature[]) {
  const dimension = of.tolerance ? undefined : dimensions.find(({ name }) => name === typed?.trim())
  const tolerance = of.tolerance ?? dimension?.tolerance
  if (!tolerance) return []
  const nominal_mm = of.diameter_mm
  const feature = coated.find((one) => one.place === place)
  return [
    {
      place,
      words: `${placeWords(steps)}: diameter`,
      source: dimension ? `dimensions.${dimension.name}` : `${place}.diameter`,
      nominal_mm,
      finished: limitsOfSize(nominal_mm, tolerance),
      ...(feature && { coated: coatedOf(feature, tolerance) }),
      rounds,
    },
  ]
}

function coatedOf({ place, coating, surface, nominal_mm }: CoatedFeature, { lower, upper }: Tolerance) {
  const change = changeOfSize(coating, surface)
  const { deviations } = beforeCoating({ lower_mm: lower, upper_mm: upper }, change)
  // A design without problems has a window for every coated size.
  if (!deviations) throw new Error(`no size before coating at ${place}`)
  const before = limitsOfSize(nominal_mm, { lower: deviations.lower_mm, upper: deviations.upper_mm })
  return { coating: (coating satisfies Coating).name, before, adds_mm: (change.least_mm + change.most_mm) / 2 }
}

/** Half of a radius and its pin differ by less than this: rounding of what is computed. */
const ROUNDING_mm = 1e-9

/** Stops whose round is a pin: it stands at a hole of the pin, and its radius is computed from the dimension that is the pin's diameter. */
function roundsOf(pin: Pin, { stops, parts }: Design, document: Document): readonly string[] {
  const typed = document.pins?.[pin.id]?.diameter.trim()
  return stops.flatMap(({ id, round }) => {
    const text = document.stops?.[id]?.round
    if (!text || !('hole' in text)) return []
    const isThere = pin.joins.some(({ part, hole }) => part === round.part && parts[part].holes[hole].id === text.hole)
    const isHalf = Math.abs(round.radius_mm - pin.diameter_mm / 2) < ROUNDING_mm
    return isThere && isHalf && typed !== undefined && text.radius.includes(typed) ? [`stops.${id}.round.radius`] : []
  })
}

/** Puts diameters as they were made into a set; one that was measured with its coating on does not follow the coating any more. */
export function putMade(
  diameters: readonly TolerancedDiameter[],
  made: ReadonlyMap<string, MadeDiameter>,
  { values, shifts }: SetSizes,
): void {
  for (const { place, rounds, coated } of diameters) {
    const one = made.get(place)
    if (!one) continue
    const isFinished = one.visit === 'finished'
    const diameter_mm = one.value_mm + (isFinished ? 0 : (coated?.adds_mm ?? 0))
    const put = (at: string, value: number): void => {
      values.set(at, value)
      if (isFinished) shifts.delete(at)
    }
    put(`${place}.diameter`, diameter_mm)
    for (const at of rounds) put(at, diameter_mm / 2)
  }
}
