/**
 * The one equation of a part that is held by a pin and by one thing of unknown size (docs/theory/two-force-links.md).
 *
 * Known forces and couples add up to G and, about the pin, M; the unknown t acts with the force t ℓ and the moment t a about
 * the pin. The pin gives R = −(G + t ℓ) and rubs with its lever e:
 *
 *     t a + M = e |G + t ℓ|      so      (a² − e² ℓ²) t² + 2 (a M − e² ℓ·G) t + M² − e² G² = 0
 *
 * As long as |a| > |e| |ℓ| the left side outgrows the right on one side only, and of the two roots of the square
 * exactly one is a root of the equation. Where the two meet, the unknown goes through the pin's friction circle whatever its size:
 * the part jams on its pin.
 */
import { limits } from '../numbers/limits.ts'

/** Lengths in mm, forces in N, the mount's frame. Filled anew for each part. */
export interface HeldEquation {
  /** e: the pin's friction on the part is −e |R|. */
  lever: number
  /** a */
  arm: number
  /** ℓ */
  x: number
  y: number
  /** G */
  known_x: number
  known_y: number
  /** M, N·mm. */
  known_moment: number
}

/** An equation with nothing in it yet. */
export function emptyHeldEquation(): HeldEquation {
  return { lever: 0, arm: 0, x: 0, y: 0, known_x: 0, known_y: 0, known_moment: 0 }
}

/** t; NaN where the arm is within `limits.pinchedArm_ratio` of the friction circle and the answer would be one of several. */
export function solveHeld({ lever, arm, x, y, known_x, known_y, known_moment }: HeldEquation): number {
  const size = Math.sqrt(x * x + y * y)
  const reach = Math.abs(lever) * size
  if (!(Math.abs(arm) - reach > limits.pinchedArm_ratio * Math.abs(arm))) return Number.NaN
  const leading = arm * arm - reach * reach
  const middle = arm * known_moment - lever * lever * (x * known_x + y * known_y)
  // A quarter of the discriminant is e² (|a G − M ℓ|² − e² (ℓ × G)²): in this form nothing cancels.
  const across = lever * (x * known_y - y * known_x)
  const along = Math.hypot(arm * known_x - known_moment * x, arm * known_y - known_moment * y)
  const root = Math.sign(arm) * lever * Math.sqrt(Math.max(0, (along - across) * (along + across)))
  if (root * middle <= 0) return (root - middle) / leading
  const friction = lever * Math.hypot(known_x, known_y)
  return (-(known_moment - friction) * (known_moment + friction)) / (middle + root)
}
