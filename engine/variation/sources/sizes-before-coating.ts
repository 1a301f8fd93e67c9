import type { Design } from '../../design/design.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import type { CoatedFeature } from '../../design/fits/coated-features.ts'
import { beforeCoating, changeOfSize } from '../../design/fits/coated-size.ts'
import { limitsOfSize, type Range } from './law-of.ts'
import type { SizeBeforeCoating } from './source.ts'

/** Limits that the shop works to, for every coated diameter with a tolerance: holes first, in the order of the document. */
export function sizesBeforeCoating(coated: readonly CoatedFeature[], { parts, pins }: Design): readonly SizeBeforeCoating[] {
  const steps = new Map<string, readonly string[]>([
    ...parts.flatMap((part) => part.holes.map((hole) => ['parts', part.id, 'holes', hole.id])).map(withPlace),
    ...pins.map((pin) => ['pins', pin.id]).map(withPlace),
  ])
  return coated.flatMap(({ place, surface, coating, tolerance, nominal_mm }) => {
    if (!tolerance) return []
    const finished = { lower_mm: tolerance.lower, upper_mm: tolerance.upper }
    const { deviations } = beforeCoating(finished, changeOfSize(coating, surface))
    // A design without problems has a window for every coated size.
    if (!deviations) throw new Error(`no size before coating at ${place}`)
    const before: Range = limitsOfSize(nominal_mm, { lower: deviations.lower_mm, upper: deviations.upper_mm })
    const words = `${placeWords(steps.get(place) ?? [place])}: diameter`
    return [{ place, words, coating: coating.name, finished: limitsOfSize(nominal_mm, tolerance), before }]
  })
}

const withPlace = (steps: readonly string[]): readonly [string, readonly string[]] => [steps.join('.'), steps]
