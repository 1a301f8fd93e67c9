/**
 * Contact of a stop: a round of one part against an edge of another.
 *
 *         ( r )  round, centre P           gap = distance of P from the edge − r
 *       ────┴────▶  edge, from → to        normal: out of the solid, towards the round (left of from → to)
 *       ░░ solid ░░                        Beyond its ends an edge goes on as a corner, an arc of radius 0.
 */
import type { Edge, Point, Stop } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'
import { addForce } from './closure.ts'
import type { Condition } from './condition.ts'
import { type Mechanism, placed } from './mechanism.ts'

export interface Contact {
  /** mm; negative when the round stands inside the solid. */
  readonly gap_mm: number
  /** On the edge, mount frame. */
  readonly at: Point
  /** Unit, out of the solid, mount frame. */
  readonly normal: Vector
}

/** Where the round of a stop stands against its edge at a posture. */
export function stopContact(mechanism: Mechanism, stop: Stop, posture: Float64Array): Contact {
  const nearest = nearestOf(mechanism, stop, posture)
  const turn = posture[3 * stop.against.part + 2]
  const { x, y } = nearest.normal
  return {
    gap_mm: gapAt(nearest, stop),
    at: placed(posture, stop.against.part, nearest.at),
    normal: { x: Math.cos(turn) * x - Math.sin(turn) * y, y: Math.sin(turn) * x + Math.cos(turn) * y },
  }
}

/** Nearest place of the edge to the round's centre, in the frame of the edge's part. */
function nearestOf({ design }: Mechanism, { round, against }: Stop, posture: Float64Array): Nearest {
  const edge = design.parts[against.part].edges[against.edge]
  const centre = inFrameOf(posture, against.part, placed(posture, round.part, round.at))
  return edge.kind === 'straight' ? nearStraight(edge, centre) : nearArc(edge, centre)
}

function gapAt({ distance_mm }: Nearest, { round, gap_mm }: Stop): number {
  return distance_mm - round.radius_mm + gap_mm
}

/** The gap of a stop as a condition: zero where it touches. Its derivative is the unit contact force, pushing apart. */
export function stopGap(mechanism: Mechanism, stop: Stop): Condition {
  return {
    value: (posture) => gapAt(nearestOf(mechanism, stop, posture), stop),
    addDerivative: (row) => {
      const { at, normal } = stopContact(mechanism, stop, row.posture)
      addForce(row, { part: stop.round.part, at, force: normal })
      addForce(row, { part: stop.against.part, at, force: { x: -normal.x, y: -normal.y } })
    },
  }
}

interface Nearest {
  readonly distance_mm: number
  readonly at: Point
  readonly normal: Vector
}

function nearStraight(edge: Extract<Edge, { kind: 'straight' }>, centre: Point): Nearest {
  const dx = edge.to.x_mm - edge.from.x_mm
  const dy = edge.to.y_mm - edge.from.y_mm
  const length = Math.hypot(dx, dy)
  const px = centre.x_mm - edge.from.x_mm
  const py = centre.y_mm - edge.from.y_mm
  const along = (px * dx + py * dy) / length
  if (along <= 0) return nearCorner(edge.from, centre)
  if (along >= length) return nearCorner(edge.to, centre)
  const normal = { x: -dy / length, y: dx / length }
  const distance_mm = px * normal.x + py * normal.y
  const at = { x_mm: centre.x_mm - distance_mm * normal.x, y_mm: centre.y_mm - distance_mm * normal.y }
  return { distance_mm, at, normal }
}

function nearArc(edge: Extract<Edge, { kind: 'arc' }>, centre: Point): Nearest {
  const px = centre.x_mm - edge.centre.x_mm
  const py = centre.y_mm - edge.centre.y_mm
  const whole = 2 * Math.PI
  const run = edge.to_rad - edge.from_rad
  const past = (((Math.atan2(py, px) - edge.from_rad) % whole) + whole) % whole
  if (past > run) return nearCorner(onCircle(edge, past - run < whole - past ? edge.to_rad : edge.from_rad), centre)
  const from_centre = Math.hypot(px, py)
  const sign = edge.solid === 'inside' ? 1 : -1
  const normal = { x: (sign * px) / from_centre, y: (sign * py) / from_centre }
  return { distance_mm: sign * (from_centre - edge.radius_mm), at: onCircle(edge, Math.atan2(py, px)), normal }
}

function onCircle(edge: Extract<Edge, { kind: 'arc' }>, angle: number): Point {
  return { x_mm: edge.centre.x_mm + edge.radius_mm * Math.cos(angle), y_mm: edge.centre.y_mm + edge.radius_mm * Math.sin(angle) }
}

function nearCorner(corner: Point, centre: Point): Nearest {
  const dx = centre.x_mm - corner.x_mm
  const dy = centre.y_mm - corner.y_mm
  const distance_mm = Math.hypot(dx, dy)
  return { distance_mm, at: corner, normal: { x: dx / distance_mm, y: dy / distance_mm } }
}

function inFrameOf(posture: Float64Array, part: number, at: Point): Point {
  const c = Math.cos(posture[3 * part + 2])
  const s = Math.sin(posture[3 * part + 2])
  const dx = at.x_mm - posture[3 * part]
  const dy = at.y_mm - posture[3 * part + 1]
  return { x_mm: c * dx + s * dy, y_mm: c * dy - s * dx }
}
