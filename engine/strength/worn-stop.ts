/**
 * A round that beds into the edge it stops at, or is flattened by it: the lens between the two is gone.
 *
 *     area of the lens   A = 4/3 · √(2/κ) · h^(3/2)       κ = 1/r ± 1/R, the curvature of one against the other; h ≪ 1/κ
 *
 * Two parabolas of curvature κ apart by h overlap on a chord of 2√(2h/κ), and fill two thirds of chord × h.
 */

/** Of one stop. */
export interface StopContact {
  /** Length of the line of contact, across the finger. */
  readonly width_mm: number
  /** 1/r of the round, less 1/R in a socket, plus 1/R on a round edge. */
  readonly curvature_1_mm: number
}

/** Depth at which a volume is gone, mm. */
export function stopDepth({ width_mm, curvature_1_mm }: StopContact, volume_mm3: number): number {
  const area = volume_mm3 / width_mm
  return ((9 / 32) * area * area * curvature_1_mm) ** (1 / 3)
}

/** Volume that is gone at a depth, mm³. */
export function stopVolume({ width_mm, curvature_1_mm }: StopContact, depth_mm: number): number {
  return (4 / 3) * Math.sqrt(2 / curvature_1_mm) * depth_mm ** 1.5 * width_mm
}
