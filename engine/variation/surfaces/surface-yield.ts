/**
 * Yield by surfaces: the share of sets that meet every requirement, from a few hundred judged sets instead of tens of thousands.
 *
 *     first sets judged ─▶ a surface through each number behind a requirement ─▶ what the surfaces say of many drawn sets
 *                                       ▲                                                      │
 *                                       └──────── sets in doubt are judged as well ◀───────────┘
 *
 * Numbers such as a margin or a reserve follow sizes and friction smoothly, where a yes or no jumps; so few sets tell their surface, and only sets
 * near nothing are in doubt (response surfaces: G. E. P. Box and K. B. Wilson 1951; judging where a surface is in doubt: B. Echard, N. Gayton and
 * M. Lemaire 2011; both from memory). What the surfaces get wrong in doubt is estimated from the judged ones (share-estimate.ts) and stands in
 * the interval. What is taken for granted is that no surface errs by more than it is believed to (doubts.ts): every judged set is held against it.
 */
import { limits } from '../../numbers/limits.ts'
import type { Source } from '../sources/source.ts'
import { replicates_count } from '../spread/cloud.ts'
import { varianceOf } from '../spread/share-interval.ts'
import { type ClearNumber, partNumbers, partOverDrawn } from './clear-numbers.ts'
import { DoubtRounds } from './doubt-rounds.ts'
import { type DrawnSets, drawing } from './drawn-sets.ts'
import { JudgedSets } from './judged-sets.ts'
import { meanOf } from './share-estimate.ts'
import { movesOf, refitted, type StandingNumber } from './standing-number.ts'
import type { NoSurface, NumberBehind, NumberedSet, SetsWanted, SurfaceProblem } from './surface-problem.ts'
import { clearShare, type SurfaceShare } from './surface-share.ts'

/** What is asked for. */
export interface SurfaceAsked {
  readonly seed: number
  /** Half of the interval at which enough sets are judged, a share. */
  readonly half_ratio: number
}

/** A number that comes near nothing. */
export interface NearNumber {
  readonly behind: NumberBehind
  /** What its surface misses near nothing, root mean square, in the number's unit. */
  readonly miss: number
}

/** Yields by surfaces. */
export interface SurfaceYield {
  readonly all: SurfaceShare
  /** One a requirement. */
  readonly requirements: readonly SurfaceShare[]
  readonly judged_count: number
  /** Rows of sets that the surfaces were asked about. */
  readonly rows_count: number
  readonly near: readonly NearNumber[]
  /** Numbers that stay clear, the least clear first. */
  readonly clear: readonly ClearNumber[]
}

/**
 * Wants sets judged, round by round, and is given them in their order. The same seed wants the same sets.
 *
 * @returns why not, where surfaces do not serve this problem
 */
export function* surfaceYield(
  problem: SurfaceProblem,
  { seed, half_ratio }: SurfaceAsked,
): Generator<SetsWanted, SurfaceYield | NoSurface, readonly NumberedSet[]> {
  const { sources, numbers } = problem
  if (sources.length === 0) return { why: 'nothing varies from set to set' }
  const judged = new JudgedSets(problem)
  const sets = drawing(sources, seed)
  const first = sets.firstValues(firstCount(sources.length))
  const meanwhile = (): void => sets.prepare(limits.surfaceRows)
  const refusedFirst = judged.take({ values: first }, yield { values: first, judged_count: 0, meanwhile })
  if (refusedFirst) return refusedFirst
  const columns = numbers.map((_, place) => judged.column(place))
  const parted = partNumbers({ sources, numbers, inputs: judged.inputs, columns })
  if (parted.near.length === 0) return yieldOf(problem, { judged, clear: parted.clear })
  const refits = parted.near.map((one) => refitted(one, judged.of(one.place)))
  const leading = leadingSource(sources, refits, judged)
  const rowsOf = (rows_count: number): DrawnSets => sets.rows({ rows_count, ...(leading !== undefined && { leading }) })
  const drawn = rowsOf(limits.surfaceRows)
  const { clear: further, near: standing } = partOverDrawn(refits, drawn)
  const clear = [...parted.clear, ...further]
  if (standing.length === 0) return yieldOf(problem, { judged, clear })
  const rounds = new DoubtRounds({ drawn, judged, standing })
  for (;;) {
    while (rounds.drawnHalf > DRAWING_ratio * half_ratio && rounds.rows_count < limits.surfaceRowsMost)
      rounds.lookOver(rowsOf(4 * rounds.rows_count))
    const { least, most } = rounds.shareOf('all')
    const isTold = rounds.isJudged && most - least <= 2 * half_ratio
    if (isTold || rounds.wanted.values.length === 0 || judged.count >= limits.surfaceJudged) break
    const refused = rounds.take(yield rounds.wanted)
    if (refused) return refused
  }
  return yieldOf(problem, { judged, clear, rounds })
}

/** Twice the terms of a first surface, in whole rounds of the replicates. */
function firstCount(sources_count: number): number {
  return replicates_count * Math.ceil(Math.max(3, (FIRST_ratio * (1 + sources_count)) / replicates_count))
}

/** Sets for each term of a first surface. */
const FIRST_ratio = 2

/** Of what half of the interval may be, drawing may take so much; the rest is left to judging. */
const DRAWING_ratio = 0.75

/** Of the number that is likeliest to lie below nothing, the source that moves it most; undefined where all go over discs. */
function leadingSource(sources: readonly Source[], standing: readonly StandingNumber[], judged: JudgedSets): number | undefined {
  const distances = standing.map(({ place }) => {
    const values = [...judged.column(place)]
    return meanOf(values) / Math.sqrt(varianceOf(values))
  })
  const likeliest = standing[distances.indexOf(Math.min(...distances))]
  const moves = movesOf(likeliest.surface)
  const ranked = [...moves.keys()].sort((one, other) => moves[other] - moves[one])
  return ranked.find((source) => sources[source].law.kind !== 'disc')
}

interface Found {
  readonly judged: JudgedSets
  readonly clear: readonly ClearNumber[]
  /** Absent where every number stays clear. */
  readonly rounds?: DoubtRounds
}

function yieldOf({ requirements_count }: SurfaceProblem, { judged, clear, rounds }: Found): SurfaceYield {
  const rows_count = rounds?.rows_count ?? limits.surfaceRows
  const shareOf = (of: number | 'all'): SurfaceShare => rounds?.shareOf(of) ?? clearShare(rows_count)
  return {
    all: shareOf('all'),
    requirements: Array.from({ length: requirements_count }, (_, requirement) => shareOf(requirement)),
    judged_count: judged.count,
    rows_count,
    near: (rounds?.standing ?? []).map(({ behind, miss }) => ({ behind, miss })),
    clear: clear.toSorted((one, other) => one.misses - other.misses),
  }
}
