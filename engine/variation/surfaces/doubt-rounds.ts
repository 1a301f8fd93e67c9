/** Rounds: sets in doubt are chosen, judged by somebody, and the surfaces made anew. */
import { doubtfulSets, type Layer } from './doubtful-sets.ts'
import { type Doubts, doubtsOf } from './doubts.ts'
import type { DrawnSets } from './drawn-sets.ts'
import type { JudgedSets } from './judged-sets.ts'
import { claimedVariance, estimateOf, noBetterThanLater, type ShareEstimate, together, unjudged } from './share-estimate.ts'
import { refitted, type StandingNumber, saidOf } from './standing-number.ts'
import type { NoSurface, NumberedSet, SetsWanted } from './surface-problem.ts'
import { clearShare, drawnHalf, type SurfaceShare, shareFrom } from './surface-share.ts'

/** What rounds begin from. */
export interface RoundsAsked {
  readonly drawn: DrawnSets
  readonly judged: JudgedSets
  readonly standing: readonly StandingNumber[]
}

/** Sets judged in one round: they come from one surface, and keep some workers busy. */
const round_sets = 24

/** Rounds of one problem. */
export class DoubtRounds {
  readonly #judged: JudgedSets
  readonly #chosen = new Set<number>()
  readonly #estimates = new Map<number | 'all', ShareEstimate[]>()
  #drawn: DrawnSets
  #standing: readonly StandingNumber[]
  #doubts: Doubts
  #layers: readonly Layer[]

  constructor({ drawn, judged, standing }: RoundsAsked) {
    this.#judged = judged
    this.#drawn = drawn
    this.#standing = standing
    this.#doubts = this.#lookedOver()
    this.#layers = this.#doubtful()
  }

  get rows_count(): number {
    return this.#drawn.rows_count
  }

  /** Whether surfaces were held against a round of these sets: before that they speak for themselves alone. */
  get isJudged(): boolean {
    return this.#estimates.size > 0
  }

  /** Half of the interval that drawing leaves to all requirements, whatever is judged. */
  get drawnHalf(): number {
    return drawnHalf({ chances: this.#doubts.all, row_sets: this.#drawn.row_sets })
  }

  /** Looks over more sets, of which those up to now are the first. What was judged tells surfaces from here on, and no share. */
  lookOver(drawn: DrawnSets): void {
    this.#drawn = drawn
    this.#estimates.clear()
    this.#doubts = this.#lookedOver()
    this.#layers = this.#doubtful()
  }

  get standing(): readonly StandingNumber[] {
    return this.#standing
  }

  /** What is to be judged; no sets where none is in doubt. Numbers that tell the whole of their requirements are enough. */
  get wanted(): SetsWanted {
    const values = this.#layers.flatMap(({ chosen }) => chosen.map((set) => this.#drawn.valuesOf(set)))
    const isEnough = this.#standing.every(({ behind }) => behind.isWhole)
    return { values, judged_count: this.#judged.count, ...(isEnough && { places: this.#standing.map(({ place }) => place) }) }
  }

  /** Takes the sets that were wanted. @returns why surfaces do not serve, where one of them says so */
  take(sets: readonly NumberedSet[]): NoSurface | undefined {
    const refused = this.#judged.take(this.wanted, sets)
    if (refused) return refused
    const chosen = this.#layers.flatMap((layer) => layer.chosen)
    const bySet = new Map(chosen.map((set, index) => [set, sets[index]]))
    for (const set of chosen) this.#chosen.add(set)
    const { all, single } = this.#doubts
    for (const [of, chances] of [['all', all] as const, ...single]) {
      const estimate = estimateOf({
        chances,
        layers: this.#layers,
        isMet: (set) => this.#meets(bySet.get(set) as NumberedSet, of),
      })
      this.#estimates.set(of, [...(this.#estimates.get(of) ?? []), estimate])
    }
    this.#standing = this.#standing.map((one) => refitted(one, this.#judged.of(one.place)))
    this.#doubts = this.#lookedOver()
    this.#layers = this.#doubtful()
    return undefined
  }

  /** The share of sets that meet a requirement, by its place, or all. */
  shareOf(of: number | 'all'): SurfaceShare {
    const chances = of === 'all' ? this.#doubts.all : this.#doubts.single.get(of)
    const { row_sets, rows_count } = this.#drawn
    if (!chances) return clearShare(rows_count)
    const judged = noBetterThanLater(this.#estimates.get(of) ?? [], claimedVariance(chances, this.#layers))
    const estimates = [...judged, unjudged(chances)]
    return shareFrom(together(estimates), { chances, row_sets })
  }

  /** Whether a set meets a requirement, or all: numbers that stay clear are met. */
  #meets({ numbers, verdicts }: NumberedSet, of: number | 'all'): boolean {
    const belongs = (requirement: number): boolean => of === 'all' || requirement === of
    if (verdicts) return verdicts.every((verdict, requirement) => verdict === 'met' || !belongs(requirement))
    return this.#standing.every(({ behind, place }) => numbers[place] > 0 || !belongs(behind.requirement))
  }

  #lookedOver(): Doubts {
    return doubtsOf(this.#standing.map((one) => saidOf(one, this.#drawn)))
  }

  #doubtful(): readonly Layer[] {
    return doubtfulSets(this.#doubts, this.#chosen, round_sets)
  }
}
