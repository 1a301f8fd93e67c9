import type { Design } from '../../design/design.ts'
import { askedFigures, evaluateAsked } from '../../evaluate-asked.ts'
import type { Variation } from '../sources/source.ts'
import { failureOf, setsOf } from '../spread/sets-of.ts'
import { figuresBehind, numberIn, numbersOfDesign } from './numbers-of-design.ts'
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
  const numbers = numbersOfDesign(design, new Map(drawn.figures.map((figure) => [figure.id, figure])))
  if ('why' in numbers) return numbers
  const { sources, setAt } = setsOf(variation, 'sets')
  const judge = (values: ArrayLike<number>): NumberedSet => {
    const set = setAt(values)
    if (set === undefined) return failed(design, numbers.length)
    const { figures, findings, endsBy } = evaluateAsked(set, asked)
    const byId = new Map(figures.map((figure) => [figure.id, figure]))
    const failure = failureOf(endsBy, drawn.endsBy)
    return {
      numbers: Float64Array.from(numbers, (behind) => numberIn(byId.get(behind.figure), behind)),
      verdicts: findings.map(({ verdict }) => verdict),
      ...(failure && { failure }),
    }
  }
  return { sources, numbers, requirements_count: design.requirements.length, judge }
}

function failed({ requirements }: Design, numbers_count: number): NumberedSet {
  const numbers = new Float64Array(numbers_count).fill(Number.NaN)
  return { numbers, verdicts: requirements.map(() => 'short'), failure: 'cannot be built' }
}
