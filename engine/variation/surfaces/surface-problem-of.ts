import type { Design } from '../../design/design.ts'
import { askedFigures, evaluateAsked } from '../../evaluate-asked.ts'
import type { Variation } from '../sources/source.ts'
import { failureOf, setsOf } from '../spread/sets-of.ts'
import { figuresBehind, figureValues, numberOf, numbersOfDesign } from './numbers-of-design.ts'
import type { NoSurface, NumberedSet, SurfaceProblem } from './surface-problem.ts'

/**
 * The sets of a design as a problem for surfaces.
 *
 * @returns why not, where some requirement has no number behind it
 */
export function surfaceProblemOf(variation: Variation): SurfaceProblem | NoSurface {
  const { design } = variation
  const asked = askedFigures(design, figuresBehind(design))
  const drawn = evaluateAsked(design, asked)
  const numbers = numbersOfDesign(design, figureValues(drawn))
  if ('why' in numbers) return numbers
  const { sources, setAt } = setsOf(variation, 'sets')
  const figuresOf = (places: readonly number[]): ReadonlySet<string> => new Set(places.map((place) => numbers[place].figure))
  const judge = (sizes: ArrayLike<number>, places?: readonly number[]): NumberedSet => {
    const set = setAt(sizes)
    if (set === undefined)
      return {
        numbers: numbers.map(() => Number.NaN),
        verdicts: design.requirements.map(() => 'short'),
        failure: 'cannot be built',
      }
    const found = places ? evaluateAsked(withoutRequirements(set), figuresOf(places)) : evaluateAsked(set, asked)
    const values = figureValues(found)
    const failure = failureOf(found.endsBy, drawn.endsBy)
    return {
      numbers: Float64Array.from(numbers, (behind, place) =>
        !places || places.includes(place) ? numberOf(behind, values) : Number.NaN,
      ),
      ...(!places && { verdicts: found.findings.map(({ verdict }) => verdict) }),
      ...(failure && { failure }),
    }
  }
  return { sources, numbers, requirements_count: design.requirements.length, judge }
}

function withoutRequirements(design: Design): Design {
  return { ...design, requirements: [] }
}
