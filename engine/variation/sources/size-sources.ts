/** Sizes with a tolerance: dimensions, which move all that is computed from them, and the diameters of pins and holes. */
import type { Design, Tolerance } from '../../design/design.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import { type CoatedFeature, spreadOfChange_mm } from '../../design/fits/coated-features.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { lawWithin, limitsOfSize, type Range } from './law-of.ts'
import type { SourceUnit } from './source.ts'
import { addShift, type SetSizes, type Varying } from './varying.ts'

interface Sized {
  readonly id: string
  readonly words: string
  readonly unit: SourceUnit
  readonly nominal: number
  readonly tolerance: Tolerance
  /** What the coating takes of the tolerance, either way. */
  readonly film_mm: number
  readonly put: (sizes: SetSizes, value: number) => void
}

/**
 * Sources of all toleranced sizes.
 *
 * A diameter with a tolerance of its own keeps to it, also where a dimension with another tolerance stands as its value.
 * A coated size is told at the middle of its coating's range, and its limits are those before coating: the finished size then meets its own
 * limits with every batch.
 */
export function sizeSources(design: Design, coated: readonly CoatedFeature[]): readonly Varying[] {
  const rules = design.variation ?? variationUnstated
  return toleranced(design, coated).flatMap((sized) => {
    const { id, words, unit, nominal, tolerance, film_mm, put } = sized
    const range = narrowed(limitsOfSize(nominal, tolerance), film_mm)
    if (range.most <= range.least && tolerance.law?.kind !== 'sample') return []
    const law = lawWithin(range, tolerance.law ?? rules.sizes)
    const source = { id, words, unit, nominal, law, ...range, of: 'sets' } as const
    return [{ sources: [source], put: ([value], sizes) => put(sizes, value) }]
  })
}

const narrowed = ({ least, most }: Range, film_mm: number): Range =>
  most - least > 2 * film_mm
    ? { least: least + film_mm, most: most - film_mm }
    : { least: (least + most) / 2, most: (least + most) / 2 }

function toleranced({ dimensions, parts, pins }: Design, coated: readonly CoatedFeature[]): readonly Sized[] {
  const filmOf = (matches: (feature: CoatedFeature) => boolean) => Math.max(0, ...coated.filter(matches).map(spreadOfChange_mm))
  const ofDimensions = dimensions.flatMap(({ name, value, unit, tolerance }) => {
    const id = `dimensions.${name}`
    const film_mm = filmOf(({ dimension }) => dimension === name)
    const words = placeWords(['dimensions', name])
    const put: Sized['put'] = (sizes, other) => addShift(sizes, id, other - value)
    return tolerance ? [{ id, words, unit: unit as SourceUnit, nominal: value, tolerance, film_mm, put }] : []
  })
  const diameter = (steps: readonly string[], nominal: number, tolerance: Tolerance | undefined) => {
    const place = steps.join('.')
    const id = `${place}.diameter`
    const words = `${placeWords(steps)}: diameter`
    const film_mm = filmOf((feature) => feature.place === place && feature.dimension === undefined)
    const put: Sized['put'] = ({ values }, value) => values.set(id, value)
    return tolerance ? [{ id, words, unit: 'mm' as const, nominal, tolerance, film_mm, put }] : []
  }
  return [
    ...ofDimensions,
    ...parts.flatMap((part) =>
      part.holes.flatMap((hole) => diameter(['parts', part.id, 'holes', hole.id], hole.diameter_mm, hole.tolerance)),
    ),
    ...pins.flatMap((pin) => diameter(['pins', pin.id], pin.diameter_mm, pin.tolerance)),
  ]
}
