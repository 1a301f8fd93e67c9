/** Rows of what to change about a design so that more of its sets behave, and of the friction that it bears. */
import {
  axisUnit,
  type DesignSpread,
  type FigureUnit,
  frictionWorking,
  gainWorking,
  type OfferedSize,
  priceWorking,
  type SpreadChange,
  type SurvivedFriction,
  stopWorking,
  type UnitSystem,
  type Working,
} from '../../engine/index.ts'
import { fixedText } from './fixed-text.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'
import { say, setValue } from './value-text.ts'

/** Units that tolerances are told in. */
const offerUnits: Partial<Record<OfferedSize['kind'], FigureUnit>> = { length: 'mm', angle: 'rad', force: 'N', couple: 'N·mm' }

/** Sides of a tolerance that differ by no more are even. */
const rounding_ratio = 1e-9

/** One change, and what it gives. */
export interface AdviceRow {
  /** `halve the tolerance of dimension topLinkLength`. */
  readonly change: string
  /** `+1.2 %` of the sets. */
  readonly gain: string
  /** `+0.6 to +1.8 %`. */
  readonly interval: string
  /** How its numbers come about. */
  readonly workings: () => readonly Working[]
}

/** Changes with their gains, then where the stop would have to stand; empty without advice. */
export function adviceRows({ advice }: DesignSpread, units: UnitSystem = 'metric'): readonly AdviceRow[] {
  if (!advice) return []
  const { changes, stop } = advice
  const rows = changes.map(({ gain, ...change }) => {
    return { change: changeWords(change), ...gainTexts(gain), workings: () => [gainWorking(gain)] }
  })
  if (!stop) return rows
  const way = stop.setBack_mm < 0 ? 'bring the stop forward' : 'set the stop back'
  const change = `${way} by ${setBackText(Math.abs(stop.setBack_mm), units)}: the middle between jam and slip`
  return [...rows, { change, ...gainTexts(stop.gain), workings: () => [stopWorking(stop), gainWorking(stop.gain)] }]
}

/** To a hundredth of a millimetre, or to half a thousandth of an inch: what a shop sets. */
function setBackText(by_mm: number, units: UnitSystem): string {
  const { unit, factor } = axisUnit('mm', units)
  return `${(by_mm * factor).toFixed(units === 'inch' ? 4 : 2)} ${unit}`
}

const factorWords: Readonly<Record<number, string>> = { 0.5: 'halve the tolerance of', 2: 'double the tolerance of' }

function changeWords({ kind, groups, factor }: Omit<SpreadChange, 'gain'>): string {
  const verb = factorWords[factor] ?? `${kind} by ${factor} the tolerance of`
  const [first] = groups
  return groups.length === 1
    ? `${verb} ${first.words}`
    : `${verb} all ${groups.length} that hardly tell (${first.words} and below)`
}

function gainTexts({ value, least, most }: SpreadChange['gain']): Pick<AdviceRow, 'gain' | 'interval'> {
  const signed = (share: number): string => `${share > 0 ? '+' : ''}${fixedText(100 * share, 1)}`
  return { gain: `${signed(value)} %`, interval: `${signed(least)} to ${signed(most)} %` }
}

/** `topLinkLength at ±0.03 mm: …`: what a shop's offer does to the share of sets that meet everything. */
export function offerLines({ offers = [] }: DesignSpread, units: UnitSystem = 'metric'): readonly OpenedLine[] {
  return offers.map(({ size, typed, gain }) => {
    const { gain: change, interval } = gainTexts(gain)
    const now = `${(100 * gain.before).toFixed(1)} %`
    return {
      words: `${size.words} at ${typed} instead of ${drawnText(size, units)}: the share of sets that meet everything changes by ${change} (${interval}) from ${now}, ${gain.samples} sets judged both ways`,
      workings: () => [gainWorking(gain)],
    }
  })
}

/** `±0.01 mm`, `+0.02 mm/−0.01 mm`, or the width of a zone: the tolerance that is drawn. */
export function drawnText(
  { drawn, isZone, kind }: Pick<OfferedSize, 'drawn' | 'isZone' | 'kind'>,
  units: UnitSystem = 'metric',
): string {
  const said = (value: number): string => say(value, offerUnits[kind] ?? '1', units)
  if (isZone) return `a zone of ${said(drawn.upper)}`
  if (Math.abs(drawn.upper + drawn.lower) <= rounding_ratio * drawn.upper) return `±${said(drawn.upper)}`
  return [drawn.upper, drawn.lower].map((side) => (side < 0 ? said(side) : `+${said(side)}`)).join('/')
}

/**
 * `21 crowns a set: topLinkLength at ±0.02 mm, … as drawn: 98.4 % of sets meet everything (97.1 to 99.7 %)`, the cheapest first, then which of
 * them is the cheapest that reaches the target; empty where no tolerance has a price.
 */
export function priceLines({ advice, asked, design }: DesignSpread): readonly OpenedLine[] {
  const { prices = [] } = advice ?? {}
  if (prices.length === 0) return []
  const currency = design.making?.currency ?? ''
  const money = (price: number): string => `${price.toFixed(2)} ${currency}`.trim()
  const lines = prices.map((point) => {
    const { price, choices, gain } = point
    const chosen = choices
      .map(({ size, typed }) => `${size.words} ${typed === undefined ? 'as drawn' : `at ${typed}`}`)
      .join(', ')
    const { value, least, most } = yieldOf(gain)
    return {
      words: `${money(price)} a set: ${chosen}. ${percent(value)} of the sets meet everything (${(100 * least).toFixed(1)} to ${percent(most)}; ${gain.samples} sets judged both ways)`,
      workings: () => [priceWorking(point), gainWorking(gain)],
    }
  })
  const target = percent(asked.target_ratio)
  const cheapest = prices.find(({ gain }) => yieldOf(gain).value >= asked.target_ratio)
  const verdict = cheapest
    ? `The cheapest of those judged that comes to ${target} on these sets: ${money(cheapest.price)}`
    : `None of those judged comes to ${target} on these sets`
  return [...lines, plainLine(verdict)]
}

/** Share of sets that meet everything after a change; the interval is that of the change. */
function yieldOf({ before, value, least, most }: SpreadChange['gain']): Readonly<Record<'value' | 'least' | 'most', number>> {
  const within = (share: number): number => Math.min(1, Math.max(0, before + share))
  return { value: within(value), least: within(least), most: within(most) }
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

/** `film: 0.05 to 0.21 moving (0.06 to 0.25 at rest); below, carryKeeper; above, letsGo`: what the design bears, all else as drawn. */
export function frictionLines({ advice, design, sources }: DesignSpread): readonly OpenedLine[] {
  if (advice?.friction.length === 0 && sources.some(({ id }) => id.startsWith('friction.')))
    return [plainLine('Not told, because as drawn a requirement is not met already.')]
  return (advice?.friction ?? []).map((survived) => {
    const { pair, least, most } = survived
    const drawn = design.frictionPairs.find(({ name }) => name === pair)
    const number = (value: number): string => setValue(value, '1').number
    const range = `${number(least.moving)} to ${number(most.moving)} moving (${number(least.rest)} to ${number(most.rest)} at rest)`
    return {
      words: `${pair}: ${range}; ${beyondWords(least, 'below')}; ${beyondWords(most, 'above')}`,
      workings: () => (drawn ? [frictionWorking(survived, drawn)] : []),
    }
  })
}

function beyondWords({ beyond }: SurvivedFriction['least'], side: string): string {
  return beyond.length === 0 ? `${side}, nothing falls short as far as was looked` : `${side}, ${beyond.join(', ')}`
}
