/** What is worn at the end that was looked at, hole by hole and stop by stop, and what it comes from. */
import type { Mechanism } from '../../motion/mechanism.ts'
import { partWidth } from '../../strength/part-width.ts'
import { wornBore } from '../../strength/worn-bore.ts'
import type { Inspected } from './inspect.ts'
import type { Rubbing } from './rubbing.ts'
import type { WornPlace } from './wear.ts'
import type { WearRates } from './wear-state.ts'

/** N·mm in a N·m. */
const NMM_A_NM = 1000

/** The first closing: what rubs, and what that takes off. */
export interface FirstClosing {
  readonly rubbing: Rubbing
  readonly rates: WearRates
}

/** One place a joint, then one a stop, in their order. @param worn the finger at the end */
export function wornPlaces(
  { design, joints }: Mechanism,
  { state, design: worn }: Inspected,
  { rubbing, rates }: FirstClosing,
): readonly WornPlace[] {
  const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0)
  const holes = joints.map(({ pin, b, radius_mm }, joint): WornPlace => {
    const along_mm = 2 * radius_mm + rubbing.runs_mm[joint]
    return {
      at: { kind: 'pin', id: design.pins[pin].id },
      part: design.parts[b].id,
      depth_mm: wornBore(state.bores[joint].depths_mm).depth_mm,
      rubbed_Nm: sum(rubbing.bores[joint]) / NMM_A_NM,
      pair: design.pins[pin].friction,
      asNew: { along_mm, width_mm: partWidth(design.parts[b]) ?? Number.NaN, depth_mm: rates.bores[joint].most_mm },
    }
  })
  const ofStops = design.stops.map((stop, index): WornPlace => {
    const { volume_mm3, contact } = rates.stops[index]
    return {
      at: { kind: 'stop', id: stop.id },
      depth_mm: worn.stops[index].gap_mm - stop.gap_mm,
      rubbed_Nm: rubbing.stops[index] / NMM_A_NM,
      pair: stop.friction,
      asNew: { curvature_1_mm: contact.curvature_1_mm, width_mm: contact.width_mm, volume_mm3 },
    }
  })
  return [...holes, ...ofStops]
}
