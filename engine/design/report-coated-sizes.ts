import type { Design } from './design.ts'
import { coatedFeatures } from './fits/coated-features.ts'
import { beforeCoating, changeOfSize } from './fits/coated-size.ts'
import type { Reading } from './reading.ts'

/** A coating whose range takes up more than the tolerance of the finished size cannot be made to the drawing. */
export function reportCoatedSizes(reading: Reading, made: Pick<Design, 'dimensions' | 'parts' | 'pins'>): void {
  for (const { place, surface, coating, tolerance, dimension } of coatedFeatures({ document: reading.document, ...made })) {
    // A coating that has been reported says nothing about sizes.
    const isAtFault = reading.problems.some((problem) => problem.place.startsWith(`coatings.${coating.name}.`))
    if (!tolerance || isAtFault) continue
    const finished = { lower_mm: tolerance.lower, upper_mm: tolerance.upper }
    const { fault } = beforeCoating(finished, changeOfSize(coating, surface))
    if (fault && !Number.isNaN(tolerance.lower)) {
      reading.report({ place: `${place}.${dimension === undefined ? 'tolerance' : 'diameter'}`, ...fault })
    }
  }
}
