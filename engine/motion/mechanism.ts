/**
 * The design as joints between rigid bodies: what motion and forces work on.
 *
 * A pin through several parts turns in every part but the one it is fixed in, so it becomes one joint for each other part.
 * Joint picture:   a (the pin is fixed here) ──●── b (the hole or slot is here).
 * A posture is a Float64Array with three numbers a part: x_mm, y_mm, turn_rad of the part's frame in the mount frame.
 * parts[0] is the mount and stays at zero.
 */
import type { Design, Point } from '../design/design.ts'

export interface Joint {
  readonly pin: number
  readonly kind: 'pin' | 'slot'
  /** Part that carries the pin. */
  readonly a: number
  /** Part whose hole or slot runs on it. */
  readonly b: number
  readonly atA: Point
  readonly atB: Point
  readonly radius_mm: number
  /** Diametral: hole less pin. */
  readonly clearance_mm: number
  /** Direction of the slot in b's frame. */
  readonly along_rad: number
  /** Half of the run of the pin's centre along the slot. */
  readonly reach_mm: number
  /** First row of this joint in the closure equations. */
  readonly row: number
}

export interface Mechanism {
  readonly design: Design
  readonly parts_count: number
  readonly joints: readonly Joint[]
  /** Closure equations: two a pin joint, one a slot. */
  readonly rows_count: number
  /** Three a moving part. */
  readonly columns_count: number
  /** One length that makes angles comparable with distances, mm: the root mean square of the holes from their part's middle. */
  readonly scale_mm: number
}

/** Joins up a design. Cannot fail: references were checked when the design was read. */
export function mechanismOf(design: Design): Mechanism {
  const joints: Joint[] = []
  let row = 0
  design.pins.forEach((pin, pinIndex) => {
    const fixed = pin.joins.find((ref) => ref.part === pin.fixedIn) ?? pin.joins[0]
    for (const ref of pin.joins) {
      if (ref === fixed) continue
      const hole = design.parts[ref.part].holes[ref.hole]
      const kind = hole.slot ? 'slot' : 'pin'
      joints.push({
        pin: pinIndex,
        kind,
        a: fixed.part,
        b: ref.part,
        atA: design.parts[fixed.part].holes[fixed.hole].at,
        atB: hole.at,
        radius_mm: pin.diameter_mm / 2,
        clearance_mm: Math.max(0, hole.diameter_mm - pin.diameter_mm),
        along_rad: hole.slot?.along_rad ?? 0,
        reach_mm: (hole.slot?.length_mm ?? 0) / 2,
        row,
      })
      row += kind === 'slot' ? 1 : 2
    }
  })
  const parts_count = design.parts.length
  return { design, parts_count, joints, rows_count: row, columns_count: 3 * (parts_count - 1), scale_mm: scaleOf(design) }
}

function scaleOf(design: Design): number {
  let sum = 0
  let count = 0
  for (const part of design.parts) {
    if (part.holes.length < 2) continue
    const middle_x = part.holes.reduce((total, hole) => total + hole.at.x_mm, 0) / part.holes.length
    const middle_y = part.holes.reduce((total, hole) => total + hole.at.y_mm, 0) / part.holes.length
    for (const hole of part.holes) {
      sum += (hole.at.x_mm - middle_x) ** 2 + (hole.at.y_mm - middle_y) ** 2
      count++
    }
  }
  return count > 0 && sum > 0 ? Math.sqrt(sum / count) : 1
}

/** Place in the mount frame of a point given in a part's frame, mm. */
export function placed(posture: Float64Array, part: number, at: Point): Point {
  if (part === 0) return at
  const o = 3 * part
  const c = Math.cos(posture[o + 2])
  const s = Math.sin(posture[o + 2])
  return { x_mm: posture[o] + c * at.x_mm - s * at.y_mm, y_mm: posture[o + 1] + s * at.x_mm + c * at.y_mm }
}

/** Centre of a pin in the mount frame, mm, taken on the part that it is fixed in. */
export function pinCentre(mechanism: Mechanism, posture: Float64Array, pin: number): Point {
  const { joins, fixedIn } = mechanism.design.pins[pin]
  const ref = joins.find((join) => join.part === fixedIn) ?? joins[0]
  return placed(posture, ref.part, mechanism.design.parts[ref.part].holes[ref.hole].at)
}
