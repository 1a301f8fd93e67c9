/** The answer to Make in one plain sentence: what a finger is put together from, what it weighs, what a set costs and when it pays. */
import { batchCost, breakEven, type Design, type Making, partsList } from '../../engine/index.ts'
import { asSentence } from '../sentences/words.ts'
import { massText } from './item-rows.ts'
import { moneyText } from './money-text.ts'

/** What Make asks. */
export const makeAsks = 'What goes to the shop, what does a set weigh and cost?'

/** Sets of the batch that the sentence speaks of. */
const SAID_BATCH = 10

/** One sentence; what is not stated is not spoken of, and what is not weighed is said. */
export function makeSentence(design: Design): string {
  const { making } = design
  const clauses = [assemblyClause(design), ...(making ? [costClause(design, making), priceClause(design, making)] : [NO_PRICES])]
  return asSentence(clauses.filter((clause) => clause !== undefined).join('; '))
}

const NO_PRICES = 'what a set costs is not asked: the design states no prices (making)'

function assemblyClause(design: Design): string {
  const { items, mass_kg, unweighed } = partsList(design)
  const pieces = items.reduce((sum, { perFinger_count }) => sum + perFinger_count, 0)
  const together = `a finger is put together from ${pieces} pieces`
  if (unweighed.length === items.length) return `${together}, none of which can be weighed by what the design states`
  const { number, unit } = massText(mass_kg)
  const without = unweighed.length === 0 ? '' : `, without ${unweighed.length} of ${items.length} items that are not weighed`
  return `${together} and weighs ${number} ${unit}${without}`
}

/** `A set in a batch of 10: 746 crowns`, for a list of questions; what a finger weighs where no prices are stated. */
export function setCostWords(design: Design): string {
  const { making } = design
  if (making)
    return `A set in a batch of ${SAID_BATCH}: ${moneyText(batchCost(design, making, SAID_BATCH).perSet)} ${making.currency}`
  const { items, mass_kg, unweighed } = partsList(design)
  if (unweighed.length === items.length) return 'nothing can be weighed'
  const { number, unit } = massText(mass_kg)
  return `A finger weighs ${number} ${unit}`
}

function costClause(design: Design, making: Making): string {
  const { perSet } = batchCost(design, making, SAID_BATCH)
  const fingers = making.set_count === 1 ? 'one finger' : `${making.set_count} fingers`
  return `in a batch of ${SAID_BATCH} a set of ${fingers} costs ${moneyText(perSet)} ${making.currency}`
}

function priceClause(design: Design, making: Making): string | undefined {
  const found = breakEven(design, making)
  if (found === undefined) return undefined
  const price = `sold for ${moneyText(found.price)}`
  if (found.sets_count === undefined) return `${price}, no batch of up to ${found.tried_count} sets pays for itself`
  const cash = moneyText(batchCost(design, making, found.sets_count).total)
  const sets = found.sets_count === 1 ? 'a single set' : `a batch of ${found.sets_count} sets`
  return `${price}, ${sets} pays for itself and asks for ${cash} before the first is sold`
}
