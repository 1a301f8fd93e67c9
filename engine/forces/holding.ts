/**
 * Who carries a load: shares of virtual work in the opening motion, summing to 1.
 *
 * Written for a small opening motion v, each of load, springs and weight has a power. Those that push open have to be
 * carried; those that push closed carry, together with friction, the stop, and the wearer or the keeper.
 *
 *   net > 0, friction enough   →  friction carries the net (of it the toggle's three pins: `toggle`), nobody else
 *   net > 0, friction short    →  friction gives its most at the least coefficient, the port (wearer or keeper) the rest
 *   net ≤ 0                    →  what pushes closed is carried by what pushes open and, the rest, by the stop
 *
 * Whether friction is enough is asked with an equal drag at every pin and not with the effort: at the jam the effort is a
 * pole, the drag passes smoothly through zero.
 */
import type { Port } from '../design/design.ts'
import type { ForceRow } from '../motion/closure.ts'
import type { Condition } from '../motion/condition.ts'
import { type Balance, balanceIn, type Prepared, prepare, withoutFriction } from './balance.ts'
import { portRow } from './effort.ts'
import { addWorstWeight, type ForceBench, standingLoad } from './force-bench.ts'
import { emptyRow, type ForceFrame, powerIn, slowJoints, turnIn } from './force-frame.ts'
import { justBalanced } from './just-balanced.ts'
import { addSprings } from './loads.ts'
import { worstRest } from './rest-state.ts'
import { dragPort } from './return-reserve.ts'

export type Carrier = 'stop' | 'toggle' | 'friction' | 'spring' | 'weight' | 'wearer' | 'keeper'

export interface Holding {
  /** No effort at any port is needed: the stop or friction at its least carries the load. */
  readonly byItself: boolean
  /**
   * Equal drag that could be taken from every pin before it no longer holds by itself, N·mm a pin; below nothing what it lacks. What rests
   * on the stop counts without friction. Absent where it pushes closed and no stop is there.
   */
  readonly reserve_Nmm?: number
  /** Every carrier's share; they sum to 1. All zero when nothing pushes at all. */
  readonly shares: Readonly<Record<Carrier, number>>
  readonly carriedBy: Carrier
  /** Forces in that state. */
  readonly balance: Balance
}

export interface HoldingAsked {
  readonly addLoads: (row: ForceRow) => void
  readonly port: Port
  /** Contact that carries what pushes closed: the stop's gap, whose derivative is the unit contact force. */
  readonly stop?: Condition
}

/** @param frame with the motion opening. @returns undefined where no state was found */
export function holding(bench: ForceBench, frame: ForceFrame, asked: HoldingAsked): Holding | undefined {
  const powers = openingPowers(bench, frame, asked.addLoads)
  const net = powers.load + powers.spring + powers.weight
  const shares = noShares()
  shareSigned(shares, powers, net > 0 ? -1 : 1)
  const acting = actingLoad(bench, frame, asked.addLoads)
  if (net <= 0) return heldFromClosing(bench, frame, { acting, shares, rest: -net, stop: asked.stop })
  const dragged = prepare(frame, { port: dragPort(frame), load: acting })
  if (!dragged) return undefined
  if (dragged.freeAmplitude <= 0) return heldByDrag(dragged, shares, net)
  const levers = bench.leversOf('moving', 'least')
  const reserve = worstRest({ prepared: dragged, levers, either: slowJoints(frame), towards: 1 })
  if (!reserve) return undefined
  if (reserve.amplitude <= 0) {
    const balance = justBalanced(dragged, reserve)
    if (!balance) return undefined
    addFriction(shares, frame, balance, net)
    return finished({ shares, balance, reserve_Nmm: -reserve.amplitude }, true)
  }
  return heldByPort(bench, frame, { acting, shares, rest: net, port: asked.port, reserve_Nmm: -reserve.amplitude })
}

/** The declared drag of the pins alone is more than the load can overcome. */
function heldByDrag(dragged: Prepared, shares: Record<Carrier, number>, net: number): Holding | undefined {
  const balance = balanceIn(dragged, withoutFriction)
  if (!balance) return undefined
  shares.friction += net
  return finished({ shares, balance, reserve_Nmm: -dragged.freeAmplitude }, true)
}

/** Springs, weight in the attitude that opens most, drag, and the load case. */
function actingLoad(bench: ForceBench, frame: ForceFrame, addLoads: (row: ForceRow) => void): Float64Array {
  const row = standingLoad(bench, frame, 'held')
  addLoads(row)
  return row.out
}

interface Held {
  readonly acting: Float64Array
  readonly shares: Record<Carrier, number>
  /** Power that the carrier has to take. */
  readonly rest: number
}

/** What pushes closed rests on the stop (friction, which could help, is left out), or on the wearer where there is none. */
function heldFromClosing(
  bench: ForceBench,
  frame: ForceFrame,
  held: Held & { readonly stop: Condition | undefined },
): Holding | undefined {
  const row = emptyRow(frame)
  if (held.stop) held.stop.addDerivative(row)
  else bench.drive.addDerivative(row)
  const prepared = prepare(frame, { port: row.out, load: held.acting })
  const balance = prepared && balanceIn(prepared, withoutFriction)
  if (!balance) return undefined
  held.shares[held.stop ? 'stop' : 'wearer'] += held.rest
  const reserve_Nmm = held.stop && powerIn(frame, held.acting) / powerIn(frame, dragPort(frame))
  const found = finished(
    { shares: held.shares, balance, ...(reserve_Nmm !== undefined && { reserve_Nmm }) },
    held.stop !== undefined,
  )
  // Springs and weight that push open carry their part, but what the finger rests on is the stop.
  return held.stop && held.rest > 0 ? { ...found, carriedBy: 'stop' } : found
}

interface PortHeld extends Held {
  readonly port: Port
  readonly reserve_Nmm: number
}

function heldByPort(bench: ForceBench, frame: ForceFrame, held: PortHeld): Holding | undefined {
  const keeper = portRow(bench, frame, held.port)
  // A keeper that does not push closed here keeps nothing: then the wearer has to hold.
  const port = powerIn(frame, keeper) < 0 ? held.port : ({ kind: 'drive' } as const)
  const pattern = port === held.port ? keeper : portRow(bench, frame, port)
  const prepared = prepare(frame, { port: pattern, load: held.acting })
  if (!prepared) return undefined
  const levers = bench.leversOf('moving', 'least')
  const balance = worstRest({ prepared, levers, either: slowJoints(frame), towards: 1 })
  if (!balance) return undefined
  const dissipated = Math.min(held.rest, Math.max(0, dissipation(frame, balance)))
  addFriction(held.shares, frame, balance, dissipated)
  held.shares[port.kind === 'drive' ? 'wearer' : 'keeper'] += held.rest - dissipated
  return finished({ shares: held.shares, balance, reserve_Nmm: held.reserve_Nmm }, false)
}

interface Powers {
  readonly load: number
  readonly spring: number
  readonly weight: number
}

function openingPowers(bench: ForceBench, frame: ForceFrame, addLoads: (row: ForceRow) => void): Powers {
  const load = emptyRow(frame)
  addLoads(load)
  const spring = emptyRow(frame)
  addSprings(spring, bench.drawn)
  const weight = emptyRow(frame)
  addWorstWeight(bench, frame, weight, 'helps')
  return { load: powerIn(frame, load.out), spring: powerIn(frame, spring.out), weight: powerIn(frame, weight.out) }
}

function noShares(): Record<Carrier, number> {
  return { stop: 0, toggle: 0, friction: 0, spring: 0, weight: 0, wearer: 0, keeper: 0 }
}

/** Springs and weight that push against the rest carry their part. */
function shareSigned(shares: Record<Carrier, number>, powers: Powers, carrying: 1 | -1): void {
  if (powers.spring * carrying > 0) shares.spring += Math.abs(powers.spring)
  if (powers.weight * carrying > 0) shares.weight += Math.abs(powers.weight)
}

/** Work that friction and declared drag take in the motion, per unit of arc. */
export function dissipation(frame: ForceFrame, balance: Balance): number {
  return frame.mechanism.joints.reduce((sum, _, joint) => sum + workAt(frame, balance, joint), 0)
}

function workAt(frame: ForceFrame, { levers, magnitudes, rates }: Balance, joint: number): number {
  const drag_Nmm = frame.mechanism.design.pins[frame.mechanism.joints[joint].pin].drag_Nmm
  return levers[joint] * magnitudes[joint] * rates[joint] + drag_Nmm * Math.abs(turnIn(frame, joint))
}

/** Splits an amount of friction work over the toggles' pins and the others, in proportion to what each takes. */
function addFriction(shares: Record<Carrier, number>, frame: ForceFrame, state: Balance, amount: number): void {
  const { joints, design } = frame.mechanism
  const togglePins = new Set(design.toggles.flatMap((toggle) => [toggle.a, toggle.b, toggle.c]))
  const works = joints.map((_, joint) => Math.max(0, workAt(frame, state, joint)))
  const all = works.reduce((sum, work) => sum + work, 0)
  if (all === 0) return
  joints.forEach((joint, index) => {
    shares[togglePins.has(joint.pin) ? 'toggle' : 'friction'] += (amount * works[index]) / all
  })
}

/** Shares of the whole that is carried. */
function finished({ shares: parts, ...found }: Omit<Holding, 'byItself' | 'carriedBy'>, byItself: boolean): Holding {
  const names = Object.keys(parts) as Carrier[]
  const total = names.reduce((sum, name) => sum + parts[name], 0)
  const shares = noShares()
  if (total > 0) for (const name of names) shares[name] = parts[name] / total
  const carriedBy = names.reduce((most, name) => (shares[name] > shares[most] ? name : most))
  return { ...found, byItself, shares, carriedBy }
}
