/** Closed postures of many sets: each by the short way where it serves, by the long way where it does not, and which is said. */

import { valuesOf } from '../sources/law.ts'
import type { Variation } from '../sources/source.ts'
import { type CloudAsked, cloudOf } from '../spread/cloud.ts'
import type { HoldFingers } from './hold-finger.ts'
import { holdPlainly } from './hold-plainly.ts'

/** Closed numbers of a range of samples; plain arrays, so that a worker can hand them over. */
export interface ClosedSamples {
  readonly from: number
  /** The first number that is not in it. */
  readonly to: number
  /** Sample by sample, as `HoldNumbers`; NaN where a set does not close as the design does. */
  readonly numbers: Float64Array
  /** Sets that the long way had to say. */
  readonly plainly_count: number
}

/** Which samples of which sets. */
export interface ClosedAsked {
  readonly variation: Variation
  readonly fingers: HoldFingers
  /** Over the sources of the sets; those of wearers stay as stated. */
  readonly cloud: CloudAsked
  readonly from: number
  readonly to: number
}

/** Works out a range of samples. The same range gives the same bytes wherever and whenever it is made. */
export function closedSamples({ variation, fingers, cloud, from, to }: ClosedAsked): ClosedSamples {
  const { sources } = variation
  const varying = sources.flatMap(({ of }, place) => (of === 'sets' ? [place] : []))
  const fillValues = valuesOf(varying.map((place) => sources[place]))
  const { fill } = cloudOf(cloud)
  const normals = new Float64Array(varying.length)
  const own = new Float64Array(varying.length)
  const values = Float64Array.from(sources, ({ nominal }) => nominal)
  const { numbers_count } = fingers
  const numbers = new Float64Array((to - from) * numbers_count)
  const out = new Float64Array(numbers_count)
  let plainly_count = 0
  for (let sample = from; sample < to; sample++) {
    fill(sample, normals)
    fillValues(normals, own)
    for (let index = 0; index < varying.length; index++) values[varying[index]] = own[index]
    if (!fingers.solve(values, out)) {
      plainly_count++
      holdPlainly(variation, values, out)
    }
    for (let index = 0; index < numbers_count; index++) numbers[(sample - from) * numbers_count + index] = out[index]
  }
  return { from, to, numbers, plainly_count }
}
