/** The states in which parts are pressed, gathered from what was worked out along the travel: nothing is solved twice. */
import type { LoadCase } from '../design/design.ts'
import type { CaseEfforts } from '../forces/case-way.ts'
import { framesAt } from '../forces/force-frame.ts'
import { holding } from '../forces/holding.ts'
import { addLoadCase } from '../forces/loads.ts'
import { slotAngle } from '../motion/closure.ts'
import type { Joint } from '../motion/mechanism.ts'
import type { PathNode } from '../motion/path.ts'
import type { Pressed } from '../strength/pressed.ts'
import type { CaseFound } from './case-figures.ts'
import type { CaseSurvey, Survey } from './survey.ts'

export interface PressedStates {
  readonly states: readonly Pressed[]
  /** Load cases of which some state has no forces, with where; empty when every state is there. */
  readonly missing: readonly string[]
}

/**
 * Every load case at every posture that it acts in, just closing and just held, and as it stands when closed. A load that pushes the finger
 * closed is held by nothing on its way; the stop takes it.
 */
export function pressedStates(survey: Survey, found: readonly CaseFound[]): PressedStates {
  const states: Pressed[] = []
  const missing: string[] = []
  for (const surveyed of survey.cases) {
    const without_count = addAlongTravel(states, survey, surveyed)
    const { id, name } = surveyed.loadCase
    const closed = found.find(({ loadCase }) => loadCase.id === id)
    const held = closed && heldClosed(survey, closed)
    if (held) states.push(held)
    if (without_count > 0)
      missing.push(`${name}: no equilibrium was found at ${without_count} of ${survey.nodes.length} postures`)
    else if (!held) missing.push(`${name}: no equilibrium was found when closed, with play and stretch`)
  }
  return { states, missing }
}

/** Of a posture where the parts are not ruled. */
const NO_EFFORTS: Partial<CaseEfforts> = {}

/** @returns the number of postures at which a state has no forces */
function addAlongTravel(states: Pressed[], survey: Survey, { loadCase, efforts }: CaseSurvey): number {
  const { nodes, drive } = survey
  const closed_mm = nodes[nodes.length - 1].arc_mm
  const { id, acts } = loadCase
  let without_count = 0
  for (let index = acts === 'travel' ? 0 : nodes.length - 1; index < nodes.length; index++) {
    const { posture, arc_mm } = nodes[index]
    const arc_ratio = closed_mm > 0 ? arc_mm / closed_mm : 0
    const { closing, hold = Number.NaN, holding: byDrive } = efforts[index] ?? NO_EFFORTS
    const held = hold > 0 ? byDrive : hold === 0 ? heldByFriction(survey, nodes[index], loadCase) : undefined
    const add = (doing: Pressed['doing'], forces: Float64Array): unknown =>
      states.push({ loadCase: id, doing, drive: drive[index], arc_ratio, posture, forces: inMount(survey, posture, forces) })
    if (closing) add('closing', closing)
    if (held) add('holding', held)
    if (!closing || (!held && !(hold < 0))) without_count++
  }
  return without_count
}

/** Joint forces where friction holds the load with no effort at all; undefined where no state was found. */
function heldByFriction({ bench }: Survey, node: PathNode, loadCase: LoadCase): Float64Array | undefined {
  const frames = framesAt(bench.room, node)
  const asked = {
    addLoads: (row: Parameters<typeof addLoadCase>[0]) => addLoadCase(row, loadCase),
    port: { kind: 'drive' },
  } as const
  const held = frames && holding(bench, frames.opening, asked)
  return held && byJoint(bench.mechanism.joints, held.balance.forces)
}

/** A load case as it stands when closed, with play and stretch; undefined where no equilibrium was found. */
export function heldClosed(survey: Survey, { loadCase, loaded }: CaseFound): Pressed | undefined {
  if (!loaded) return undefined
  const { posture, state } = loaded
  const forces = inMount(survey, posture, byJoint(survey.bench.mechanism.joints, state.balance.forces))
  return { loadCase: loadCase.id, doing: 'held closed', drive: survey.path.drive.value(posture), arc_ratio: 1, posture, forces }
}

/** Forces that stand in closure rows, two numbers a joint. */
function byJoint(joints: readonly Joint[], rows: Float64Array): Float64Array {
  const forces = new Float64Array(2 * joints.length)
  for (const [index, { row, kind }] of joints.entries()) {
    forces[2 * index] = rows[row]
    if (kind === 'pin') forces[2 * index + 1] = rows[row + 1]
  }
  return forces
}

/** With what stands along the normal of slots turned into the mount frame: on the slot's part, without the friction along it. */
function inMount({ bench }: Survey, posture: Float64Array, given: Float64Array): Float64Array {
  const { room, mechanism } = bench
  if (room.slots.length === 0) return given
  const forces = given.slice()
  for (const slot of room.slots) {
    const along = slotAngle(posture, mechanism.joints[slot])
    forces[2 * slot] = given[2 * slot] * Math.sin(along)
    forces[2 * slot + 1] = -given[2 * slot] * Math.cos(along)
  }
  return forces
}
