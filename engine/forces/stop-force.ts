/**
 * Force of a closed stop at rest: a band, since friction in the pins and at the stop may stand anywhere.
 *
 * The contact force is N along the normal and anything up to μ N along the edge, so it is one port of a tilted direction;
 * the least and the largest N are taken over both tilts and over all friction states of the joints. A stop cannot pull: a
 * negative least is 0. Where the contact force by itself would not open the finger from the worst rest (inside the jam), the finger can be
 * wedged onto its stop with any force, and there is no largest.
 */
import type { Stop } from '../design/design.ts'
import { addForce } from '../motion/closure.ts'
import { stopContact } from '../motion/stop-contact.ts'
import { prepare } from './balance.ts'
import type { ForceBench } from './force-bench.ts'
import { emptyRow, type ForceFrame } from './force-frame.ts'
import { worstRest } from './rest-state.ts'
import { reserveUnder } from './return-reserve.ts'

export interface StopBand {
  readonly least_N: number
  /** Absent where the stop can be wedged without limit. */
  readonly most_N?: number
}

/** @param load all that acts at the posture. @returns undefined when no state of rest was found */
export function stopBand(
  bench: ForceBench,
  frame: ForceFrame,
  asked: { readonly stop: Stop; readonly load: Float64Array },
): StopBand | undefined {
  const friction = asked.stop.friction.rest.most
  const given = asked.load.slice()
  const levers = bench.leversOf('rest', 'most')
  const found: number[] = []
  let wedges = false
  for (const tilt of [-friction, friction]) {
    const alone = reserveUnder(bench, frame, contactPort(frame, asked.stop, tilt))
    if (alone === undefined || alone <= 0) wedges = true
    const prepared = prepare(frame, { port: contactPort(frame, asked.stop, tilt), load: given })
    if (!prepared) continue
    for (const towards of [1, -1] as const) {
      const state = worstRest({ prepared, levers, towards })
      if (state) found.push(state.amplitude)
    }
  }
  if (found.length === 0) return undefined
  const least_N = Math.max(0, Math.min(...found))
  return wedges ? { least_N } : { least_N, most_N: Math.max(0, ...found) }
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
