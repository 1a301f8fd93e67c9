import type { LoadCase, Stop } from '../../design/design.ts'
import type { Ready } from '../../figures/ready-finger.ts'
import { standingLoad } from '../../forces/force-bench.ts'
import { addLoadCase } from '../../forces/loads.ts'
import { framesNear, type Loaded } from '../../forces/states.ts'
import { stopBand } from '../../forces/stop-force.ts'
import { type Mechanism, placed } from '../../motion/mechanism.ts'
import { stopContact } from '../../motion/stop-contact.ts'

interface Closed {
  readonly loadCase: LoadCase | undefined
  /** The closed finger under that load. */
  readonly loaded: Loaded | undefined
  /** Posture at let-go. */
  readonly rest: Float64Array | undefined
}

/** N·mm a closing, one a stop: the largest force that the stop may take at rest times the way that its round slides meanwhile. */
export function rubbedAtStop({ path, bench, closed }: Ready, { loadCase, loaded, rest }: Closed): readonly number[] {
  const { stops } = path.mechanism.design
  const none = stops.map(() => 0)
  const { end } = path
  const posture = loaded?.posture ?? rest
  if (end.by !== 'stop' || !posture) return none
  const frames = framesNear(closed, posture)
  if (!frames) return none
  const load = standingLoad(bench, frames.opening, 'stopped')
  if (loadCase) addLoadCase(load, loadCase)
  const stop = stops[end.stop]
  const band = stopBand(bench, frames.opening, { stop, load: load.out })
  // Where friction could wedge the finger onto its stop with any force, what rests on the stop by itself is all that is known.
  const force_N = band?.most_N ?? restingOn(loaded)
  const slid_mm = slidBetween(path.mechanism, stop, { from: closed.node.posture, to: posture })
  return stops.map((_, index) => (index === end.stop ? force_N * slid_mm : 0))
}

function restingOn(loaded: Loaded | undefined): number {
  return loaded && loaded.state.shares.stop > 0 ? Math.max(0, loaded.state.balance.amplitude) : 0
}

/** Way of the round's surface along the edge, mm: as far as its centre runs along it, and as far as it turns. */
function slidBetween(mechanism: Mechanism, stop: Stop, { from, to }: { from: Float64Array; to: Float64Array }): number {
  const along = alongEdge(mechanism, stop, to) - alongEdge(mechanism, stop, from)
  const turn = (posture: Float64Array) => posture[3 * stop.round.part + 2] - posture[3 * stop.against.part + 2]
  return Math.abs(along) + stop.round.radius_mm * Math.abs(turn(to) - turn(from))
}

/** Place of the round's centre along the tangent of the contact, from the origin of the edge's part, mm. */
function alongEdge(mechanism: Mechanism, stop: Stop, posture: Float64Array): number {
  const { normal } = stopContact(mechanism, stop, posture)
  const centre = placed(posture, stop.round.part, stop.round.at)
  const origin = placed(posture, stop.against.part, { x_mm: 0, y_mm: 0 })
  return (centre.x_mm - origin.x_mm) * normal.y - (centre.y_mm - origin.y_mm) * normal.x
}
