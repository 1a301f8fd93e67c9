/** A worn finger, judged as any other. */
import { yearsOf } from '../../design/closings.ts'
import type { Design } from '../../design/design.ts'
import { figureNames } from '../../design/figure-names.ts'
import { type AskedEvaluation, askedFigures, evaluateAsked } from '../../evaluate-asked.ts'
import { readyFor } from '../../figures/ready-finger.ts'
import { tipPlay } from '../../forces/states.ts'
import type { Mechanism } from '../../motion/mechanism.ts'
import type { WearPoint } from './wear.ts'
import { stopDepths, type WearRates, type WearState } from './wear-state.ts'
import { wornDesign } from './worn-design.ts'

/** A state of wear with its design and what is said of it. */
export interface Inspected {
  readonly state: WearState
  readonly design: Design
  readonly evaluation: AskedEvaluation
}

/**
 * @param mechanism as new
 * @param rates that the state was reached at; absent for the finger as new, whose stops are whole
 */
export function inspect(mechanism: Mechanism, state: WearState, rates?: WearRates): Inspected {
  const depths = rates ? stopDepths(state, rates) : state.stops.map(() => 0)
  const design = wornDesign(mechanism, state, depths)
  return { state, design, evaluation: evaluateAsked(design, watchedOf(mechanism.design)) }
}

/** Every dead-centre margin that a figure gives: closed, under load, at let-go. */
const MARGIN = /(deadCentreMargin|loadedMargin)$/

const RETURN = ['return.margin', 'return.reserveFromRest', 'return.letsGo']

const watched = new WeakMap<Design, ReadonlySet<string>>()

/** Figures that requirements, steps and curves ask for; kept as long as the design is. */
function watchedOf(design: Design): ReadonlySet<string> {
  const margins = figureNames(design).filter(({ id }) => MARGIN.test(id))
  const found = watched.get(design) ?? askedFigures(design, [...margins.map(({ id }) => id), ...RETURN])
  watched.set(design, found)
  return found
}

/** Largest change of any margin from one to the other, rad; margins that only one has do not count. */
export function largestMarginMove(from: Inspected, to: Inspected): number {
  const before = new Map(from.evaluation.figures.map(({ id, value }) => [id, value]))
  return to.evaluation.figures.reduce((most, { id, value }) => {
    const was = before.get(id)
    if (!MARGIN.test(id) || typeof value !== 'number' || typeof was !== 'number') return most
    return Math.max(most, Math.abs(value - was))
  }, 0)
}

/** Whether the springs open it again, from any rest, everywhere. */
export function letsGo({ evaluation }: Pick<Inspected, 'evaluation'>): boolean {
  return evaluation.figures.some(({ id, value }) => id === 'return.letsGo' && value === true)
}

/** What the curves over the closings show. */
export function pointOf({ state, design, evaluation }: Inspected): WearPoint {
  const value = (id: string): number | undefined => {
    const found = evaluation.figures.find((figure) => figure.id === id)?.value
    return typeof found === 'number' ? found : undefined
  }
  const returnMargin = value('return.margin')
  const returnReserve_Nmm = value('return.reserveFromRest')
  const tipPlay_mm = playOfTip(design)
  return {
    closings: state.closings,
    years: design.use ? yearsOf(design.use, state.closings) : Number.NaN,
    margins_rad: design.toggles.map(({ id }) => value(`closed.toggle.${id}.deadCentreMargin`)),
    ...(returnMargin !== undefined && { returnMargin }),
    ...(returnReserve_Nmm !== undefined && { returnReserve_Nmm }),
    ...(tipPlay_mm !== undefined && { tipPlay_mm }),
  }
}

function playOfTip(design: Design): number | undefined {
  const ready = readyFor(design)
  const { tip, parts } = design
  return ready && tip && tipPlay(ready.closed, { part: tip.part, at: parts[tip.part].pads[tip.pad].at })
}
