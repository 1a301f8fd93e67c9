/** Any posture of the travel, and the forces there for a question: what a pointer on the scale asks for. */
import type { Design, Point } from '../design/design.ts'
import { type Balance, balanceIn, prepare } from '../forces/balance.ts'
import { type Effort, effortToClose, effortToHold, portRow } from '../forces/effort.ts'
import { type ForceBench, forceBench, standingLoad } from '../forces/force-bench.ts'
import { type FramePair, framesAt } from '../forces/force-frame.ts'
import { addLoadCase } from '../forces/loads.ts'
import { returnReserve } from '../forces/return-reserve.ts'
import { holdingPort } from '../forces/states.ts'
import { linkTension } from '../forces/take-up.ts'
import { assemble } from '../motion/assemble.ts'
import { mechanismOf, placed } from '../motion/mechanism.ts'
import { makePathBench, type PathNode } from '../motion/path.ts'
import { nodeAt } from '../motion/trace.ts'
import { type TravelPath, travelPath } from '../motion/travel-path.ts'
import { twoPinLinks } from '../motion/two-pin-link.ts'
import type { Evaluation, ForcePicture, Posture, Question } from './evaluation.ts'
import { postureOf } from './travel-report.ts'

interface Ready {
  readonly path: TravelPath
  readonly bench: ForceBench
}

/** The path of a design is worked out once and kept as long as the design is: a memory, not a state. */
const known = new WeakMap<Design, Ready | 'cannot move'>()

function readyFor(design: Design): Ready | undefined {
  const found = known.get(design) ?? prepareDesign(design)
  known.set(design, found)
  return found === 'cannot move' ? undefined : found
}

function prepareDesign(design: Design): Ready | 'cannot move' {
  const mechanism = mechanismOf(design)
  if (mechanism.columns_count !== mechanism.rows_count + 1) return 'cannot move'
  const { posture } = assemble(mechanism)
  const path = posture && travelPath(makePathBench(mechanism), posture)
  return path ? { path, bench: forceBench(mechanism, posture, path.drive) } : 'cannot move'
}

function nodeOf({ path }: Ready, arc_ratio: number): PathNode {
  const { nodes, beyond, bench } = path
  const closed_mm = nodes[nodes.length - 1].arc_mm
  const all = arc_ratio > 1 ? beyond : nodes
  const last = all[all.length - 1]
  const arc_mm = Math.min(Math.max(0, arc_ratio) * closed_mm, last.arc_mm)
  return nodeAt(bench, all, arc_mm) ?? last
}

/**
 * Any posture of the travel.
 *
 * @param arc_ratio share of the travel's arc: 0 open, 1 closed, above 1 beyond the stop; kept within what was followed
 * @throws when the evaluation has no travel: ask `evaluation.travel` first
 */
export function postureAt(evaluation: Evaluation, arc_ratio: number): Posture {
  const ready = readyFor(evaluation.design)
  if (!ready) throw new Error('postureAt: the finger cannot be moved')
  return postureOf(ready.path, nodeOf(ready, arc_ratio))
}

/**
 * Forces at any posture of the travel for a question; see `Question`.
 *
 * @throws when the evaluation has no travel, or the load case does not exist
 */
export function forcesAt(evaluation: Evaluation, arc_ratio: number, question: Question): ForcePicture {
  const ready = readyFor(evaluation.design)
  if (!ready) throw new Error('forcesAt: the finger cannot be moved')
  const node = nodeOf(ready, arc_ratio)
  const frames = framesAt(ready.bench.room, node)
  const posture = postureOf(ready.path, node)
  if (!frames) return { posture, title: '', pins: [], linkLines: [], loads: [], stops: [], why: 'two ways go on at this posture' }
  return question.kind === 'return' ? returnPicture(ready, frames, posture) : casePicture(ready, frames, posture, question)
}

function returnPicture(ready: Ready, frames: FramePair, posture: Posture): ForcePicture {
  const { bench } = ready
  const title = 'Springs alone, about to open, from the worst rest'
  const reserve = returnReserve(bench, frames.opening)
  const state = reserve?.fromRest
  if (!state)
    return { posture, title, pins: [], linkLines: [], loads: [], stops: [], why: 'no state of rest was found at this posture' }
  const words = state.amplitude > 0 ? 'drag per pin to spare' : 'drag per pin short: it stays'
  // The drawing shows the pins in that state of rest, the drag of the question taken by a light hold at the drive.
  const shown = prepare(frames.opening, {
    port: portRow(bench, frames.opening, { kind: 'drive' }),
    load: standingLoad(bench, frames.opening, 'letting go').out,
  })
  const balance = (shown && balanceIn(shown, (_, levers) => levers.set(state.levers))) ?? state
  return {
    ...pinPicture(ready, posture, balance),
    posture,
    title,
    loads: [],
    stops: [],
    effort: { value: state.amplitude, unit: 'N·mm per pin', words },
  }
}

function casePicture(
  ready: Ready,
  frames: FramePair,
  posture: Posture,
  question: Extract<Question, { loadCase: string }>,
): ForcePicture {
  const { bench, path } = ready
  const { design } = path.mechanism
  const loadCase = design.loadCases.find((candidate) => candidate.id === question.loadCase)
  if (!loadCase) throw new Error(`forcesAt: there is no load case ${question.loadCase}`)
  const holds = question.kind === 'hold'
  const port = holds ? holdingPort(loadCase) : ({ kind: 'drive' } as const)
  const frame = holds ? frames.opening : frames.closing
  const asked = {
    port: portRow(bench, frame, port),
    addLoads: (row: Parameters<typeof addLoadCase>[0]) => addLoadCase(row, loadCase),
  }
  const effort: Effort | undefined = holds ? effortToHold(bench, frame, asked) : effortToClose(bench, frame, asked)
  const title = `${loadCase.name}: ${holds ? 'just held' : 'just closing'}`
  const loads = loadCase.forces.map((force) => {
    const at = placed(posture.poses, force.part, design.parts[force.part].pads[force.pad].at)
    const direction = force.direction_rad + posture.poses[3 * force.frame + 2]
    const force_N = { x: force.force_N * Math.cos(direction), y: force.force_N * Math.sin(direction) }
    return { at, force_N, words: `${design.parts[force.part].id}.${design.parts[force.part].pads[force.pad].id}` }
  })
  if (!effort?.balance)
    return {
      posture,
      title,
      pins: [],
      linkLines: [],
      loads,
      stops: [],
      why: effort?.amplitude === 0 ? 'friction holds it here with no effort at all' : 'no equilibrium was found at this posture',
    }
  const unit = port.kind === 'force' || (port.kind === 'drive' && design.drive.kind !== 'turn') ? 'N' : 'N·mm'
  const words = port.kind === 'drive' ? (holds ? 'effort to hold' : 'effort to close') : 'on the keeper'
  return {
    ...pinPicture(ready, posture, effort.balance),
    posture,
    title,
    loads,
    stops: [],
    effort: { value: effort.balance.amplitude, unit, words },
  }
}

function pinPicture({ path }: Ready, posture: Posture, balance: Balance): Pick<ForcePicture, 'pins' | 'linkLines'> {
  const { mechanism } = path
  const pins = mechanism.joints.flatMap((joint, index) => {
    if (joint.kind !== 'pin') return []
    const force_N = { x: balance.forces[joint.row], y: balance.forces[joint.row + 1] }
    return [
      {
        pin: joint.pin,
        part: joint.b,
        against: joint.a,
        at: posture.pinsAt[joint.pin],
        force_N,
        frictionCircle_mm: Math.abs(balance.levers[index]),
      },
    ]
  })
  const linkLines = twoPinLinks(mechanism).map((link) => {
    const { tension_N } = linkTension(mechanism, link, posture.poses, balance)
    return {
      part: link.part,
      tension_N,
      ...lineOfForce(mechanism.joints[link.ends[0].joint], link.part, balance, link.ends[0].joint, posture),
    }
  })
  return { pins, linkLines }
}

/** The force at a link's first end passes its pin at the friction lever: through that point, along the force. */
function lineOfForce(
  joint: TravelPath['mechanism']['joints'][number],
  link: number,
  balance: Balance,
  index: number,
  posture: Posture,
): { readonly through: Point; readonly direction_rad: number } {
  const sign = joint.b === link ? 1 : -1
  const x = sign * balance.forces[joint.row]
  const y = sign * balance.forces[joint.row + 1]
  const size = Math.hypot(x, y)
  const centre = posture.pinsAt[joint.pin]
  if (size === 0) return { through: centre, direction_rad: 0 }
  // Moment of the force on the link about the pin is the friction torque: −κ|R| on b, +κ|R| on a.
  const lever = -sign * balance.levers[index]
  return {
    through: { x_mm: centre.x_mm - (lever * y) / size, y_mm: centre.y_mm + (lever * x) / size },
    direction_rad: Math.atan2(y, x),
  }
}
