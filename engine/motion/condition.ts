/**
 * One scalar condition on a posture, with its derivative: what the closure equations lack to fix a finger of one freedom.
 *
 * The derivative is a generalised force (three columns a moving part, angles over scale_mm), so the derivative of a
 * coordinate is also the pattern of the unit force that does work on it: the drive's coordinate gives its port.
 */
import type { Drive, PartPoint, Point } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'
import { addCouple, addForce, type ForceRow } from './closure.ts'
import { type Mechanism, placed } from './mechanism.ts'

export interface Condition {
  readonly value: (posture: Float64Array) => number
  /** Adds the derivative to `row`. */
  readonly addDerivative: (row: ForceRow) => void
}

/**
 * The drive's coordinate less `aim`: rad of flexion for a turn, mm of stroke for a pull or wrap (0 at `drawn`).
 * It grows as the finger closes; its derivative is the unit effort.
 */
export function driveCoordinate(mechanism: Mechanism, drawn: Float64Array, aim = 0): Condition {
  const { drive } = mechanism.design
  if (drive.kind === 'turn') return turnCoordinate(drive, aim)
  const stroke = drive.kind === 'pull' ? pullStroke(drive) : wrapStroke(drive, drawn)
  const atDrawn = stroke.value(drawn)
  return { value: (posture) => stroke.value(posture) - atDrawn - aim, addDerivative: stroke.addDerivative }
}

function turnCoordinate(drive: Extract<Drive, { kind: 'turn' }>, aim: number): Condition {
  return {
    value: (posture) => posture[3 * drive.against + 2] - posture[3 * drive.part + 2] - aim,
    addDerivative: (row) => {
      addCouple(row, { part: drive.part, couple: -1 })
      addCouple(row, { part: drive.against, couple: 1 })
    },
  }
}

function pullStroke(drive: Extract<Drive, { kind: 'pull' }>): Condition {
  const length = distance(drive.on, drive.towards)
  return {
    value: (posture) => -length.value(posture),
    addDerivative: (row) => pushApart(row, drive.on, drive.towards, -1),
  }
}

/** Distance between two points of two parts, mm; its derivative is a unit force that pushes them apart. */
export function distance(from: PartPoint, to: PartPoint): Condition {
  return {
    value: (posture) => {
      const a = placed(posture, from.part, from.at)
      const b = placed(posture, to.part, to.at)
      return Math.hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm)
    },
    addDerivative: (row) => pushApart(row, from, to, 1),
  }
}

function pushApart(row: ForceRow, from: PartPoint, to: PartPoint, amount: number): void {
  const a = placed(row.posture, from.part, from.at)
  const b = placed(row.posture, to.part, to.at)
  const length = Math.hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm)
  const force = { x: (amount * (b.x_mm - a.x_mm)) / length, y: (amount * (b.y_mm - a.y_mm)) / length }
  addForce(row, { part: to.part, at: b, force })
  addForce(row, { part: from.part, at: a, force: { x: -force.x, y: -force.y } })
}

/**
 * Cable or chain laid round a roller of pitch radius r and led off along a tangent to a guide point at distance d.
 *
 *        guide ●───────────╮ tangent point         free length t = √(d² − r²)
 *                       ( r )  roller               stroke = −t + r · (turn of the roller − turn of the tangent point)
 *
 * The wrap comes from geometry: when the guide moves round the roller the tangent point follows. A pull of 1 N is a force
 * along the tangent on the roller's part and its reaction at the guide; its lever about the roller's centre is r.
 */
function wrapStroke(drive: Extract<Drive, { kind: 'wrap' }>, drawn: Float64Array): Condition {
  const sense = drive.turns === 'counter-clockwise' ? 1 : -1
  const r = drive.pitchRadius_mm
  const line = (posture: Float64Array): TangentLine => tangentLine(posture, drive, sense)
  const drawnBearing = line(drawn).bearing_rad
  return {
    value: (posture) => {
      const { free_mm, bearing_rad } = line(posture)
      return -free_mm + sense * r * (posture[3 * drive.roller.part + 2] - nearestTurn(bearing_rad, drawnBearing))
    },
    addDerivative: (row) => {
      const { at, direction, guide } = line(row.posture)
      addForce(row, { part: drive.roller.part, at, force: direction })
      addForce(row, { part: drive.towards.part, at: guide, force: { x: -direction.x, y: -direction.y } })
    },
  }
}

/** The same angle, by whole turns nearest to `near`: the guide moves round the roller by less than half a turn from drawn. */
function nearestTurn(angle: number, near: number): number {
  return angle + 2 * Math.PI * Math.round((near - angle) / (2 * Math.PI))
}

interface TangentLine {
  readonly free_mm: number
  /** Of the tangent point seen from the roller's centre. */
  readonly bearing_rad: number
  readonly at: Point
  /** Unit, from the tangent point to the guide. */
  readonly direction: Vector
  readonly guide: Point
}

function tangentLine(posture: Float64Array, drive: Extract<Drive, { kind: 'wrap' }>, sense: number): TangentLine {
  const centre = placed(posture, drive.roller.part, drive.roller.at)
  const guide = placed(posture, drive.towards.part, drive.towards.at)
  const dx = guide.x_mm - centre.x_mm
  const dy = guide.y_mm - centre.y_mm
  const r = drive.pitchRadius_mm
  const d = Math.hypot(dx, dy)
  const free_mm = Math.sqrt(Math.max(0, d * d - r * r))
  // The cable pulls the tangent point towards the guide, which turns the roller in `sense`: the point lies to that side.
  const bearing_rad = Math.atan2(dy, dx) - sense * Math.acos(Math.min(1, r / d))
  const at = { x_mm: centre.x_mm + r * Math.cos(bearing_rad), y_mm: centre.y_mm + r * Math.sin(bearing_rad) }
  const direction = { x: -sense * Math.sin(bearing_rad), y: sense * Math.cos(bearing_rad) }
  return { free_mm, bearing_rad, at, direction, guide }
}
