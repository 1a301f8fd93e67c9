/** Costs of two designs side by side, in words. */
import type { BatchMove, CostMoved, SourceMove } from '../../engine/index.ts'
import { moneyText } from './money-text.ts'

/** Sources that are named; the rest is summed up. */
const NAMED = 6
/** The least amount that is shown. */
const CENT = 0.01
/** The batch whose sources are told: large enough to spread the set-up, small enough to be a first one. */
const TOLD_sets = 10

/** `A set costs 749 crowns in a batch of 10, 736 before; …. In a batch of 10 a set costs more or less for: screws, 1.26 more; …` */
export function costMovedSentence(moved: CostMoved): string {
  if (moved.kind === 'unpriced') return UNPRICED[moved.which]
  if (moved.kind === 'other currency') {
    return `What a set costs is not compared: it is in ${moved.after}, and was in ${moved.before}.`
  }
  const { currency, batches, before_count, after_count } = moved
  const set = before_count === after_count ? 'A set' : `A set, of ${after_count} fingers and ${before_count} before,`
  const [first, ...others] = batches.map(batchWords)
  const costs = `${set} costs, in ${currency}, ${[first, ...others].join('; ')}.`
  const told = batches.find(({ sets_count }) => sets_count === TOLD_sets) ?? batches.at(-1)
  return told === undefined || told.moves.length === 0 ? costs : `${costs} ${sourcesWords(told)}`
}

const UNPRICED = {
  both: 'What a set costs is not compared: neither of the two states prices.',
  before: 'What a set costs is not compared: the earlier one states no prices.',
  after: 'What a set costs is not compared: this one states no prices.',
} as const

function batchWords({ sets_count, before, after }: BatchMove): string {
  return `${moneyText(after)} in a batch of ${sets_count}, ${wasWords(before, after)}`
}

function wasWords(before: number, after: number): string {
  if (moneyText(before) !== moneyText(after)) return `${moneyText(before)} before`
  return Math.abs(after - before) < CENT / 2 ? 'as before' : `${changeWords(after - before)} than before`
}

function sourcesWords({ sets_count, moves }: BatchMove): string {
  const rest = moves.slice(NAMED)
  const more = rest.reduce((sum, { before, after }) => sum + after - before, 0)
  const named = moves.slice(0, NAMED).map(sourceWords)
  const said = rest.length === 0 ? named : [...named, `${rest.length} others, ${changeWords(more)}`]
  return `Of one set in a batch of ${sets_count}: ${said.join('; ')}.`
}

const sourceWords = ({ words, before, after }: SourceMove): string => `${words}, ${changeWords(after - before)}`

function changeWords(more: number): string {
  const amount = Math.abs(more) < CENT / 2 ? `under ${moneyText(CENT)}` : moneyText(Math.abs(more))
  return `${amount} ${more < 0 ? 'less' : 'more'}`
}
