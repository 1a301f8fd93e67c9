/**
 * The line in which a toggle's link A-B hands its force to the part B-C. Where B-C is the link, the toggle is read from its other end.
 *
 * Where the picture has a force in the link, it is the line of that force. Where it has none (the springs alone, which push elsewhere), it is
 * the line that friction at A and B allows nearest to C: an unloaded link carries its force along a line that leaves A and B at most by their
 * friction circles. Signed distances s of A and B from a line tilted by ε against A-B satisfy sin ε = (s_A − s_B) / L, and C then lies
 * s_B + (C − B)·m from it, m being its normal. If even the nearest line misses the friction circle of C, the part cannot rest on friction.
 * Derivation: docs/theory, the jam of a toggle in closed form.
 */
import type { Design, ForcePicture, Point } from '../../engine/index.ts'

/** A link force below this is nothing a workshop could measure, N. */
const SMALLEST_N = 1e-3

/** The line, and how it passes pin C. */
export interface ForceLine {
  readonly through: Point
  readonly direction_rad: number
  /** Absent for the nearest line that friction allows: no force was asked for there. */
  readonly tension_N?: number
  readonly distance_mm: number
  readonly frictionCircle_mm: number
}

/** A toggle seen from its link: the link runs from `far` to `bend`, and hands its force to the arm from `bend` to `arm`. Pin indices. */
export interface SeenToggle {
  readonly far: number
  readonly bend: number
  readonly arm: number
  /** Whether one of the two is a link with no other pin, so that its force has a line. */
  readonly hasLink: boolean
}

/** Turns a toggle so that its link comes first: A-B where that is a link, else C-B. */
export function seenToggle(design: Design, toggle: number): SeenToggle {
  const { a, b, c } = design.toggles[toggle]
  if (isLink(design, [a, b])) return { far: a, bend: b, arm: c, hasLink: true }
  if (isLink(design, [c, b])) return { far: c, bend: b, arm: a, hasLink: true }
  return { far: a, bend: b, arm: c, hasLink: false }
}

/** The line for a toggle of the design, by index; none where neither of its parts is a link or the picture has no friction circles. */
export function forceLine(picture: {
  readonly design: Design
  readonly forces: ForcePicture
  readonly toggle: number
}): ForceLine | undefined {
  const { design, forces, toggle } = picture
  const { far, bend, arm, hasLink } = seenToggle(design, toggle)
  const [leverA, leverB, leverC] = [far, bend, arm].map((pin) => leverOf(forces, pin))
  if (!hasLink || leverA === undefined || leverB === undefined || leverC === undefined) return undefined
  const [A, B, C] = [far, bend, arm].map((pin) => forces.posture.pinsAt[pin])
  const link = forces.linkLines.find(({ part }) => joins(design, part, far) && joins(design, part, bend))
  if (link !== undefined && Math.abs(link.tension_N) > SMALLEST_N) {
    return { ...link, distance_mm: Math.abs(distanceFrom(link, C)), frictionCircle_mm: leverC }
  }
  return { ...nearestLine({ A, B, C, leverA, leverB }), frictionCircle_mm: leverC }
}

function isLink(design: Design, pins: readonly [number, number]): boolean {
  return design.parts.some(({ role }, part) => {
    const count = design.pins.filter((_, pin) => joins(design, part, pin)).length
    return role === 'link' && count === 2 && pins.every((pin) => joins(design, part, pin))
  })
}

function joins(design: Design, part: number, pin: number): boolean {
  return design.pins[pin].joins.some((join) => join.part === part)
}

/** Largest friction circle that a picture has at a pin. */
export function leverOf(forces: ForcePicture | undefined, pin: number): number | undefined {
  const levers = forces?.pins.filter((force) => force.pin === pin).map((force) => force.frictionCircle_mm) ?? []
  return levers.length === 0 ? undefined : Math.max(...levers)
}

interface Pins {
  readonly A: Point
  readonly B: Point
  readonly C: Point
  readonly leverA: number
  readonly leverB: number
}

/** Of the four lines that touch both circles the nearest to C; through C itself where C lies between them. */
function nearestLine(pins: Pins): Omit<ForceLine, 'frictionCircle_mm'> {
  const sides = [-1, 1].flatMap((sideA) =>
    [-1, 1].map((sideB) => tangent(pins, { sA: sideA * pins.leverA, sB: sideB * pins.leverB })),
  )
  const nearest = sides.reduce((least, line) => (Math.abs(line.signed_mm) < Math.abs(least.signed_mm) ? line : least))
  const straddles = sides.some((line) => line.signed_mm > 0) && sides.some((line) => line.signed_mm < 0)
  const { signed_mm, ...line } = nearest
  return { ...line, distance_mm: straddles ? 0 : Math.abs(signed_mm) }
}

function tangent({ A, B, C }: Pins, side: { readonly sA: number; readonly sB: number }) {
  const length = Math.hypot(B.x_mm - A.x_mm, B.y_mm - A.y_mm)
  const along = Math.atan2(B.y_mm - A.y_mm, B.x_mm - A.x_mm)
  const direction_rad = along + Math.asin((side.sA - side.sB) / length)
  const m = { x: -Math.sin(direction_rad), y: Math.cos(direction_rad) }
  const through = { x_mm: B.x_mm - side.sB * m.x, y_mm: B.y_mm - side.sB * m.y }
  return { through, direction_rad, signed_mm: distanceFrom({ through, direction_rad }, C) }
}

function distanceFrom(line: { readonly through: Point; readonly direction_rad: number }, at: Point): number {
  return (
    (at.y_mm - line.through.y_mm) * Math.cos(line.direction_rad) - (at.x_mm - line.through.x_mm) * Math.sin(line.direction_rad)
  )
}
