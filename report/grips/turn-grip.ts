/** The direction of a force, turned about the pad that it acts on. */
import type { Change, PadForceDirection, Point } from '../../engine/index.ts'
import { pulled } from '../../engine/index.ts'
import { inMount } from '../drawing/view.ts'
import { type Drag, type Grip, type GripRow, type GripScene, type Hand, inSteps, isLever, steps } from './grip.ts'
import { boundWords } from './point-grip.ts'

/** Behind the tail of the longest arrow. */
const BEHIND_PX = 72

/** A direction with its place in the document. */
export interface DirectionPlace {
  readonly id: string
  readonly says: string
  readonly force: PadForceDirection
  readonly place: readonly (string | number)[]
  readonly rows: readonly GripRow[]
}

/** A grip behind the arrow of a force. */
export function turnGrip(scene: GripScene, { id, says, force, place, rows }: DirectionPlace): Grip {
  const { design, posture } = scene
  const at = inMount(posture, force.part, design.parts[force.part].pads[force.pad].at)
  const direction_rad = force.direction_rad + posture.poses[3 * force.frame + 2]
  const lever = scene.lever({ place, kind: 'angle' })
  const beside = { px: BEHIND_PX, direction_rad: direction_rad + Math.PI }
  if (!isLever(lever)) return { id, says, at, beside, rows, note: boundWords('its direction', lever) }
  const turn = (turned: number): readonly Change[] => (turned === 0 ? [] : [pulled(lever, turned)])
  const hand: Hand = {
    drag: (drag, size) => turn(inSteps(turnAbout(at, drag), steps[size].angle_rad)),
    // Left and up turn it counter-clockwise, right and down clockwise.
    nudge: ([right, up], size) => turn((up - right) * steps[size].angle_rad),
  }
  return { id, says, at, beside, rows, hand }
}

/** Angle by which a drag goes round a centre, −π to π, counter-clockwise. */
function turnAbout(centre: Point, { from, to }: Drag): number {
  const angle = (point: Point): number => Math.atan2(point.y_mm - centre.y_mm, point.x_mm - centre.x_mm)
  const turned = angle(to) - angle(from)
  return Math.atan2(Math.sin(turned), Math.cos(turned))
}
