import type { Checked, Problem } from '../../design/problem.ts'
import { quoted } from '../../numbers/quote.ts'
import type { Variation } from '../sources/source.ts'
import { noSuchSize, type Offer, type OfferedSize, offeredSizes, readOffer } from './offer.ts'

/** One tolerance of a size, and what a set costs more or less by it. */
export interface PricedTolerance {
  readonly price: number
  /** Absent for the tolerance that is drawn. */
  readonly offer?: Offer
}

/** A size whose tolerances have prices, the drawn one first. */
export interface PricedSize {
  readonly size: OfferedSize
  readonly tolerances: readonly PricedTolerance[]
}

/** Sizes whose tolerances have prices in the document; problems where there is no such size, or no such tolerance of it. */
export function pricedSizes(variation: Variation): Checked<readonly PricedSize[]> {
  const { prices = [] } = variation.design.variation ?? {}
  const problems: Problem[] = []
  const sizes = prices.flatMap(({ size: name, drawn, offers }, index): PricedSize[] => {
    const place = `variation.prices.${index}`
    const size = offeredSizes(variation).find((one) => one.name === name)
    if (!size) {
      problems.push({ ...noSuchSize(variation, name), place: `${place}.size`, found: quoted(name) })
      return []
    }
    const offered = offers.map(({ tolerance, price }, at): PricedTolerance => {
      const { value, problems: faults = [] } = readOffer(variation, `${name}=${tolerance}`)
      problems.push(...faults.map((problem) => ({ ...problem, place: `${place}.offers.${at}.tolerance` })))
      return { price, ...(value && { offer: value }) }
    })
    return [{ size, tolerances: [{ price: drawn }, ...offered] }]
  })
  return problems.length > 0 ? { problems } : { value: sizes }
}
