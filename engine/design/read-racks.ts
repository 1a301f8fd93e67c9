import { limits } from '../numbers/limits.ts'
import { distanceToEdge, isInside } from '../numbers/place-in-outline.ts'
import type { Part, Point } from './design.ts'
import { readPair } from './read-points.ts'
import type { Reading } from './reading.ts'

/**
 * Where a coater's rack touches a part: on its metal.
 *
 * @param place of the list
 * @param outline of the part; without one nothing is said of where a place lies
 */
export function readRacks(
  place: string,
  { typed = [], outline }: { readonly typed: readonly (readonly [string, string])[] | undefined } & Pick<Part, 'outline'>,
  reading: Reading,
): Pick<Part, 'racks'> {
  const corners = Float64Array.from(outline.flatMap(({ x_mm, y_mm }) => [x_mm, y_mm]))
  const racks = typed.map((pair, index): Point => {
    const at = readPair(`${place}.${index}`, pair, reading)
    const off_mm = distanceToEdge(corners, at.x_mm, at.y_mm)
    if (outline.length > 2 && off_mm > limits.sizeLeast_mm && !isInside(corners, at.x_mm, at.y_mm)) {
      const found = `${pair.join(', ')}, ${Number(off_mm.toPrecision(SHOWN_digits))} mm outside of the part`
      reading.report({ code: 'outside', place: `${place}.${index}`, found, needed: 'a place on the part or on its outline' })
    }
    return at
  })
  return racks.length === 0 ? {} : { racks }
}

const SHOWN_digits = 3
