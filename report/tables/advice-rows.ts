/** Rows of what to change about a design so that more of its sets behave, and of the friction that it bears. */
import type { DesignSpread, SpreadChange, SurvivedFriction } from '../../engine/index.ts'
import { setValue } from './value-text.ts'

/** One change, and what it gives. */
export interface AdviceRow {
  /** `halve the tolerance of dimension topLinkLength`. */
  readonly change: string
  /** `+1.2 %` of the sets. */
  readonly gain: string
  /** `+0.6 to +1.8 %`. */
  readonly interval: string
}

/** Changes with their gains, then where the stop would have to stand; empty without advice. */
export function adviceRows({ advice }: DesignSpread): readonly AdviceRow[] {
  if (!advice) return []
  const { changes, stop } = advice
  const rows = changes.map(({ gain, ...change }) => ({ change: changeWords(change), ...gainTexts(gain) }))
  if (!stop) return rows
  const way = stop.setBack_mm < 0 ? 'bring the stop forward' : 'set the stop back'
  const change = `${way} by ${Math.abs(stop.setBack_mm).toFixed(2)} mm: the middle between jam and slip`
  return [...rows, { change, ...gainTexts(stop.gain) }]
}

function changeWords({ kind, groups, factor }: Omit<SpreadChange, 'gain'>): string {
  const verb = kind === 'tighten' ? `take ${factor} of the tolerance of` : `give ${factor} times the tolerance to`
  const [first] = groups
  return groups.length === 1
    ? `${verb} ${first.words}`
    : `${verb} all ${groups.length} that hardly tell (${first.words} and below)`
}

function gainTexts({ value, least, most }: SpreadChange['gain']): Pick<AdviceRow, 'gain' | 'interval'> {
  const signed = (share: number): string => `${share > 0 ? '+' : ''}${(100 * share).toFixed(1)}`.replace('-', '−')
  return { gain: `${signed(value)} %`, interval: `${signed(least)} to ${signed(most)} %` }
}

/** `film: 0.05 to 0.21 moving (0.06 to 0.25 at rest); below, carryKeeper; above, letsGo`: what the design bears, all else as drawn. */
export function frictionLines({ advice }: DesignSpread): readonly string[] {
  return (advice?.friction ?? []).map(({ pair, least, most }) => {
    const number = (value: number): string => setValue(value, '1').number
    const range = `${number(least.moving)} to ${number(most.moving)} moving (${number(least.rest)} to ${number(most.rest)} at rest)`
    return `${pair}: ${range}; ${beyondWords(least, 'below')}; ${beyondWords(most, 'above')}`
  })
}

function beyondWords({ beyond }: SurvivedFriction['least'], side: string): string {
  return beyond.length === 0 ? `${side}, nothing falls short as far as was looked` : `${side}, ${beyond.join(', ')}`
}
