/**
 * The distance of two holes from a length that was taken over gauge pins in them, or between them: a pin reaches half its thickness beyond the
 * middle of the hole that it fills.
 *
 *     over:     ◯────────◯    length = distance + (first + second) / 2
 *               |←────────→|
 *     between:    |←────→|    length = distance − (first + second) / 2
 */

/** What was read, and the pins that stood in the holes, mm. */
export interface OverPins {
  readonly length_mm: number
  readonly pins_mm: readonly [number, number]
  /** Over both pins, or in the room between them. */
  readonly taken: 'over' | 'between'
}

/** @returns mm between the middles of the holes */
export function holeDistance({ length_mm, pins_mm: [first, second], taken }: OverPins): number {
  const half_mm = (first + second) / 2
  return taken === 'over' ? length_mm - half_mm : length_mm + half_mm
}
