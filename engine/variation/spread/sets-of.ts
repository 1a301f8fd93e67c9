import type { Design } from '../../design/design.ts'
import type { AskedEvaluation } from '../../evaluate-asked.ts'
import type { Source, Variation } from '../sources/source.ts'
import type { SetFailure } from './spread-problem.ts'

/** Sets of a design by the values of some of its sources. */
export interface SetsOf {
  readonly sources: readonly Source[]
  /**
   * @param values one a source of these
   * @returns undefined where no set can be built of such sizes
   */
  readonly setAt: (values: ArrayLike<number>) => Design | undefined
}

/** @param of whose variation: the sets, for the wearer as stated; or the wearers, for the set as drawn */
export function setsOf(variation: Variation, of: Source['of']): SetsOf {
  const places = variation.sources.flatMap((source, place) => (source.of === of ? [place] : []))
  const drawn = Float64Array.from(variation.sources, ({ nominal }) => nominal)
  const setAt = (values: ArrayLike<number>): Design | undefined => {
    const all = drawn.slice()
    for (let index = 0; index < places.length; index++) all[places[index]] = values[index]
    const { value } = variation.setOf(all)
    return value === undefined || hasNegativeFriction(value) ? undefined : value
  }
  return { sources: places.map((place) => variation.sources[place]), setAt }
}

function hasNegativeFriction({ frictionPairs }: Design): boolean {
  return frictionPairs.some(({ moving, rest }) => moving.likely < 0 || rest.likely < 0)
}

/** Why a set that can be built has no answer of its own. @param drawn what ends the travel of the design itself */
export function failureOf(endsBy: AskedEvaluation['endsBy'], drawn: AskedEvaluation['endsBy']): SetFailure | undefined {
  if (endsBy === undefined) return 'cannot be assembled'
  return drawn === 'stop' && endsBy !== 'stop' ? 'does not close' : undefined
}
