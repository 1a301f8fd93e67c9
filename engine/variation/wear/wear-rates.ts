import type { Design } from '../../design/design.ts'
import type { Problem } from '../../design/problem.ts'
import type { Joint, Mechanism } from '../../motion/mechanism.ts'
import { rubbedVolume } from '../../strength/archard.ts'
import { partWidth } from '../../strength/part-width.ts'
import { contactCurvature, contactLength } from '../../strength/stop-strength.ts'
import { wornBore } from '../../strength/worn-bore.ts'
import type { Rubbing } from './rubbing.ts'
import type { WearRates, WearState } from './wear-state.ts'

/** Wear is known to an order of magnitude: the least, the likely and the most that a pair may lose. */
export type WearLevel = 'least' | 'likely' | 'most'

/**
 * What a closing takes off every hole and stop.
 *
 *     depth = k |R| s / (d w)      over the projected area of the hole, w the width of its part
 *
 * @param mechanism of a design about which `wearMissing` has nothing to say
 */
export function wearRates(
  { design, joints }: Mechanism,
  { state, rubbing, level }: { readonly state: WearState; readonly rubbing: Rubbing; readonly level: WearLevel },
): WearRates {
  const bores = joints.map((joint, index) => {
    const { wear } = state.bores[index].pair
    const area_mm2 = (2 * joint.radius_mm + rubbing.runs_mm[index]) * (partWidth(design.parts[joint.b]) ?? Number.NaN)
    const rate = wear?.rate[`${level}_mm2_N`] ?? Number.NaN
    const depths_mm = rubbing.bores[index].map((rubbed) => rubbedVolume(rate, rubbed) / area_mm2)
    return { depths_mm, most_mm: wornBore(depths_mm).depth_mm }
  })
  const stops = design.stops.map((stop, index) => {
    const { wear } = state.stops[index].pair
    const contact = { width_mm: contactLength(design, stop) ?? Number.NaN, curvature_1_mm: contactCurvature(design, stop) }
    return { volume_mm3: rubbedVolume(wear?.rate[`${level}_mm2_N`] ?? Number.NaN, rubbing.stops[index]), contact }
  })
  return { bores, stops }
}

/** What the document would have to state before anything can be said of wear; the first reason of each place. */
export function wearMissing({ design, joints }: Mechanism): readonly Problem[] {
  const missing = (place: string, found: string, needed: string): Problem => ({ code: 'missing', place, found, needed })
  const ofUse = design.use ? [] : [missing('use', 'nothing', 'closingsPerDay and years, and best the shares of the load cases')]
  const pairs = [...design.pins, ...design.stops].flatMap(({ friction }) => chainOf(friction))
  const ofPairs = [...new Map(pairs.map((pair) => [pair.name, pair])).values()]
    .filter(({ wear }) => !wear)
    .map(({ name }) => missing(`friction.${name}.wear`, 'nothing', 'a rate of wear, such as that of a row of the table'))
  const thin = [...new Set(joints.filter((joint) => widthOf(design, joint) === undefined).map(({ b }) => design.parts[b].id))]
  const ofParts = thin.map((id) => missing(`parts.${id}.thickness`, 'neither thickness nor across', 'how wide its holes are'))
  const ofStops = design.stops
    .filter((stop) => contactLength(design, stop) === undefined || !(contactCurvature(design, stop) > 0))
    .map(({ id }) =>
      missing(
        `stops.${id}`,
        'no line of contact across the width',
        'thickness or across of both parts, and a round that does not fill its socket',
      ),
    )
  return [...ofUse, ...ofPairs, ...ofParts, ...ofStops]
}

const widthOf = ({ parts }: Design, { b }: Joint): number | undefined => partWidth(parts[b])

function chainOf(pair: Design['frictionPairs'][number]): readonly Design['frictionPairs'][number][] {
  return pair.wear?.film ? [pair, ...chainOf(pair.wear.film.under)] : [pair]
}
