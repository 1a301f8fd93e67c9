/**
 * The drive of a flat finger: a turn of the part that leads, or a cable round a roller on it, led off to a guide on the mount.
 *
 *     stroke = −t + r s (turn − bearing of the tangent point)        t = √(d² − r²), s: +1 where the cable turns it counter-clockwise
 *
 * Roller and guide turn and stand on the mount, so that t and the bearing keep still while the finger moves: the cable's row in the closure
 * touches the lead's turn alone, and its coordinate is r s (turn − turn as drawn). A finger that is let go has a slack cable, which pulls at
 * nothing: neither motion nor forces know of it. What it does say is where the lead stands as drawn, which is where springs are counted from:
 * a set is put together with the stroke held that its parts have where they are drawn, before its pins come together (assemble.ts).
 */
import type { Design, Drive } from '../../design/design.ts'
import { drawnPosture } from '../../motion/assemble.ts'
import { placed } from '../../motion/mechanism.ts'
import type { NotStraight } from './straight-numbers.ts'

/** What leads a flat finger. */
export interface FlatDrive {
  readonly kind: 'turn' | 'wrap'
  readonly part: number
  /** +1 where the lead turns counter-clockwise as the finger opens. */
  readonly opens: 1 | -1
}

/** Of a drive: turn of the lead as it is drawn (rad) and both ends of the travel (rad or mm); of a cable then radius, x, y of roller as drawn and of guide, mm. */
export const ofDrive = { drawnTurn: 0, open: 1, closed: 2, radius: 3, roller: 4, guide: 6 } as const

/** @returns why not, where the short way knows no such drive */
export function flatDrive({ drive }: Design): FlatDrive | NotStraight {
  if (drive.kind === 'pull') return { why: 'the drive pulls at a point of a part' }
  if (drive.kind === 'turn')
    return drive.against === 0
      ? { kind: 'turn', part: drive.part, opens: 1 }
      : { why: 'the drive is not a turn against the mount' }
  return drive.towards.part === 0
    ? { kind: 'wrap', part: drive.roller.part, opens: drive.turns === 'clockwise' ? 1 : -1 }
    : { why: 'the guide of its cable is not on the mount' }
}

/** Numbers of a drive. */
export function driveNumbers(design: Design): readonly number[] {
  const { drive, parts } = design
  const { open, closed } = drive.travel
  const turnOf = (part: number): number => parts[part].drawn?.turn_rad ?? Number.NaN
  if (drive.kind === 'turn') return [turnOf(drive.part), open, closed]
  if (drive.kind === 'pull') return [Number.NaN, open, closed]
  const { roller, towards, pitchRadius_mm } = drive
  const { x_mm, y_mm } = placed(drawnPosture(design), roller.part, roller.at)
  return [turnOf(roller.part), open, closed, pitchRadius_mm, x_mm, y_mm, towards.at.x_mm, towards.at.y_mm]
}

/** Whether a cable's roller turns about the pin that leads, as far as the design as drawn tells. */
export function turnsAbout(drive: Drive, hole: { readonly x_mm: number; readonly y_mm: number }): boolean {
  if (drive.kind !== 'wrap') return true
  return Math.hypot(drive.roller.at.x_mm - hole.x_mm, drive.roller.at.y_mm - hole.y_mm) < same_mm
}

/** Places nearer than this are one place, mm: rounding leaves far less. */
const same_mm = 1e-9
