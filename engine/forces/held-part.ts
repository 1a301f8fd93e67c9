/**
 * The one equation of a part that is held by a pin and by one thing of unknown size (docs/theory/two-force-links.md).
 *
 * Known forces sum to G and, about the pin, to M; the unknown λ acts with the force λ l and the moment λ g about the pin. The
 * pin gives R = −(G + λ l) and rubs with its lever e:
 *
 *     λ g + M = e |G + λ l|      so      (g² − e² l²) λ² + 2 (g M − e² l·G) λ + M² − e² G² = 0
 *
 * As long as |g| > |e| |l| the difference of the two sides runs one way from end to end, and of the two roots of the square
 * exactly one is a root of the equation. Where |g| = |e| |l| the unknown passes the pin at its friction circle, and whatever its size the pin
 * answers it: the part jams.
 */
import { limits } from '../numbers/limits.ts'

/** Lengths in mm, forces in N, the mount's frame. Filled anew for each part. */
export interface HeldEquation {
  /** e: the pin's friction on the part is −e |R|. */
  lever: number
  /** g */
  arm: number
  /** l */
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

/** λ; NaN where the arm is within `limits.pinchedArm_ratio` of the friction circle and the answer would be one of several. */
export function solveHeld({ lever, arm, x, y, known_x, known_y, known_moment }: HeldEquation): number {
  const size = Math.sqrt(x * x + y * y)
  const reach = Math.abs(lever) * size
  if (!(Math.abs(arm) - reach > limits.pinchedArm_ratio * Math.abs(arm))) return Number.NaN
  const leading = arm * arm - reach * reach
  const middle = arm * known_moment - lever * lever * (x * known_x + y * known_y)
  // A quarter of the discriminant is e² (|g G − M l|² − e² (l × G)²): in this form nothing cancels.
  const across = lever * (x * known_y - y * known_x)
  const along_x = arm * known_x - known_moment * x
  const along_y = arm * known_y - known_moment * y
  const along = Math.sqrt(along_x * along_x + along_y * along_y)
  const root = Math.sign(arm) * lever * Math.sqrt(Math.max(0, (along - across) * (along + across)))
  if (root * middle <= 0) return (root - middle) / leading
  const friction = lever * Math.sqrt(known_x * known_x + known_y * known_y)
  return (-(known_moment - friction) * (known_moment + friction)) / (middle + root)
}
