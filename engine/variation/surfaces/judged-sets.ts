/** Sets that were judged for surfaces, held against what surfaces take for granted. */
import type { Verdict } from '../../figures/evaluation.ts'
import { inDeviations } from '../spread/contributions.ts'
import type { JudgedNumber } from './standing-number.ts'
import type { NoSurface, NumberedSet, SetsWanted, SurfaceProblem } from './surface-problem.ts'

/** Judged sets, in the order in which they were judged. */
export class JudgedSets {
  readonly #problem: SurfaceProblem
  readonly #sets: NumberedSet[] = []
  readonly inputs: Float64Array[] = []

  constructor(problem: SurfaceProblem) {
    this.#problem = problem
  }

  get count(): number {
    return this.#sets.length
  }

  /** Takes the sets that were wanted, judged. @returns why surfaces do not serve, where one of them says so */
  take({ values, places }: Pick<SetsWanted, 'values' | 'places'>, judged: readonly NumberedSet[]): NoSurface | undefined {
    const asked = places ?? [...this.#problem.numbers.keys()]
    for (const set of judged) {
      const refused = this.#refusedBy(set, asked)
      if (refused) return refused
      this.#sets.push(set)
    }
    this.inputs.push(...inDeviations(this.#problem.sources, values))
    return undefined
  }

  /** One number over the sets. */
  column(place: number): Float64Array {
    return Float64Array.from(this.#sets, ({ numbers }) => numbers[place])
  }

  /** One number over the sets, with what they came from. */
  of(place: number): JudgedNumber {
    return { inputs: this.inputs, values: this.column(place) }
  }

  #refusedBy({ numbers, verdicts, failure }: NumberedSet, asked: readonly number[]): NoSurface | undefined {
    if (failure) return { why: `some sets have no answer of their own: ${failure}` }
    if (verdicts?.includes('undecided')) return { why: 'some sets cannot be decided' }
    for (const place of asked) {
      const why = whyNot(numbers[place], this.#sets[0]?.numbers[place])
      if (why) return { why: `${this.#problem.numbers[place].words} ${why}` }
    }
    return verdicts && this.#contradictedBy(numbers, verdicts)
  }

  /** Whether verdicts are not those that the numbers behind them say. */
  #contradictedBy(numbers: NumberedSet['numbers'], verdicts: readonly Verdict[]): NoSurface | undefined {
    const says = new Array<Verdict | undefined>(verdicts.length).fill('met')
    for (const [place, { requirement, isWhole }] of this.#problem.numbers.entries())
      if (!(numbers[place] > 0) && says[requirement] !== 'short') says[requirement] = isWhole ? 'short' : undefined
    const wrong = says.findIndex((word, requirement) => word !== undefined && word !== verdicts[requirement])
    const behind = this.#problem.numbers.find(({ requirement }) => requirement === wrong)
    return behind && { why: `${behind.words} does not say of every set whether its requirement is met` }
  }
}

/** What is wrong with a number of a set, beside that of the first set. */
function whyNot(value: number, first: number | undefined): string | undefined {
  if (Number.isNaN(value)) return 'has no value in some sets'
  if (value === Number.NEGATIVE_INFINITY) return 'lies beyond any bound in some sets'
  if (first !== undefined && Number.isFinite(value) !== Number.isFinite(first)) return 'comes about in some sets only'
  return undefined
}
