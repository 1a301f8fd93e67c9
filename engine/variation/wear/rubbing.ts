/**
 * What rubs at every pin and at the stop in one closing with its way back: force times way, N·mm.
 *
 *     pin    Σ |R| r |Δθ|      over the postures, closing against the load and opening while it is held; by the side pressed on
 *     stop   N s               the load comes on from nothing and goes again while the round slides by s: ½ N s each way
 *
 * A load that acts only when closed lets the finger travel under its springs alone, and then rubs while play and stretch are taken up:
 * the pins turn by what lies between the finger at let-go and the finger under that load. Derived in docs/theory/wear.md.
 */
import type { LoadCase } from '../../design/design.ts'
import type { Ready } from '../../figures/ready-finger.ts'
import type { Balance } from '../../forces/balance.ts'
import { effortToClose, effortToHold, portRow } from '../../forces/effort.ts'
import { framesAt } from '../../forces/force-frame.ts'
import { addLoadCase } from '../../forces/loads.ts'
import { atLetGo, statedStiffness, underLoad } from '../../forces/states.ts'
import { pressedSide } from '../../forces/take-up.ts'
import type { ForceRow } from '../../motion/closure.ts'
import { slotAngle } from '../../motion/closure.ts'
import { evenNodes } from '../../motion/even-nodes.ts'
import { type Joint, type Mechanism, placed } from '../../motion/mechanism.ts'
import type { PathNode } from '../../motion/path.ts'
import { BORE_SECTORS, boreSector } from '../../strength/worn-bore.ts'
import { rubbedAtStop } from './rubbing-at-stop.ts'

/** Postures of one way: the sum is held against the work that friction costs on the way in the tests. */
const POSTURES = 25

/** N·mm a closing. */
export interface Rubbing {
  /** By joint, one a sector of the hole that is pressed. */
  readonly bores: readonly Float64Array[]
  /** By joint: from end to end of what the pin's centre runs over in its slot, mm; 0 in a round hole. */
  readonly runs_mm: readonly number[]
  /** By stop. */
  readonly stops: readonly number[]
}

/** What rubs, or why it is not known. */
export type Rubbed = { readonly rubbing: Rubbing; readonly why?: never } | { readonly rubbing?: never; readonly why: string }

/** Everything that rubs in all joints together, N·mm a closing. */
export function wholeRubbing({ bores, stops }: Rubbing): number {
  const sum = (values: Iterable<number>): number => [...values].reduce((total, value) => total + value, 0)
  return sum(bores.map((bore) => sum(bore))) + sum(stops)
}

/** @param loadCase undefined for a closing without load */
export function rubbingUnder(ready: Ready, loadCase: LoadCase | undefined): Rubbed {
  const { mechanism } = ready.path
  const nodes = evenNodes(ready.path, POSTURES)
  const travelling = loadCase?.acts === 'travel' ? loadCase : undefined
  const closing = filled(nodes.map((node) => balanceAt(ready, node, { doing: 'closing', loadCase: travelling })))
  if (!closing) return { why: `no equilibrium was found on the way to closed${underWords(travelling)}` }
  const opening = nodes.map((node, index) => balanceAt(ready, node, { doing: 'opening', loadCase: travelling }) ?? closing[index])
  const bores = mechanism.joints.map(() => new Float64Array(BORE_SECTORS))
  for (const states of [closing, opening]) addTravel(bores, mechanism, { nodes, states })
  const rest = atLetGo(ready.closed, { clearance: true, stiffnessOf: statedStiffness(ready.path) })?.posture
  const loaded = loadCase && underLoad(ready.closed, loadCase, { clearance: true, stiffnessOf: statedStiffness(ready.path) })
  if (loadCase && !loaded) return { why: `posture and forces do not settle${underWords(loadCase)}` }
  if (loadCase?.acts === 'closed' && loaded && rest) {
    addTurns(bores, mechanism, { from: rest, to: loaded.posture, at: loaded.posture, state: loaded.state.balance, ways: 1 })
  }
  const runs_mm = mechanism.joints.map((joint) => runOver(joint, nodes))
  return { rubbing: { bores, runs_mm, stops: rubbedAtStop(ready, { loadCase, loaded, rest }) } }
}

const underWords = (loadCase: LoadCase | undefined): string => (loadCase ? ` under ${loadCase.id}` : '')

interface Asked {
  readonly doing: 'closing' | 'opening'
  readonly loadCase: LoadCase | undefined
}

function balanceAt({ bench }: Ready, node: PathNode, { doing, loadCase }: Asked): Balance | undefined {
  const frames = framesAt(bench.room, node)
  if (!frames) return undefined
  const addLoads = (row: ForceRow): void => {
    if (loadCase) addLoadCase(row, loadCase)
  }
  const frame = doing === 'closing' ? frames.closing : frames.opening
  const asked = { port: portRow(bench, frame, { kind: 'drive' }), addLoads }
  return (doing === 'closing' ? effortToClose : effortToHold)(bench, frame, asked)?.balance
}

/** Where no equilibrium was found (the drive does no work at dead centre) the nearest posture before or after stands in. */
function filled(states: readonly (Balance | undefined)[]): readonly Balance[] | undefined {
  const known = states.flatMap((state, index) => (state ? [{ state, index }] : []))
  if (known.length === 0) return undefined
  return states.map(
    (_, index) => known.reduce((best, one) => (Math.abs(one.index - index) < Math.abs(best.index - index) ? one : best)).state,
  )
}

/** Each posture counts for half of the way to either neighbour. */
function addTravel(
  bores: readonly Float64Array[],
  mechanism: Mechanism,
  { nodes, states }: { readonly nodes: readonly PathNode[]; readonly states: readonly Balance[] },
): void {
  for (let index = 1; index < nodes.length; index++) {
    const [from, to] = [nodes[index - 1].posture, nodes[index].posture]
    addTurns(bores, mechanism, { from, to, at: from, state: states[index - 1], ways: 1 / 2 })
    addTurns(bores, mechanism, { from, to, at: to, state: states[index], ways: 1 / 2 })
  }
}

interface Turned {
  readonly from: Float64Array
  readonly to: Float64Array
  /** Posture of the state. */
  readonly at: Float64Array
  readonly state: Balance
  /** How often this way is gone with the whole force. */
  readonly ways: number
}

function addTurns(bores: readonly Float64Array[], mechanism: Mechanism, { from, to, at, state, ways }: Turned): void {
  mechanism.joints.forEach((joint, index) => {
    if (!(state.magnitudes[index] > 0)) return
    const turned = Math.abs(relativeTurn(to, joint) - relativeTurn(from, joint))
    const run = joint.kind === 'slot' ? Math.abs(runAt(joint, to) - runAt(joint, from)) : 0
    const way_mm = joint.radius_mm * turned + run
    bores[index][sectorPressed(joint, state, { index, posture: at })] += ways * state.magnitudes[index] * way_mm
  })
}

const relativeTurn = (posture: Float64Array, { a, b }: Joint): number => posture[3 * b + 2] - posture[3 * a + 2]

/** Of the hole's part: where the pin presses. In a slot the force stands on a along its normal, so the wall of b is on the other side. */
function sectorPressed(joint: Joint, state: Balance, at: { readonly index: number; readonly posture: Float64Array }): number {
  if (joint.kind === 'slot') return boreSector(joint.along_rad + (state.forces[joint.row] > 0 ? -1 : 1) * (Math.PI / 2))
  const { x, y } = pressedSide(joint, state, at.index)
  return boreSector(Math.atan2(y, x) - at.posture[3 * joint.b + 2])
}

/** Place of the pin's centre along its slot, mm from the middle. */
function runAt(joint: Joint, posture: Float64Array): number {
  const along = slotAngle(posture, joint)
  const pin = placed(posture, joint.a, joint.atA)
  const middle = placed(posture, joint.b, joint.atB)
  return (pin.x_mm - middle.x_mm) * Math.cos(along) + (pin.y_mm - middle.y_mm) * Math.sin(along)
}

function runOver(joint: Joint, nodes: readonly PathNode[]): number {
  if (joint.kind !== 'slot') return 0
  const runs = nodes.map(({ posture }) => runAt(joint, posture))
  return Math.max(...runs) - Math.min(...runs)
}
