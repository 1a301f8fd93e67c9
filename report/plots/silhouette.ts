import type { FigureSpread } from '../../engine/index.ts'
import { element, type Place, pathThrough, type Shape } from '../drawing/svg.ts'

/** Where a silhouette stands. */
export interface Standing {
  /** Of its foot, px. */
  readonly y: number
  /** Of its highest slice, px; negative: upwards. */
  readonly height: number
  readonly className: string
}

/** Outline of a histogram, its highest slice as high as is given. @param at px across of a value */
export function silhouette(
  { histogram, least, most }: FigureSpread,
  at: (value: number) => number,
  { y, height, className }: Standing,
): Shape {
  const highest = Math.max(...histogram)
  const edge = (slice: number): number => at(least + ((most - least) * slice) / histogram.length)
  const places = histogram.flatMap((count, slice): Place[] => {
    const top = y + (height * count) / highest
    return [
      { x: edge(slice), y: top },
      { x: edge(slice + 1), y: top },
    ]
  })
  return element('path', {
    d: pathThrough([{ x: edge(0), y }, ...places, { x: edge(histogram.length), y }], true),
    class: className,
  })
}
