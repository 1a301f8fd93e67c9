/** The answer to Spread in one plain sentence: how many sets behave so, what falls short most often, and what that comes from. */
import { type DesignSpread, targetVerdict } from '../../engine/index.ts'
import { intervalText, shareText } from '../tables/spread-rows.ts'
import { figureName } from './figure-name.ts'
import { asSentence } from './words.ts'

/** What Spread asks. */
export const spreadAsks = 'Will every set behave so, with the shop’s tolerances and the coater’s thickness?'

/** `97.3 % of sets meet every requirement`, for a list of questions. */
export function spreadWords({ spread }: DesignSpread): string {
  const { met } = spread.yields.all
  return `${shareText(met.value, met)} of sets meet every requirement`
}

/** One sentence. */
export function spreadSentence(told: DesignSpread): string {
  const { sources, requirements, spread } = told
  if (requirements.length === 0) return 'The design states no requirements, so there is nothing that sets could fall short of.'
  if (sources.length === 0)
    return 'The design states no tolerance, no coating range and no friction range: every set is like the drawing.'
  const { met } = spread.yields.all
  const counted = `${shareText(met.value, met)} of sets meet every requirement (${intervalText(met)}, from ${met.samples} counted)`
  return asSentence(
    [`${counted}, ${targetWords(told)}`, surfaceClause(told), worstClause(told), driverClause(told)]
      .filter((one) => one !== '')
      .join('; '),
  )
}

function targetWords({ asked, verdict, spread }: DesignSpread): string {
  const target = `${Number((100 * asked.target_ratio).toPrecision(6))} %`
  if (verdict === 'undecided') return `which leaves it undecided whether ${target} do: count more`
  const by = targetVerdict(spread.yields.all, asked.target_ratio) === verdict ? '' : 'by surfaces '
  return verdict === 'met' ? `which ${by}reaches the ${target} asked for` : `${by}short of the ${target} asked for`
}

/** Surfaces tell the same share closer; nothing where none were made. */
function surfaceClause({ surfaces }: DesignSpread): string {
  if (!surfaces || 'why' in surfaces) return ''
  const { all, judged_count } = surfaces
  return `surfaces through ${judged_count} judged sets say ${shareText(all.value, all)} (${intervalText(all)})`
}

/** The requirement that falls short most often; nothing when none does. */
function worstClause(told: DesignSpread): string {
  const worst = worstOf(told)
  if (worst === undefined) return ''
  const { id, title, short } = worst
  return `what falls short most often is ${figureName({ id, title })} (${shareText(short.value, short)})`
}

function worstOf({ spread, requirements, figures }: DesignSpread) {
  const { requirements: yields } = spread.yields
  const index = yields.reduce((worst, one, place) => (one.short.value > yields[worst].short.value ? place : worst), 0)
  const { short } = yields[index]
  if (short.value === 0) return undefined
  const figure = figures.findIndex(({ id }) => id === requirements[index].figure)
  return { figure, short, id: requirements[index].figure, title: figures[figure]?.title ?? requirements[index].figure }
}

function driverClause(told: DesignSpread): string {
  const worst = worstOf(told)
  const shares = worst && told.spread.figures[worst.figure]?.contributions?.shares
  if (!shares) return ''
  const top = shares.reduce((best, share, index) => (share > shares[best] ? index : best), 0)
  return `${Math.round(100 * shares[top])} % of its variance comes from ${told.sources[top].words}`
}
