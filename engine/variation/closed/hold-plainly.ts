/** The long way to the hold verdict of a set: the road of `evaluate`. */
import type { Design } from '../../design/design.ts'
import { surveyTravel } from '../../figures/survey.ts'
import { findJam, type SurveyedNode } from '../../forces/jam.ts'
import { findSlip } from '../../forces/slip.ts'
import { assemble } from '../../motion/assemble.ts'
import { mechanismOf } from '../../motion/mechanism.ts'
import { makePathBench, type PathNode } from '../../motion/path.ts'
import { toggleMargin } from '../../motion/toggle-margin.ts'
import { type TravelPath, travelPath } from '../../motion/travel-path.ts'
import type { Variation } from '../sources/source.ts'
import { keptCase } from './flat-numbers.ts'

/** A design that was followed from open to its stop. */
export interface FollowedFinger {
  readonly path: TravelPath
  readonly closed: PathNode
  /** N·mm a pin, at the closed posture; NaN where no state of rest was found. */
  readonly reserve: number
  /** Where it jams from rest, and where the first load with a keeper slips; absent where it does neither. */
  readonly jam?: PathNode
  readonly slip?: PathNode
  /** Whether the keeper needs no more than it is allowed anywhere out from the jam. */
  readonly neverSlips: boolean
}

/** A design by the road of `evaluate`: put together, followed from open to closed and beyond. @returns undefined where it does not come to a stop */
export function followedFinger(design: Design): FollowedFinger | undefined {
  const mechanism = mechanismOf(design)
  const drawn = mechanism.columns_count === mechanism.rows_count + 1 ? assemble(mechanism).posture : undefined
  if (!drawn) return undefined
  const path = travelPath(makePathBench(mechanism), drawn)
  if (path?.end.by !== 'stop') return undefined
  const { nodes, reserves, bench } = surveyTravel(path, drawn)
  const surveyed = nodes.map((node, index): SurveyedNode => ({ node, reserve: reserves[index]?.fromRest }))
  const jam = findJam(bench, path, 'fromRest', surveyed)
  const kept = keptCase(design)
  const slip = jam.kind === 'at' && kept ? findSlip(bench, path, kept, jam.node) : undefined
  return {
    ...{ path, closed: nodes[nodes.length - 1], reserve: reserves[reserves.length - 1]?.fromRest ?? Number.NaN },
    ...(jam.kind === 'at' && { jam: jam.node }),
    ...(slip?.kind === 'at' && { slip: slip.node }),
    neverSlips: slip?.kind === 'never',
  }
}

/** Hold numbers of a design that was followed: margins of its toggles, reserve, jam, slip; NaN for what there is not, and a slip without end where it never does. */
export function holdNumbersOf({ path, closed, reserve, jam, slip, neverSlips }: FollowedFinger, out: Float64Array): void {
  const { toggles } = path
  const marginAt = (index: number, node: PathNode | undefined): number =>
    node && index < toggles.length ? toggleMargin(toggles[index], node.posture) : Number.NaN
  for (let index = 0; index < toggles.length; index++) out[index] = marginAt(index, closed)
  out[toggles.length] = reserve
  out[toggles.length + 1] = marginAt(0, jam)
  out[toggles.length + 2] = neverSlips ? Number.POSITIVE_INFINITY : marginAt(0, slip)
}

/** The hold numbers of a set, read in full and followed; NaN for what it has not. */
export function holdPlainly(variation: Variation, values: ArrayLike<number>, out: Float64Array): void {
  out.fill(Number.NaN)
  const design = variation.setOf(values).value
  const followed = design && followedFinger(design)
  if (followed) holdNumbersOf(followed, out)
}
