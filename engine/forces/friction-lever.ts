/**
 * Lever of dry friction in a pin: the radius of its friction circle.
 *
 *     ρ = r · sin(atan μ) = r μ / √(1 + μ²)
 *
 * The contact force of a plain bearing stands at the friction angle to the normal, so the resultant is tangent to the
 * circle of this radius about the pin's centre (any text on theory of machines, from memory). The short form r·μ is 2 % large at
 * μ = 0.2, and puts efforts near a toggle off by up to 4 %; it is not used.
 */
export function frictionLever(radius_mm: number, friction: number): number {
  return (radius_mm * friction) / Math.sqrt(1 + friction * friction)
}
