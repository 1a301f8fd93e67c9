/**
 * Postures of a flat finger from the turn of the part that is driven, dyad by dyad.
 *
 *              q               d = s − p, t = |d|² + |a|² − |b|², v = q − p:
 *         a ╱     ╲ b
 *        p ●─────────● s       v = (t d ± √(4 |a|² |d|² − t²) d⊥) / 2 |d|²        root and division do not wait for each other
 */
import type { FlatDyad, FlatFinger } from './flat-finger.ts'
import { ofStop } from './flat-numbers.ts'
import { type FlatRoom, placeX, placeY } from './flat-room.ts'

/** Least sine of the angle between the arms of a dyad at which its posture has all its digits. */
const sineLeast = 0.01

/**
 * Places every part.
 *
 * @param turn_rad of the lead, counter-clockwise
 * @returns false where a dyad cannot close, or stands too near to its dead centre
 */
export function placeFlat(room: FlatRoom, turn_rad: number): boolean {
  const { finger, numbers, poses, centres, sides } = room
  const { part, joint, onMount, onLead } = finger.lead
  room.lead.turn_rad = turn_rad
  poses[4 * part] = Math.cos(turn_rad)
  poses[4 * part + 1] = Math.sin(turn_rad)
  centres[2 * joint] = numbers[onMount]
  centres[2 * joint + 1] = numbers[onMount + 1]
  putOn(room, part, onLead, numbers[onMount], numbers[onMount + 1])
  for (let index = 0; index < finger.dyads.length; index++) if (!placeDyad(room, finger.dyads[index], sides[index])) return false
  return true
}

/** Moves a turned part so that a place of it lies at x, y. */
function putOn({ numbers, poses }: FlatRoom, part: number, at: number, x: number, y: number): void {
  const pose = 4 * part
  poses[pose + 2] = x - poses[pose] * numbers[at] + poses[pose + 1] * numbers[at + 1]
  poses[pose + 3] = y - poses[pose + 1] * numbers[at] - poses[pose] * numbers[at + 1]
}

function placeDyad(room: FlatRoom, dyad: FlatDyad, side: number): boolean {
  const { numbers, poses, centres } = room
  const { first, second, beyondFirst, beyondSecond, p, q, s, pOnFirst, qOnFirst, qOnSecond, sOnSecond } = dyad
  const px = placeX(room, beyondFirst, dyad.pBeyond)
  const py = placeY(room, beyondFirst, dyad.pBeyond)
  const sx = placeX(room, beyondSecond, dyad.sBeyond)
  const sy = placeY(room, beyondSecond, dyad.sBeyond)
  const ax = numbers[qOnFirst] - numbers[pOnFirst]
  const ay = numbers[qOnFirst + 1] - numbers[pOnFirst + 1]
  const bx = numbers[qOnSecond] - numbers[sOnSecond]
  const by = numbers[qOnSecond + 1] - numbers[sOnSecond + 1]
  const a2 = ax * ax + ay * ay
  const b2 = bx * bx + by * by
  const dx = sx - px
  const dy = sy - py
  const d2 = dx * dx + dy * dy
  const t = d2 + a2 - b2
  const square = 4 * a2 * d2 - t * t
  // The square is (2 |a| |b| sin)², so that this asks for the sine as well as whether there is a root.
  if (!(square > sineLeast * sineLeast * 4 * a2 * b2)) return false
  const root = side * Math.sqrt(square)
  const half = 0.5 / d2
  const vx = (t * dx - root * dy) * half
  const vy = (t * dy + root * dx) * half
  const wx = vx - dx
  const wy = vy - dy
  const overA = 1 / a2
  const overB = 1 / b2
  poses[4 * first] = (vx * ax + vy * ay) * overA
  poses[4 * first + 1] = (vy * ax - vx * ay) * overA
  poses[4 * second] = (wx * bx + wy * by) * overB
  poses[4 * second + 1] = (wy * bx - wx * by) * overB
  putOn(room, first, pOnFirst, px, py)
  putOn(room, second, sOnSecond, sx, sy)
  putCentre(centres, p, px, py)
  putCentre(centres, q, px + vx, py + vy)
  putCentre(centres, s, sx, sy)
  return true
}

function putCentre(centres: Float64Array, joint: number, x: number, y: number): void {
  centres[2 * joint] = x
  centres[2 * joint + 1] = y
}

/** Gap of a stop at the posture that stands in the room, mm; leaves the contact there. */
export function gapFlat(room: FlatRoom, { round, against, at }: FlatFinger['stops'][number]): number {
  const { numbers, poses, contact } = room
  const cosine = poses[4 * against]
  const sine = poses[4 * against + 1]
  contact.x = placeX(room, round, at)
  contact.y = placeY(room, round, at)
  const ux = contact.x - poses[4 * against + 2]
  const uy = contact.y - poses[4 * against + 3]
  const px = cosine * ux + sine * uy - numbers[at + ofStop.from]
  const py = cosine * uy - sine * ux - numbers[at + ofStop.from + 1]
  const dx = numbers[at + ofStop.to] - numbers[at + ofStop.from]
  const dy = numbers[at + ofStop.to + 1] - numbers[at + ofStop.from + 1]
  const length = Math.sqrt(dx * dx + dy * dy)
  const along = (px * dx + py * dy) / length
  // Beyond its ends an edge goes on as a corner.
  const isBeside = along <= 0 || along >= length
  const pastX = along <= 0 ? px : px - dx
  const pastY = along <= 0 ? py : py - dy
  const distance = isBeside ? Math.sqrt(pastX * pastX + pastY * pastY) : (py * dx - px * dy) / length
  const normalX = isBeside ? pastX / distance : -dy / length
  const normalY = isBeside ? pastY / distance : dx / length
  contact.normalX = cosine * normalX - sine * normalY
  contact.normalY = sine * normalX + cosine * normalY
  return distance - numbers[at + ofStop.radius] + numbers[at + ofStop.gap]
}

/** Angle between A-B and B-C of a toggle at the posture that stands in the room, rad, −π to π. */
export function bendFlat({ centres }: FlatRoom, [a, b, c]: FlatFinger['toggles'][number]): number {
  const ux = centres[2 * b] - centres[2 * a]
  const uy = centres[2 * b + 1] - centres[2 * a + 1]
  const wx = centres[2 * c] - centres[2 * b]
  const wy = centres[2 * c + 1] - centres[2 * b + 1]
  return Math.atan2(ux * wy - uy * wx, ux * wx + uy * wy)
}
