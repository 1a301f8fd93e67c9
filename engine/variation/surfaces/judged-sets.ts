/** Sets that were judged for surfaces, held against what surfaces take for granted. */
import { inDeviations } from '../spread/contributions.ts'
import type { ClearNumber } from './clear-numbers.ts'
import type { JudgedNumber } from './standing-number.ts'
import type { NoSurface, NumberedSet, SurfaceProblem } from './surface-problem.ts'

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

  /** Takes judged sets, by the values of their sources. @returns why surfaces do not serve, where one of them says so */
  take(values: readonly Float64Array[], judged: readonly NumberedSet[]): NoSurface | undefined {
    for (const set of judged) {
      const refused = this.#refusedBy(set)
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

  /** @returns why surfaces do not serve, where a number that was to stay clear did not */
  against(clear: readonly ClearNumber[]): NoSurface | undefined {
    const wrong = clear.find(({ place }) => this.#sets.some(({ numbers }) => !(numbers[place] > 0)))
    return wrong && { why: `${wrong.behind.words} was to stay clear of its bound and does not` }
  }

  #refusedBy({ numbers, verdicts, failure }: NumberedSet): NoSurface | undefined {
    if (failure) return { why: `some sets have no answer of their own: ${failure}` }
    if (verdicts.includes('undecided')) return { why: 'some sets cannot be decided' }
    const [first] = this.#sets
    const says = new Array<'met' | 'short' | undefined>(verdicts.length).fill('met')
    for (const [place, { requirement, words, isWhole }] of this.#problem.numbers.entries()) {
      const value = numbers[place]
      if (Number.isNaN(value)) return { why: `${words} has no value in some sets` }
      if (first && Number.isFinite(value) !== Number.isFinite(first.numbers[place]))
        return { why: `${words} comes about in some sets only` }
      if (!(value > 0) && says[requirement] !== 'short') says[requirement] = isWhole ? 'short' : undefined
    }
    const wrong = says.findIndex((word, requirement) => word !== undefined && word !== verdicts[requirement])
    if (wrong < 0) return undefined
    const { words } = this.#problem.numbers.find(({ requirement }) => requirement === wrong) ?? { words: 'the number' }
    return { why: `${words} does not say of every set whether its requirement is met` }
  }
}

/** Whether a set meets a requirement, or all. */
export function isMet({ verdicts }: NumberedSet, of: number | 'all'): boolean {
  return of === 'all' ? verdicts.every((verdict) => verdict === 'met') : verdicts[of] === 'met'
}
