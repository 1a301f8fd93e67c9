import { type MeasuredSpread, quantileShares, type UnitSystem } from '../../engine/index.ts'
import { asSentence } from '../sentences/words.ts'
import { intervalText, shareText } from '../tables/spread-rows.ts'
import { joined, setValue } from '../tables/value-text.ts'

/** `In 100 % of the ways that the readings leave open (94 to 100 %, from 64 counted) it meets every requirement.` */
export function measuredYieldSentence({ yields, open }: MeasuredSpread): string {
  const { met, undecided } = yields.all
  const counted = `${shareText(met.value, met)} (${intervalText(met)}, from ${met.samples} counted)`
  const left = undecided.value > 0 ? `; in ${shareText(undecided.value, undecided)} it cannot be decided` : ''
  const varied = `${open.length} sizes, springs and frictions still vary: not measured, or left open by the gauge`
  return `${asSentence(`the yield for this set is ${counted}${left}`)} ${asSentence(varied)}`
}

/** A figure of a set with the range in which nine of ten ways lie that are still open. */
export interface MeasuredFigureRow {
  readonly id: string
  readonly title: string
  readonly middle: string
  readonly range: string
}

/** Shares whose quantiles bound nine of ten ways. */
const ENDS = [0.05, 0.5, 0.95] as const

/** Rows of the figures that are numbers and vary. */
export function measuredFigureRows({ figures }: MeasuredSpread, system: UnitSystem = 'metric'): readonly MeasuredFigureRow[] {
  return figures.flatMap(({ id, title, unit, counted }) => {
    if (!counted || counted.deviation === 0) return []
    const [least, middle, most] = ENDS.map((share) => {
      return joined(setValue(counted.quantiles[quantileShares.indexOf(share)], unit, system))
    })
    return [{ id, title, middle, range: `${least} to ${most}` }]
  })
}
