/**
 * The closed posture of any set and its return from rest, by the parts of the long way that they need and by nothing else.
 *
 * `evaluate` follows a set from open to closed and works out some hundred figures. Where only the closed end is asked for, and the set is
 * nearly the one that was drawn, its stop's contact can be solved from the closed posture as drawn: the same closure equations, the same
 * stop, the same friction at rest, at one posture. What makes it short is that nothing is read, planned or reserved anew: the mechanism and
 * its rooms are made once for a live design, and each set is written into them.
 *
 * It steps back, and says so, where it could not be the same finger: a pin that is not thinner than its hole, friction below nothing,
 * another stop or the end of the drive's range first, a closed posture at or past dead centre, or none.
 */
import type { Design, Part } from '../../design/design.ts'
import { partMass } from '../../design/mass.ts'
import { type ForceBench, forceBench } from '../../forces/force-bench.ts'
import { type ForceFrame, framesAlong } from '../../forces/force-frame.ts'
import { frictionLever } from '../../forces/friction-lever.ts'
import type { PartMass } from '../../forces/loads.ts'
import { restAmplitude, returnQuestion } from '../../forces/return-reserve.ts'
import { assemble } from '../../motion/assemble.ts'
import { type Condition, driveCoordinate } from '../../motion/condition.ts'
import { type Joint, mechanismOf } from '../../motion/mechanism.ts'
import { makePathBench, type PathNode } from '../../motion/path.ts'
import { settle } from '../../motion/settle.ts'
import { stopGap } from '../../motion/stop-contact.ts'
import { toggleAngle, toggleMargin } from '../../motion/toggle-margin.ts'
import { type TravelPath, travelPath } from '../../motion/travel-path.ts'
import type { Variation } from '../sources/source.ts'
import { liveDesign, type NotStraight } from './live-design.ts'
import { nearPosture } from './near-posture.ts'

/** Of one set, closed: one dead-centre margin a toggle, rad, and last the return reserve from rest, N·mm a pin. */
export type ClosedNumbers = Float64Array

/** Closed fingers of one design. */
export interface ClosedFingers {
  /** Numbers a set: its toggles and one more. */
  readonly numbers_count: number
  /**
   * @param values one a source, as `Variation.setOf` takes them
   * @param out the set's numbers, where true comes back
   * @returns false where the long way has to say
   */
  readonly solve: (values: ArrayLike<number>, out: ClosedNumbers) => boolean
}

/** @returns the closed fingers of a design; or why the short way does not serve */
export function closedFingers(variation: Variation): ClosedFingers | NotStraight {
  const live = liveDesign(variation)
  if ('why' in live) return live
  const standing = standingFinger(live.design)
  if ('why' in standing) return standing
  const { stop, closed, path } = standing
  const startFor = nearPosture(variation.sources, closed.posture, (values) => {
    live.write(values)
    return settle(path.bench, closed.posture, stop)?.posture
  })
  const solve = (values: ArrayLike<number>, out: ClosedNumbers): boolean => {
    live.write(values)
    if (!takeOver(standing)) return false
    const settled = settle(path.bench, startFor(values), stop)
    return settled !== undefined && solveClosed(standing, settled.posture, out)
  }
  return { numbers_count: live.design.toggles.length + 1, solve }
}

/** Joints and masses of the live design, which are written over. */
type Written<Kept> = { -readonly [Key in keyof Kept]: Kept[Key] }

interface Standing {
  readonly design: Design
  readonly path: TravelPath
  readonly forces: ForceBench
  readonly closed: PathNode
  readonly stop: Condition
  readonly others: readonly Condition[]
  readonly joints: readonly Written<Joint>[]
  /** Masses that follow from an outline; one that is stated stands in the design itself. */
  readonly shaped: readonly Written<PartMass>[]
  /** Column of the turn that is driven. */
  readonly driven: number
}

function standingFinger(design: Design): Standing | NotStraight {
  const { drive } = design
  if (drive.kind !== 'turn' || drive.against !== 0) return { why: 'the drive is not a turn against the mount' }
  if (!design.springs.every((spring) => spring.kind === 'torsion' && spring.on === drive.part && spring.against === 0))
    return { why: 'a spring acts elsewhere than on the part that is driven' }
  const mechanism = mechanismOf(design)
  if (mechanism.joints.some(({ kind }) => kind === 'slot')) return { why: 'a pin runs in a slot' }
  const drawn = assemble(mechanism).posture
  if (!drawn) return { why: 'the design as drawn cannot be put together' }
  const path = travelPath(makePathBench(mechanism), drawn)
  if (path?.end.by !== 'stop') return { why: 'the travel does not end at a stop' }
  const { stop: ending } = path.end
  const gaps = design.stops.map((stop) => stopGap(mechanism, stop))
  const forces = forceBench(mechanism, drawn.slice(), driveCoordinate(mechanism, drawn))
  return {
    ...{ design, path, forces, joints: mechanism.joints, driven: 3 * (drive.part - 1) + 2 },
    shaped: forces.masses.filter(({ part }) => !isStated(design.parts[part])),
    closed: path.nodes[path.nodes.length - 1],
    stop: gaps[ending],
    others: gaps.filter((_, index) => index !== ending),
  }
}

function isStated({ mass_kg, centreOfMass }: Part): boolean {
  return mass_kg !== undefined && centreOfMass !== undefined
}

/** Takes over what was worked out of the design when the rooms were made. @returns false for sizes that no set can have */
function takeOver({ design, joints, shaped, forces, driven }: Standing): boolean {
  const levers = forces.leversOf('rest', 'most')
  for (let index = 0; index < joints.length; index++) {
    const joint = joints[index]
    const pin = design.pins[joint.pin]
    joint.radius_mm = pin.diameter_mm / 2
    levers[index] = frictionLever(joint.radius_mm, pin.friction.rest.most)
    if (!(pin.friction.rest.most >= 0 && isThinner(design, pin))) return false
  }
  for (const mass of shaped) {
    const now = partMass(design.parts[mass.part])
    if (!now) return false
    mass.mass_kg = now.mass_kg
    mass.centre = now.centreOfMass
  }
  const part = (driven + 1) / 3
  forces.drawn[driven + 3] = design.parts[part].drawn?.turn_rad ?? forces.drawn[driven + 3]
  return true
}

function isThinner({ parts }: Design, { joins, diameter_mm }: Design['pins'][number]): boolean {
  return joins.every(({ part, hole }) => parts[part].holes[hole].diameter_mm > diameter_mm)
}

function solveClosed(standing: Standing, posture: Float64Array, out: ClosedNumbers): boolean {
  const { path, forces, closed, others, driven, design } = standing
  if (others.some((gap) => !(gap.value(posture) > 0))) return false
  if (path.drive.value(posture) > design.drive.travel.closed) return false
  for (const [index, toggle] of path.toggles.entries()) {
    const angle = toggleAngle(path.mechanism, design.toggles[index])
    out[index] = toggleMargin({ ...toggle, angle }, posture)
    if (!(out[index] > 0)) return false
  }
  const opening = framesAlong(forces.room, posture, closed.tangent)?.opening
  if (!opening || !closesOn(opening, driven, closed)) return false
  const question = returnQuestion(forces, opening)
  const reserve = question && restAmplitude(forces, question)
  if (reserve === undefined) return false
  out[path.toggles.length] = reserve
  return true
}

/** Whether the drive still closes it there, as it does as drawn: no fold lies before the stop. */
function closesOn({ tangent }: ForceFrame, driven: number, closed: PathNode): boolean {
  return Math.sign(tangent[driven]) === Math.sign(closed.tangent[driven])
}
