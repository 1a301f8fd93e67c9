/** Components of a force or direction in the mount frame; the unit stands in the name of what holds it. */
export interface Vector {
  readonly x: number
  readonly y: number
}
