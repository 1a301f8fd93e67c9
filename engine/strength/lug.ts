/**
 * A part about one of its holes, pressed by a pin.
 *
 *            ┌───────────────╮            F →    force of the pin on the part
 *     ───────┘      ╭──╮  e  │            e      from the hole's middle to the edge ahead of F
 *        w          │  │─────│ F →        w      across F, from edge to edge through the middle
 *     ───────┐      ╰──╯     │            t      thickness that carries it
 *            └───────────────╯
 *
 *     bearing    σ = F / (d t)
 *     tear-out   τ = F / (2 t (e − d/2))     two planes from the sides of the hole to the edge ahead: the shortest, so the safe side
 *     section    σ = F / ((w − d) t)         as if all of F went through the section beside the hole
 *
 * Source: the three common checks of a bolted joint (e.g. Shigley, Mechanical Engineering Design, section 8-12, from memory).
 */

export interface LugAsked {
  readonly force_N: number
  readonly hole_mm: number
  readonly thickness_mm: number
  /** e and w of the picture. */
  readonly edge_mm: number
  readonly width_mm: number
}

/** Mean stresses, MPa. */
export interface Lug {
  readonly bearing: number
  /** Infinite where the hole breaks through its edge. */
  readonly tearOut: number
  readonly section: number
}

/** Mean stresses about a hole, MPa. */
export function lug({ force_N, hole_mm, thickness_mm, edge_mm, width_mm }: LugAsked): Lug {
  const ahead = edge_mm - hole_mm / 2
  const beside = width_mm - hole_mm
  return {
    bearing: force_N / (hole_mm * thickness_mm),
    tearOut: ahead > 0 ? force_N / (2 * thickness_mm * ahead) : Number.POSITIVE_INFINITY,
    section: beside > 0 ? force_N / (beside * thickness_mm) : Number.POSITIVE_INFINITY,
  }
}

/** Mean shear stress of a pin under the largest shear force in it, MPa. */
export function pinShear(shear_N: number, diameter_mm: number): number {
  return (4 * shear_N) / (Math.PI * diameter_mm ** 2)
}

/** Bending stress of a pin at its skin, MPa. */
export function pinBending(moment_Nmm: number, diameter_mm: number): number {
  return (32 * moment_Nmm) / (Math.PI * diameter_mm ** 3)
}
