/**
 * Effort that opens the finger at a port: under a load (`letGoUnderLoadEffort`) or from past dead centre (`releaseEffort`).
 *
 * Asked at the most friction from the worst state of rest. With the effort as unknown a jam is a pole, and corners beyond it
 * have no solution; so the effort is given and the reserve of drag at the pins is asked for:
 *
 *     reserve(E) = least drag per pin left over by loads + E × port, from the worst rest
 *
 * The effort is the least E at which the reserve turns positive. It need not stay positive: a port that wedges the finger by itself may
 * open it within a window of efforts, so E is raised in steps from well below its frictionless value and not judged by its limit.
 */
import type { Port } from '../design/design.ts'
import { largestOf } from '../motion/settle.ts'
import { limits } from '../numbers/limits.ts'
import { rootBetween } from '../numbers/root.ts'
import { portRow } from './effort.ts'
import type { ForceBench } from './force-bench.ts'
import { type ForceFrame, powerIn } from './force-frame.ts'
import { reserveUnder } from './return-reserve.ts'

/**
 * Unit generalised force of a port in the sense that lets go: a force as it is directed; a couple or the drive turned round,
 * since both are counted positive when they flex. A cable or chain cannot push, so as the drive it opens nothing: undefined.
 */
export function openingPort(bench: ForceBench, frame: ForceFrame, port: Port): Float64Array | undefined {
  if (port.kind === 'drive' && bench.mechanism.design.drive.kind !== 'turn') return undefined
  const pattern = portRow(bench, frame, port)
  return port.kind === 'force' ? pattern : pattern.map((value) => -value)
}

export type LettingGo =
  /** 0 when it opens by itself. */
  | { readonly kind: 'effort'; readonly effort: number; readonly reserve_Nmm: number }
  | { readonly kind: 'jams'; readonly reserve_Nmm: number }
  | { readonly kind: 'unknown'; readonly reserve_Nmm?: number }

/**
 * @param frame with the motion opening
 * @returns with the reserve without any effort: drag that is left at every pin from the worst rest, N·mm a pin
 * @param asked `port` the unit generalised force in the sense that opens; `load` all else that acts
 */
export function effortToOpen(bench: ForceBench, frame: ForceFrame, asked: { port: Float64Array; load: Float64Array }): LettingGo {
  const given = asked.load.slice()
  const port = asked.port.slice()
  const reserveAt = (effort: number): number | undefined => {
    const load = given.map((value, column) => value + effort * port[column])
    return reserveUnder(bench, frame, load)
  }
  const atNothing = reserveAt(0)
  if (atNothing === undefined) return { kind: 'unknown' }
  if (atNothing > 0) return { kind: 'effort', effort: 0, reserve_Nmm: atNothing }
  const power = powerIn(frame, port)
  // Without friction too a port that does no opening work opens nothing.
  if (!(power > 0)) return { kind: 'jams', reserve_Nmm: atNothing }
  const free = Math.max(-powerIn(frame, given), limits.effortLeast_ratio * largestOf(given)) / power
  return { ...firstOpening(reserveAt, atNothing, free), reserve_Nmm: atNothing }
}

type Opening = { readonly kind: 'effort'; readonly effort: number } | { readonly kind: 'jams' | 'unknown' }

function firstOpening(reserveAt: (effort: number) => number | undefined, atNothing: number, free: number): Opening {
  let low = 0
  let atLow = atNothing
  for (let step = 0; step < limits.effortSteps; step++) {
    const high = free * 2 ** (step / 2 - limits.effortStepsBelow)
    const atHigh = reserveAt(high)
    if (atHigh === undefined) return { kind: 'unknown' }
    if (atHigh > 0) {
      const effort = rootBetween(reserveAt, { low, high, atLow, atHigh }, limits.effortWidth_ratio * high)
      return effort === undefined ? { kind: 'unknown' } : { kind: 'effort', effort }
    }
    low = high
    atLow = atHigh
  }
  return { kind: 'jams' }
}
