/** The forces at one posture as they are drawn: at the pins, along the links, at the stop, and the loads. */
import type { LoadCase, Point, Port } from '../design/design.ts'
import type { Balance } from '../forces/balance.ts'
import { effortToClose, portRow } from '../forces/effort.ts'
import type { ForceBench } from '../forces/force-bench.ts'
import { type FramePair, framesAt, turnIn } from '../forces/force-frame.ts'
import { type Holding, holding } from '../forces/holding.ts'
import { justBalanced } from '../forces/just-balanced.ts'
import { addLoadCase } from '../forces/loads.ts'
import { restReserve, returnQuestion } from '../forces/return-reserve.ts'
import { type ClosedFinger, holdingPort, statedStiffness, underLoad } from '../forces/states.ts'
import { linkTension } from '../forces/take-up.ts'
import { placed } from '../motion/mechanism.ts'
import type { PathNode } from '../motion/path.ts'
import { stopContact } from '../motion/stop-contact.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { type TwoPinLink, twoPinLinks } from '../motion/two-pin-link.ts'
import { limits } from '../numbers/limits.ts'
import type { FigureUnit, ForcePicture, Posture, Question } from './evaluation.ts'
import { postureOf } from './travel-report.ts'

/** A design whose path has been followed. */
export interface Ready {
  readonly path: TravelPath
  readonly bench: ForceBench
  readonly closed: ClosedFinger
}

/** Where one picture is taken. */
interface Scene extends Ready {
  readonly frames: FramePair
  readonly posture: Posture
}

/**
 * Forces at a node for a question, N and N·mm, points in the mount frame.
 *
 * @returns with `why` and no pins where no state was found. @throws when the load case does not exist
 */
export function drawForces(ready: Ready, node: PathNode, question: Question): ForcePicture {
  const posture = postureOf(ready.path, node)
  const frames = framesAt(ready.bench.room, node)
  if (!frames) return withoutForces(posture, '', 'two ways go on at this posture')
  const scene = { ...ready, frames, posture }
  if (question.kind === 'return') return returnPicture(scene)
  const loadCase = ready.path.mechanism.design.loadCases.find((candidate) => candidate.id === question.loadCase)
  if (!loadCase) throw new Error(`forcesAt: there is no load case ${question.loadCase}`)
  const picture = question.kind === 'hold' ? heldPicture(scene, loadCase) : closingPicture(scene, loadCase)
  return loadCase.sideways.length === 0 ? picture : { ...picture, sideways: sidePushes(scene, loadCase) }
}

function withoutForces(posture: Posture, title: string, why: string): ForcePicture {
  return { posture, title, pins: [], linkLines: [], loads: [], stops: [], why }
}

/**
 * Where it lets go: in its worst state of rest, against the drag at every pin that the springs can just overcome. Where it stays: with just
 * the friction that holds it.
 */
function returnPicture(scene: Scene): ForcePicture {
  const { bench, frames, posture } = scene
  const title = 'Springs alone, about to open against an equal drag at every pin, from the worst rest'
  const question = returnQuestion(bench, frames.opening)
  const state = question && restReserve(bench, question)
  if (!state) return withoutForces(posture, title, 'no state of rest was found at this posture')
  const radii_mm = bench.leversOf('rest', 'most')
  const stays = state.amplitude <= 0
  const effort = {
    value: state.amplitude,
    unit: 'N·mm per pin',
    words: stays ? 'drag per pin short: it stays' : 'drag per pin to spare',
  } as const
  const held = stays && question.prepared.freeAmplitude > 0 ? justBalanced(question.prepared, state) : undefined
  const drag_Nmm = (joint: number): number => (held ? 0 : Math.sign(turnIn(frames.opening, joint)) * state.amplitude)
  return { ...pinPicture(scene, held ?? state, { radii_mm, drag_Nmm }), posture, title, loads: [], stops: [], effort }
}

function closingPicture(scene: Scene, loadCase: LoadCase): ForcePicture {
  const { bench, frames, posture } = scene
  const title = `${loadCase.name}: just closing`
  const port = { kind: 'drive' } as const
  const addLoads = (row: Parameters<typeof addLoadCase>[0]): void => addLoadCase(row, loadCase)
  const effort = effortToClose(bench, frames.closing, { port: portRow(bench, frames.closing, port), addLoads })
  const loads = drawnLoads(scene, loadCase)
  if (!effort?.balance) return { ...withoutForces(posture, title, 'no equilibrium was found at this posture'), loads }
  const shown = { value: effort.balance.amplitude, unit: unitOf(scene, port), words: 'effort to close' }
  return {
    ...pinPicture(scene, effort.balance, { radii_mm: bench.leversOf('moving', 'most') }),
    posture,
    title,
    loads,
    stops: [],
    effort: shown,
  }
}

/**
 * Held by whoever carries it: the stop where the finger stands at it, friction, the keeper or the wearer. At the closed end the forces
 * are those of the figures, with play and stretch taken up; they are drawn on the posture without either.
 */
function heldPicture(scene: Scene, loadCase: LoadCase): ForcePicture {
  const { bench, frames, posture, closed } = scene
  const title = `${loadCase.name}: just held`
  const port = holdingPort(loadCase)
  const addLoads = (row: Parameters<typeof addLoadCase>[0]): void => addLoadCase(row, loadCase)
  const isClosed = Math.abs(posture.arc_ratio - 1) < limits.atClosed_ratio
  const options = { clearance: true, stiffnessOf: statedStiffness(closed.path) }
  const held = isClosed ? underLoad(closed, loadCase, options)?.state : holding(bench, frames.opening, { addLoads, port })
  const loads = drawnLoads(scene, loadCase)
  if (!held) return { ...withoutForces(posture, title, 'no equilibrium was found at this posture'), loads }
  const stops = held.carriedBy === 'stop' ? drawnStop(scene, held.balance.amplitude) : []
  return {
    ...pinPicture(scene, held.balance, { radii_mm: bench.leversOf('moving', 'least') }),
    posture,
    title,
    loads,
    stops,
    effort: heldEffort(scene, held, port),
  }
}

function heldEffort(scene: Scene, { carriedBy, byItself, balance }: Holding, port: Port): NonNullable<ForcePicture['effort']> {
  if (carriedBy === 'stop') return { value: balance.amplitude, unit: 'N', words: 'on the stop' }
  if (byItself) return { value: 0, unit: unitOf(scene, port), words: 'needed: friction holds it' }
  const words = port.kind === 'drive' ? 'effort to hold' : 'on the keeper'
  return { value: balance.amplitude, unit: unitOf(scene, port), words }
}

function unitOf({ path }: Scene, port: Port): FigureUnit {
  const couple = port.kind === 'couple' || (port.kind === 'drive' && path.mechanism.design.drive.kind === 'turn')
  return couple ? 'N·mm' : 'N'
}

function drawnStop({ path, posture }: Scene, force: number): ForcePicture['stops'] {
  const { end, mechanism } = path
  if (end.by !== 'stop') return []
  const { at, normal } = stopContact(mechanism, mechanism.design.stops[end.stop], posture.poses)
  return [{ stop: end.stop, at, force_N: { x: force * normal.x, y: force * normal.y } }]
}

function drawnLoads({ path, posture }: Scene, loadCase: LoadCase): ForcePicture['loads'] {
  const { parts } = path.mechanism.design
  return loadCase.forces.map((force) => {
    const part = parts[force.part]
    const pad = part.pads[force.pad]
    const direction = force.direction_rad + posture.poses[3 * force.frame + 2]
    return {
      at: placed(posture.poses, force.part, pad.at),
      force_N: { x: force.force_N * Math.cos(direction), y: force.force_N * Math.sin(direction) },
      words: `${part.id}.${pad.id}`,
    }
  })
}

function sidePushes({ path, posture }: Scene, { sideways }: LoadCase): NonNullable<ForcePicture['sideways']> {
  const { parts } = path.mechanism.design
  return sideways.map(({ part, pad, force_N }) => ({ at: placed(posture.poses, part, parts[part].pads[pad].at), force_N }))
}

interface PinSizes {
  /** Radius of each joint's friction circle in the state that is shown: the force passes on it or inside. */
  readonly radii_mm: Float64Array
  /** Of each joint against its turn, besides friction; it moves the line of a link's force further off the pin. */
  readonly drag_Nmm?: (joint: number) => number
}

function pinPicture(
  { path, posture }: Scene,
  balance: Balance,
  { radii_mm, drag_Nmm = () => 0 }: PinSizes,
): Pick<ForcePicture, 'pins' | 'linkLines'> {
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
        frictionCircle_mm: radii_mm[index],
      },
    ]
  })
  const links = twoPinLinks(mechanism).filter((link) => mechanism.design.parts[link.part].role === 'link')
  const linkLines = links.map((link) => {
    const { tension_N } = linkTension(mechanism, link, posture.poses, balance)
    return {
      part: link.part,
      tension_N,
      ...lineOfForce(path, link, posture, { balance, drag_Nmm: drag_Nmm(link.ends[0].joint) }),
    }
  })
  return { pins, linkLines }
}

/** The force at a link's first end passes its pin at the friction lever: through that point, along the force. */
function lineOfForce(
  { mechanism }: TravelPath,
  link: TwoPinLink,
  posture: Posture,
  { balance, drag_Nmm }: { readonly balance: Balance; readonly drag_Nmm: number },
): { readonly through: Point; readonly direction_rad: number } {
  const index = link.ends[0].joint
  const joint = mechanism.joints[index]
  const sign = joint.b === link.part ? 1 : -1
  const x = sign * balance.forces[joint.row]
  const y = sign * balance.forces[joint.row + 1]
  const size = Math.hypot(x, y)
  const centre = posture.pinsAt[joint.pin]
  if (size === 0) return { through: centre, direction_rad: 0 }
  // The force f on the link stands off its pin by ℓ along f turned on by 90°, a moment of −ℓ|f|; what resists the turn of b is −(κ|R| + drag).
  const lever = sign * (balance.levers[index] + drag_Nmm / size)
  return {
    through: { x_mm: centre.x_mm - (lever * y) / size, y_mm: centre.y_mm + (lever * x) / size },
    direction_rad: Math.atan2(y, x),
  }
}
