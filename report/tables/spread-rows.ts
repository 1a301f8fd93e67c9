/** Rows of the spread that page, command line and report share: yields, and figures with what drives them. */
import {
  type CountedShare,
  countedYieldWorking,
  type DesignSpread,
  figureWorkings,
  type SpreadFigure,
  shareWorking,
  targetVerdict,
  type UnitSystem,
  type Verdict,
  type Working,
} from '../../engine/index.ts'
import type { OpenedLine } from './opened-line.ts'
import { setValue, type ValueText } from './value-text.ts'

/** A requirement, or all at once, with the share of sets that meet it. */
export interface YieldRow {
  /** `all` for all at once. */
  readonly id: string
  readonly title: string
  readonly verdict: Verdict
  /** `97.3 %`. */
  readonly met: string
  /** `96.9 to 97.7 %`. */
  readonly interval: string
  readonly short: string
  /** Absent when no set is undecided. */
  readonly undecided?: string
  /** `12 times`: samples of chance for one of these; absent where it cannot be told. */
  readonly saved?: string
  /** How its numbers come about. */
  readonly workings: () => readonly Working[]
}

/** A share as a percentage with as many digits as its interval deserves. */
export function shareText(value: number, interval: Pick<CountedShare, 'least' | 'most'>): string {
  return `${percent(value, interval)} %`
}

/** Both ends of the interval of a share. */
export function intervalText({ least, most }: Pick<CountedShare, 'least' | 'most'>): string {
  return `${percent(least, { least, most })} to ${percent(most, { least, most })} %`
}

/** Digits behind the point: the width of the interval begins at the last of them, or one before. */
const DIGITS_most = 3

function percent(value: number, { least, most }: Pick<CountedShare, 'least' | 'most'>): string {
  const width = 100 * (most - least)
  const digits = width > 0 ? Math.min(DIGITS_most, Math.max(0, 1 - Math.floor(Math.log10(width)))) : DIGITS_most
  return (100 * value).toFixed(Math.min(digits, DIGITS_most))
}

/** All at once first, then each requirement, those that fall short most often first. */
export function yieldRows({ spread, requirements, figures, asked }: DesignSpread): readonly YieldRow[] {
  const { all, requirements: single } = spread.yields
  const rows = requirements.map((requirement, index) => {
    const title = figures.find(({ id }) => id === requirement.figure)?.title ?? requirement.figure
    return { row: yieldRow({ id: requirement.id, title }, single[index], asked.target_ratio), short: single[index].short.value }
  })
  const inOrder = rows.sort((one, other) => other.short - one.short).map(({ row }) => row)
  return [yieldRow({ id: 'all', title: 'Every requirement at once' }, all, asked.target_ratio), ...inOrder]
}

type Counted = DesignSpread['spread']['yields']['all']

function yieldRow(named: Pick<YieldRow, 'id' | 'title'>, counted: Counted, target_ratio: number): YieldRow {
  const { met, short, undecided, saved_ratio } = counted
  return {
    ...named,
    verdict: targetVerdict(counted, target_ratio),
    met: shareText(met.value, met),
    interval: intervalText(met),
    short: shareText(short.value, short),
    ...(undecided.value > 0 && { undecided: shareText(undecided.value, undecided) }),
    ...(saved_ratio !== undefined && { saved: `${saved_ratio.toPrecision(2)} times` }),
    workings: () => [countedYieldWorking(counted, target_ratio)],
  }
}

/** Sets that have no answer of their own, in words; only those that were seen. */
export function failureLines({ spread }: DesignSpread): readonly OpenedLine[] {
  return Object.entries(spread.yields.failures)
    .filter(([, { value }]) => value > 0)
    .map(([failure, share]) => ({
      words: `${shareText(share.value, share)} of sets: ${failure}; they count as short in hold and return`,
      workings: () => [shareWorking(share, 'Sets that have no answer of their own are counted by themselves.')],
    }))
}

/** One figure over the sets. */
export interface SpreadFigureRow {
  readonly id: string
  readonly title: string
  /** At the corners of what the drawing allows; in words where they bound nothing. */
  readonly worst: readonly [ValueText, ValueText] | string
  /** Middle ± three deviations, or why there is no straight answer. */
  readonly straight: readonly [ValueText, ValueText] | string
  /** One set in 740 lies below the first, one above the last; the middle one is the median. Absent while nothing was counted. */
  readonly counted?: readonly [ValueText, ValueText, ValueText]
  /** `position of hole dip, x 34 %`: what its variance comes from, largest first, and the rest. */
  readonly drivers: readonly string[]
  /** How its numbers come about: counted, straight, worst case, contributions, correlations. */
  readonly workings: () => readonly Working[]
}

/** Contributions that are named. */
const DRIVERS_most = 4

/** Contributions below this share are not worth a word. */
const shareLeast = 0.01

/** Figures that are numbers, in the order of the requirements. */
export function spreadFigureRows(told: DesignSpread, units: UnitSystem = 'metric'): readonly SpreadFigureRow[] {
  const { figures, spread, sources } = told
  return figures.flatMap((figure, index) => {
    if (figure.unit === 'yes or no' || figure.unit === 'words') return []
    const { worst, straight, counted, contributions } = spread.figures[index]
    const set = (value: number): ValueText => setValue(value, figure.unit, units)
    const row: SpreadFigureRow = {
      id: figure.id,
      title: figure.title,
      worst: worstOf(worst, set),
      straight: straight.kind === 'linear' ? [set(straight.least), set(straight.most)] : straight.why,
      ...(counted && { counted: threeOf(counted.quantiles).map(set) as [ValueText, ValueText, ValueText] }),
      drivers: driversOf(contributions, sources),
      workings: () => figureWorkings(told, index),
    }
    return [row]
  })
}

/** Both ends; or that the set at one of them fails, or that the figure does not only rise or fall on the way. */
function worstOf(
  { least, most, isBounding }: SpreadFigure['worst'],
  set: (value: number) => ValueText,
): SpreadFigureRow['worst'] {
  const failure = least.failure ?? most.failure
  if (failure !== undefined) return `the set at a corner ${failure}`
  if (least.value === undefined || most.value === undefined) return 'the set at a corner has no value'
  return isBounding ? [set(least.value), set(most.value)] : 'no corner bounds it: it turns on the way'
}

function threeOf(quantiles: readonly number[]): readonly number[] {
  return [quantiles[0], quantiles[Math.floor(quantiles.length / 2)], quantiles[quantiles.length - 1]]
}

function driversOf(contributions: SpreadFigure['contributions'], sources: DesignSpread['sources']): readonly string[] {
  if (!contributions) return []
  const named = contributions.shares
    .map((share, index) => ({ share, words: sources[index].words }))
    .filter(({ share }) => share >= shareLeast)
    .sort((one, other) => other.share - one.share)
    .slice(0, DRIVERS_most)
  const told = named.reduce((sum, { share }) => sum + share, 0)
  return [
    ...named.map(({ share, words }) => `${words} ${wholePercent(share)}`),
    `others ${wholePercent(1 - told - contributions.rest)}`,
    `curved or together ${wholePercent(contributions.rest)}`,
  ]
}

/** A number stays with its sign when a line is broken. */
function wholePercent(share: number): string {
  return `${Math.round(100 * Math.max(0, share))}\u00a0%`
}

/** Of the wearers so many give what the set takes; none where wearers do not differ. */
export function wearerLines({ wearers }: DesignSpread): readonly OpenedLine[] {
  if (!wearers) return []
  const { met } = wearers
  return [
    {
      words: `The yield is for the wearer as stated. Of the wearers ${shareText(met.value, met)} (${intervalText(met)}) give what the set as drawn takes at the drive, and it meets every other requirement.`,
      workings: () => [
        shareWorking(
          met,
          'Wearers differ as the document says. One is served where the largest effort on the way to closed of the set as drawn is no more than that wearer gives, and every other requirement is met. They are not multiplied with the yield.',
        ),
      ],
    },
  ]
}
