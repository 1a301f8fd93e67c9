/**
 * The stop that ends the travel is taken out and another put between the mount and the first phalanx, which touches at the same closed
 * posture: a boss of the mount against the heel of the phalanx. Shown in the frame of the phalanx, û along it:
 *
 *      MCP ●━━━━━━━━━━━━━━━━━━━● next joint    û ▸
 *          ░░░◀━━━━━━━━░░░                     heel, its solid above it
 *              ( boss )                        its centre under the middle of the heel
 *
 * Everything between the two then stands between stop and toggle: what the lengths of the links add up to is multiplied by the toggle.
 */
import type { Design, Point } from '../../design/design.ts'
import type { Change } from '../../design/edit/change.ts'
import type { Posture } from '../../figures/evaluation.ts'
import { type FingerJoint, fingerJoints, flexion } from '../../motion/flexion.ts'
import { mechanismOf, placed } from '../../motion/mechanism.ts'
import { stopContact } from '../../motion/stop-contact.ts'
import { limits } from '../../numbers/limits.ts'
import type { TrialGround, Tried } from './trial.ts'

/** Middle of the heel along the phalanx, its depth under the joints, and the boss's radius, as shares of the phalanx's length. */
const heel = { along_ratio: 0.2, depth_ratio: 0.14, radius_ratio: 0.045, half_ratio: 0.11 }

/** The stop that ends the closing stands at the MCP instead; the finger closes where it did. */
export function stopAtTheMcp({ evaluation }: TrialGround): Tried {
  const { design, travel } = evaluation
  const closed = travel?.postures.at(-1)
  if (travel?.endsBy !== 'stop' || !closed) return { cannot: 'no stop ends the travel of this design' }
  const [joint, next] = fingerJoints(mechanismOf(design))
  if (joint?.upper !== 0) return { cannot: 'no pin of the design joins the mount and a phalanx' }
  if (travel.postures.some(({ poses }) => flexion(poses, joint) > flexion(closed.poses, joint))) {
    return {
      cannot: 'the first phalanx turns back before the finger is closed, past dead centre: a stop there would be met on the way',
    }
  }
  const touching = stopsTouching(design, closed)
  const isThere = touching.some(({ round, against }) =>
    [round.part, against.part].every((part) => [0, joint.lower].includes(part)),
  )
  return isThere ? { cannot: 'its stop stands at the MCP already' } : moved(design, { joint, next, closed }, touching)
}

function moved(design: Design, at: Closed, touching: Design['stops']): Tried {
  const { boss, edge } = heelAndBoss(design, at)
  const phalanx = design.parts[at.joint.lower].id
  const stop = {
    round: { part: design.parts[0].id, ...typed(boss.at), radius: length(boss.radius_mm) },
    against: `${phalanx}.${edge.id}`,
    friction: touching[0].friction.name,
  }
  const changes: readonly Change[] = [
    ...touching.map(({ id }): Change => ({ kind: 'remove', place: ['stops', id] })),
    withEdge(design, at.joint.lower, edge),
    {
      kind: 'set',
      place: [
        'stops',
        free(
          'mcp',
          design.stops.map(({ id }) => id),
        ),
      ],
      value: stop,
    },
  ]
  const says =
    `The stop ${touching.map(({ id }) => id).join(' and ')} is taken out. A boss of the mount meets the heel of ${phalanx} instead, ` +
    `${length(heel.along_ratio * edge.length_mm, 1)} from the MCP, and the finger closes where it did. All lengths between there and the toggle now count.`
  return { says, changes }
}

/** Stops that touch at the closed posture: one, unless two meet there. */
function stopsTouching(design: Design, { poses }: Posture): Design['stops'] {
  const mechanism = mechanismOf(design)
  const gaps = design.stops.map((stop) => Math.abs(stopContact(mechanism, stop, poses).gap_mm))
  const nearest = Math.min(...gaps)
  return design.stops.filter((_, index) => gaps[index] <= nearest + limits.touching_mm)
}

interface Closed {
  readonly joint: FingerJoint
  readonly next: FingerJoint | undefined
  readonly closed: Posture
}

interface Heel {
  readonly id: string
  readonly from: Point
  readonly to: Point
  /** Of the phalanx, from joint to joint. */
  readonly length_mm: number
}

function heelAndBoss(design: Design, { joint, next, closed }: Closed): { boss: { at: Point; radius_mm: number }; edge: Heel } {
  const from = centreOn(design, joint.lower, joint.pin)
  const to = next ? centreOn(design, joint.lower, next.pin) : { x_mm: from.x_mm + lengthWithoutNext_mm, y_mm: from.y_mm }
  const length_mm = Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm)
  const [ux, uy] = [(to.x_mm - from.x_mm) / length_mm, (to.y_mm - from.y_mm) / length_mm]
  /** Shares of the length along the phalanx and towards the palm, to which it bends clockwise. */
  const at = (along: number, palmward: number): Point => ({
    x_mm: from.x_mm + length_mm * (along * ux + palmward * uy),
    y_mm: from.y_mm + length_mm * (along * uy - palmward * ux),
  })
  const { along_ratio, depth_ratio, radius_ratio, half_ratio } = heel
  const centre = placed(closed.poses, joint.lower, at(along_ratio, depth_ratio + radius_ratio))
  return {
    boss: { at: centre, radius_mm: radius_ratio * length_mm },
    edge: {
      id: free(
        'heel',
        design.parts[joint.lower].edges.map(({ id }) => id),
      ),
      from: at(along_ratio + half_ratio, depth_ratio),
      to: at(along_ratio - half_ratio, depth_ratio),
      length_mm,
    },
  }
}

/** A finger of one phalanx: its length is not known, and any will do for the place of a heel. */
const lengthWithoutNext_mm = 40

function centreOn({ parts, pins }: Design, part: number, pin: number): Point {
  const hole = pins[pin].joins.find((join) => join.part === part)
  if (!hole) throw new Error(`pin ${pins[pin].id} does not go through ${parts[part].id}`)
  return parts[part].holes[hole.hole].at
}

function withEdge({ parts }: Design, part: number, { id, from, to }: Heel): Change {
  const edge = { from: [length(from.x_mm), length(from.y_mm)], to: [length(to.x_mm), length(to.y_mm)] }
  const place = ['parts', parts[part].id, 'edges']
  return parts[part].edges.length > 0
    ? { kind: 'set', place: [...place, id], value: edge }
    : { kind: 'set', place, value: { [id]: edge } }
}

/** A nanometre: the closed posture is to be the same, and the toggle multiplies what is left. */
const digits = 6

function length(value_mm: number, shown = digits): string {
  return `${Number(value_mm.toFixed(shown)) + 0} mm`
}

function typed({ x_mm, y_mm }: Point): { readonly x: string; readonly y: string } {
  return { x: length(x_mm), y: length(y_mm) }
}

function free(wanted: string, taken: readonly string[]): string {
  let name = wanted
  for (let number = 2; taken.includes(name); number++) name = `${wanted}${number}`
  return name
}
