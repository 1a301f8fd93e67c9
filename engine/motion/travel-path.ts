/**
 * The travel of a finger: from its open posture along the path to what ends the closing, and a way beyond.
 *
 *    open ──────────────▶ closed ┄┄┄┄┄▶ beyond (stops taken away: where jam, slip and dead centre are looked for)
 *         drawn ●             stop
 *
 * Closing is the sense in which the drive's coordinate grows at the open end, carried on by continuity: past a fold the
 * drive turns back and the path still closes.
 */

import { dot } from '../numbers/row.ts'
import { type Condition, driveCoordinate } from './condition.ts'
import type { Mechanism } from './mechanism.ts'
import { derivativeOf, type PathBench, type PathNode, reversed, tangentAt } from './path.ts'
import { slotRoom } from './slot-room.ts'
import { stopGap } from './stop-contact.ts'
import { toggleMargin, type WatchedToggle, watchToggle } from './toggle-margin.ts'
import { type Crossing, type Trace, trace, type Watch } from './trace.ts'

export type TravelEnd =
  | { readonly by: 'stop'; readonly stop: number }
  | { readonly by: 'range' }
  | { readonly by: 'slotEnd'; readonly joint: number }
  /** The drive turns back and no stop follows: the fold of dead centre. */
  | { readonly by: 'fold' }
  /** The loops close no further, or leave more than one way. */
  | { readonly by: 'breaks' }

export interface TravelPath {
  readonly mechanism: Mechanism
  readonly bench: PathBench
  readonly drive: Condition
  /** One a toggle; side taken at the drawn posture. */
  readonly toggles: readonly WatchedToggle[]
  /** Open to closed; arc 0 at open. */
  readonly nodes: readonly PathNode[]
  /** From closed on; empty when nothing lies beyond. */
  readonly beyond: readonly PathNode[]
  readonly end: TravelEnd
  /** Stop that the finger rests against when open, if one does before the drive's range begins. */
  readonly openStop?: number
  readonly crossings: readonly Crossing[]
}

/**
 * @param drawn the assembled posture
 * @returns the travel, or undefined when at the drawn posture the parts are not ruled by the drive
 */
export function travelPath(bench: PathBench, drawn: Float64Array): TravelPath | undefined {
  const { mechanism } = bench
  const { drive: driven } = mechanism.design
  const drive = driveCoordinate(mechanism, drawn)
  const tangent = tangentAt(bench, drawn, derivativeOf(mechanism, drawn, drive))
  if (!tangent) return undefined
  const start: PathNode = { posture: drawn, tangent, arc_mm: 0 }
  const toggles = mechanism.design.toggles.map((toggle) => watchToggle(mechanism, toggle, drawn))
  const opened = openNode(bench, start, drive)
  const closing = trace(bench, opened.node, closingWatches(bench, drive, driven.travel))
  const { nodes, end, crossings } = endOfClosing(closing)
  const closed = nodes[nodes.length - 1]
  // Without a toggle there is no dead centre to look for beyond the stop.
  const past = toggles.length > 0 ? trace(bench, closed, beyondWatches(toggles, closed.arc_mm)).nodes : [closed]
  const common = { mechanism, bench, drive, toggles, nodes, end, crossings, beyond: past }
  return opened.stop === undefined ? common : { ...common, openStop: opened.stop }
}

function openNode(bench: PathBench, start: PathNode, drive: Condition): { node: PathNode; stop?: number } {
  const { mechanism } = bench
  const { open } = mechanism.design.drive.travel
  const coordinate = drive.value(start.posture)
  const opening = coordinate > open
  const watches: Watch[] = [
    { id: 'range', value: (node) => drive.value(node.posture) - open, crossing: 'either', ends: true },
    { id: 'fold', value: (node) => driveRate(bench, drive, node), crossing: 'either', ends: true },
  ]
  if (opening) watches.push(...stopWatches(mechanism))
  if (Math.abs(coordinate - open) < 1e-12) return { node: start }
  const way = trace(bench, opening ? reversed(start) : start, watches)
  const last = way.nodes[way.nodes.length - 1]
  const node = { ...(opening ? reversed(last) : last), arc_mm: 0 }
  const stop = typeof way.endedBy === 'string' ? undefined : stopOf(way.endedBy.id)
  return stop === undefined ? { node } : { node, stop }
}

function stopWatches(mechanism: Mechanism): Watch[] {
  return mechanism.design.stops.map((stop, index) => {
    const gap = stopGap(mechanism, stop)
    return { id: `stop ${index}`, value: (node) => gap.value(node.posture), crossing: 'falling', ends: true }
  })
}

function stopOf(id: string): number | undefined {
  return id.startsWith('stop ') ? Number(id.slice(5)) : undefined
}

function slotWatches(mechanism: Mechanism): Watch[] {
  return mechanism.joints.flatMap((joint, index) =>
    joint.kind === 'slot'
      ? [{ id: `slot ${index}`, value: (node) => slotRoom(node.posture, joint), crossing: 'falling', ends: true } satisfies Watch]
      : [],
  )
}

/** Rate of the drive's coordinate along the path; it changes sign at a fold. */
export function driveRate({ mechanism, stock }: PathBench, drive: Condition, { posture, tangent }: PathNode): number {
  const row = { mechanism, posture, out: stock(mechanism.columns_count), start: 0 }
  drive.addDerivative(row)
  return dot(row.out, tangent)
}

function closingWatches(bench: PathBench, drive: Condition, travel: { open: number; closed: number }): Watch[] {
  return [
    ...stopWatches(bench.mechanism),
    ...slotWatches(bench.mechanism),
    { id: 'range', value: (node) => drive.value(node.posture) - travel.closed, crossing: 'rising', ends: true },
    { id: 'fold', value: (node) => driveRate(bench, drive, node), crossing: 'falling', ends: false },
    { id: 'back at open', value: (node) => drive.value(node.posture) - travel.open, crossing: 'falling', ends: true },
  ]
}

/** Past a fold only a stop counts as an end; without one the finger closes as far as the fold. */
function endOfClosing(closing: Trace): Pick<TravelPath, 'nodes' | 'end' | 'crossings'> {
  const { nodes, crossings, endedBy } = closing
  if (typeof endedBy !== 'string') {
    const stop = stopOf(endedBy.id)
    if (stop !== undefined) return { nodes, crossings, end: { by: 'stop', stop } }
    if (endedBy.id === 'range') return { nodes, crossings, end: { by: 'range' } }
    if (endedBy.id.startsWith('slot ')) return { nodes, crossings, end: { by: 'slotEnd', joint: Number(endedBy.id.slice(5)) } }
  }
  const fold = crossings.find((crossing) => crossing.watch.id === 'fold')
  if (!fold) return { nodes, crossings, end: { by: 'breaks' } }
  const upToFold = nodes.filter((node) => node.arc_mm < fold.node.arc_mm)
  return {
    nodes: [...upToFold, fold.node],
    crossings: crossings.filter((crossing) => crossing.node.arc_mm <= fold.node.arc_mm),
    end: { by: 'fold' },
  }
}

/** How far past dead centre the path is followed, rad: enough for any friction circle that a toggle could have. */
const PAST_DEAD_CENTRE_RAD = 0.35

function beyondWatches(toggles: readonly WatchedToggle[], closedArc_mm: number): Watch[] {
  const past = toggles.map(
    (toggle, index): Watch => ({
      id: `past toggle ${index}`,
      value: (node) => toggleMargin(toggle, node.posture) + PAST_DEAD_CENTRE_RAD,
      crossing: 'falling',
      ends: true,
    }),
  )
  const far: Watch = { id: 'far', value: (node) => 2 * closedArc_mm - node.arc_mm, crossing: 'falling', ends: true }
  return [...past, far]
}
