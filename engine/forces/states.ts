/**
 * The closed finger as it really stands: in three states of play and stretch.
 *
 *   under load   clearances taken up by the forces that hold the load, links stretched by them: hold is judged here
 *   at let-go    the springs alone, about to open, worst rest: the jam is judged here
 *   play         how far the margins can be pushed about by hand within the clearances, whatever the forces
 */
import type { LoadCase, PartPoint, Port } from '../design/design.ts'
import type { ForceRow } from '../motion/closure.ts'
import { addCouple, addForce } from '../motion/closure.ts'
import type { Condition } from '../motion/condition.ts'
import { placed } from '../motion/mechanism.ts'
import { type PathNode, tangentAt } from '../motion/path.ts'
import { stopGap } from '../motion/stop-contact.ts'
import { toggleCouples, toggleMargin } from '../motion/toggle-margin.ts'
import type { TravelPath } from '../motion/travel-path.ts'
import { balanceIn, prepare, withoutFriction } from './balance.ts'
import type { ForceBench } from './force-bench.ts'
import { emptyRow, type FramePair, framesAt } from './force-frame.ts'
import { type Holding, holding } from './holding.ts'
import { addLoadCase } from './loads.ts'
import { type Reserve, returnReserve } from './return-reserve.ts'
import { type Forced, type TakenUp, takeUp } from './take-up.ts'

/** What keeps the closed finger where it is: its stop's contact, or the drive where nothing else does. */
export function closedHold(path: TravelPath): Condition {
  const { mechanism, end, nodes, drive } = path
  if (end.by === 'stop') return stopGap(mechanism, mechanism.design.stops[end.stop])
  const closed = drive.value(nodes[nodes.length - 1].posture)
  return { value: (posture) => drive.value(posture) - closed, addDerivative: drive.addDerivative }
}

export interface ClosedFinger {
  readonly path: TravelPath
  readonly bench: ForceBench
  readonly node: PathNode
  readonly held: Condition
  readonly stop?: Condition
}

/** The closed end of a travel with what holds it there. */
export function closedFinger(path: TravelPath, bench: ForceBench): ClosedFinger {
  const held = closedHold(path)
  const node = path.nodes[path.nodes.length - 1]
  return { path, bench, node, held, ...(path.end.by === 'stop' && { stop: held }) }
}

/** Frames at a posture near the closed node. */
export function framesNear({ bench, node, path }: ClosedFinger, posture: Float64Array): FramePair | undefined {
  const tangent = tangentAt(path.bench, posture, node.tangent)
  return tangent && framesAt(bench.room, { posture, tangent })
}

export interface StateOptions {
  readonly clearance: boolean
  readonly stiffnessOf: (part: number) => number | undefined
}

/** Stiffnesses as the design states them. */
export function statedStiffness(path: TravelPath): StateOptions['stiffnessOf'] {
  return (part) => path.mechanism.design.parts[part].stiffness_N_mm
}

function settleState<State extends Forced>(
  closed: ClosedFinger,
  options: StateOptions,
  forcesAt: (frames: FramePair) => State | undefined,
): TakenUp<State> | undefined {
  const { path, held, node } = closed
  const asked = {
    bench: path.bench,
    held,
    forcesAt: (posture: Float64Array) => {
      const frames = framesNear(closed, posture)
      return frames && forcesAt(frames)
    },
    marginsAt: (posture: Float64Array) => path.toggles.map((toggle) => toggleMargin(toggle, posture)),
    ...options,
  }
  return takeUp(asked, node.posture)
}

/** The finger under a load case, just held. */
export type Loaded = TakenUp<Holding>

/** Port that holds a load case: its keeper, or the drive in the wearer's hand. */
export function holdingPort(loadCase: LoadCase): Port {
  return loadCase.keeper?.port ?? { kind: 'drive' }
}

/** @returns undefined when posture and forces do not settle, or no equilibrium was found on the way */
export function underLoad(closed: ClosedFinger, loadCase: LoadCase, options: StateOptions): Loaded | undefined {
  const { bench, stop } = closed
  const asked = {
    addLoads: (row: ForceRow) => addLoadCase(row, loadCase),
    port: holdingPort(loadCase),
    ...(stop && { stop }),
  }
  return settleState(closed, options, (frames) => holding(bench, frames.opening, asked))
}

/** The finger at let-go: springs alone, worst rest. */
export interface LetGo {
  readonly posture: Float64Array
  readonly rounds: number
  readonly reserve: Reserve
}

/** @returns undefined when it does not settle or no state of rest was found on the way */
export function atLetGo(closed: ClosedFinger, options: StateOptions): LetGo | undefined {
  const { bench } = closed
  const settled = settleState(closed, options, (frames) => {
    const reserve = returnReserve(bench, frames.opening)
    return reserve?.fromRest && { balance: reserve.fromRest, reserve }
  })
  return settled && { posture: settled.posture, rounds: settled.rounds, reserve: settled.state.reserve }
}

export interface PlayBand {
  readonly least_rad: number
  readonly most_rad: number
}

/**
 * Least and largest margin of a toggle within the clearances: each clearance lies where a couple on the margin pushes it, which is the
 * extreme over all offsets in their circles (a small couple does the most work there).
 */
export function playBand(closed: ClosedFinger, toggle: number): PlayBand | undefined {
  const extremes = [-1, 1].map((sense) => {
    const posture = pushedAbout(closed, (load) => {
      for (const { part, couple } of toggleCouples(closed.path.toggles[toggle])) addCouple(load, { part, couple: sense * couple })
    })
    return posture && toggleMargin(closed.path.toggles[toggle], posture)
  })
  const [least, most] = extremes
  return least === undefined || most === undefined ? undefined : { least_rad: least, most_rad: most }
}

/** The closed finger with its clearances where a push leaves them, without friction. */
function pushedAbout(closed: ClosedFinger, addPush: (row: ForceRow) => void): Float64Array | undefined {
  return settleState(closed, { clearance: true, stiffnessOf: () => undefined }, (frames) => {
    const load = emptyRow(frames.opening)
    addPush(load)
    const port = emptyRow(frames.opening)
    closed.held.addDerivative(port)
    const prepared = prepare(frames.opening, { port: port.out, load: load.out })
    const balance = prepared && balanceIn(prepared, withoutFriction)
    return balance && { balance }
  })?.posture
}

/**
 * How far the tip of the closed finger can be moved to and fro by hand within the clearances, mm: across its part, along its y axis.
 *
 * @returns undefined where a push does not settle
 */
export function tipPlay(closed: ClosedFinger, { part, at }: PartPoint): number | undefined {
  const turn = closed.node.posture[3 * part + 2]
  const across = { x: -Math.sin(turn), y: Math.cos(turn) }
  const ends = [-1, 1].map((sense) => {
    const posture = pushedAbout(closed, (load) => {
      const force = { x: sense * across.x, y: sense * across.y }
      addForce(load, { part, at: placed(load.posture, part, at), force })
    })
    const tip = posture && placed(posture, part, at)
    return tip && tip.x_mm * across.x + tip.y_mm * across.y
  })
  const [least, most] = ends
  return least === undefined || most === undefined ? undefined : most - least
}
