/**
 * Force of a closed stop at rest: a band, since friction in the pins and at the stop may stand anywhere.
 *
 * The contact force is N along the normal and anything up to μ N along the edge, so it is one port of a tilted direction;
 * the least and the largest N are taken over both tilts and over all friction states of the joints. A stop cannot pull: a
 * negative least is 0.
 */
import type { Stop } from '../design/design.ts'
import { addForce } from '../motion/closure.ts'
import { stopContact } from '../motion/stop-contact.ts'
import { prepare } from './balance.ts'
import type { ForceBench } from './force-bench.ts'
import { emptyRow, type ForceFrame } from './force-frame.ts'
import { worstRest } from './rest-state.ts'

export interface StopBand {
  readonly least_N: number
  readonly most_N: number
}

/** @param load all that acts at the posture. @returns undefined when no state of rest was found */
export function stopBand(
  bench: ForceBench,
  frame: ForceFrame,
  asked: { readonly stop: Stop; readonly load: Float64Array },
): StopBand | undefined {
  const friction = asked.stop.friction.rest.most
  const levers = bench.leversOf('rest', 'most')
  const found: number[] = []
  for (const tilt of [-friction, friction]) {
    const prepared = prepare(frame, { port: contactPort(frame, asked.stop, tilt), load: asked.load })
    if (!prepared) continue
    for (const towards of [1, -1] as const) {
      const state = worstRest({ prepared, levers, towards })
      if (state) found.push(state.amplitude)
    }
  }
  if (found.length === 0) return undefined
  return { least_N: Math.max(0, Math.min(...found)), most_N: Math.max(0, ...found) }
}

/** Unit normal force and its tilt along the edge, on both parts. */
function contactPort(frame: ForceFrame, stop: Stop, tilt: number): Float64Array {
  const row = emptyRow(frame)
  const { at, normal } = stopContact(frame.mechanism, stop, frame.posture)
  const force = { x: normal.x - tilt * normal.y, y: normal.y + tilt * normal.x }
  addForce(row, { part: stop.round.part, at, force })
  addForce(row, { part: stop.against.part, at, force: { x: -force.x, y: -force.y } })
  return row.out
}
