/** The numbers behind the requirements of a design: figures, with the bound that each has to stay above or below. */
import type { Design, Requirement } from '../../design/design.ts'
import { figureNames } from '../../design/figure-names.ts'
import type { AskedEvaluation } from '../../evaluate-asked.ts'
import type { Figure } from '../../figures/evaluation.ts'
import type { NoSurface, NumberBehind } from './surface-problem.ts'

/** A figure behind a requirement. */
export interface FigureBehind extends NumberBehind {
  readonly figure: string
  readonly bound: number
  /** 1: it has to be above its bound. */
  readonly sense: 1 | -1
}

type Behind = Pick<FigureBehind, 'figure' | 'bound' | 'sense' | 'isWhole'>

/** Values of figures: +∞ above any, −∞ below any, NaN for none. */
export type FigureValues = (figure: string) => number

/**
 * @param drawn of the design as drawn
 * @returns why not, where some requirement has no number behind it
 */
export function numbersOfDesign(design: Design, drawn: FigureValues): readonly FigureBehind[] | NoSurface {
  const titles = new Map(figureNames(design).map(({ id, title }) => [id, title]))
  const found: FigureBehind[] = []
  for (const [requirement, asked] of design.requirements.entries()) {
    const behind = behindOf(design, asked, drawn)
    const title = titles.get(asked.figure) ?? asked.figure
    if (behind.length === 0) return { why: `no number stands behind “${title}”` }
    found.push(...behind.map((one) => ({ ...one, requirement, words: titles.get(one.figure) ?? one.figure })))
  }
  return found
}

/** Ids of figures that may stand behind a design's requirements, whatever they come to; checks of strength come with the least of them. */
export function figuresBehind(design: Design): readonly string[] {
  const figures = design.requirements.flatMap((asked) => behindOf(design, asked, undefined).map(({ figure }) => figure))
  return figures.filter((figure) => !figure.startsWith(CHECK))
}

/** @param drawn absent: all that may stand behind it */
function behindOf(design: Design, { figure, bound }: Requirement, drawn: FigureValues | undefined): readonly Behind[] {
  if (bound.kind === 'is') return bound.value === usual(figure) ? behindYesOrNo(design, figure, drawn) : []
  const sense = bound.kind === 'atLeast' ? 1 : -1
  const itself: Behind = { figure, bound: bound.value, sense, isWhole: true }
  if (figure === 'strength.least' && sense === 1) return strengthChecks(design).map((check) => ({ ...itself, figure: check }))
  const [, loadCase, tail] = figure.split('.')
  if (tail !== 'letGoUnderLoadEffort' || sense === 1) return [itself]
  // Where it opens by itself no effort is needed, and none can be told apart from another.
  const reserve: Behind = above(`loadCase.${loadCase}.letGoUnderLoadReserve`, { isWhole: false })
  if (drawn === undefined) return [itself, reserve]
  return drawn(reserve.figure) > 0 ? [reserve] : [itself]
}

/** The answer that is wanted of a yes or no: anything but running into each other. */
function usual(figure: string): boolean {
  return figure !== 'motion.collides'
}

function behindYesOrNo(design: Design, figure: string, drawn: FigureValues | undefined): readonly Behind[] {
  const [, loadCase, tail] = figure.split('.')
  if (figure === 'return.letsGo') return [above('return.reserveFromRest', { isWhole: true })]
  if (figure === 'motion.collides') return [above('motion.clearance', { isWhole: false })]
  if (tail === 'holdsByItself') return [above(`loadCase.${loadCase}.holdReserve`, { isWhole: true })]
  if (figure !== 'motion.closes') return []
  const angles = design.parts.flatMap(({ id, role }) => (role === 'link' ? [`motion.transmissionAngle.${id}.least`] : []))
  const margins = design.toggles.map(({ id }) => `closed.toggle.${id}.deadCentreMargin`)
  const fromDeadCentre = [...angles, ...margins].flatMap((id): readonly Behind[] => {
    const value = drawn?.(id) ?? 0
    // A toggle that is drawn past dead centre has to stay past it.
    return Number.isNaN(value) ? [] : [{ ...above(id, { isWhole: false }), sense: value < 0 ? -1 : 1 }]
  })
  return [...fromDeadCentre, ...rangeLeft(design, drawn)]
}

/** What is left of the drive's range at the stop. */
function rangeLeft({ drive: { travel } }: Design, drawn: FigureValues | undefined): readonly Behind[] {
  const sense = travel.closed > travel.open ? -1 : 1
  const left: Behind = { figure: 'closed.drive', bound: travel.closed, sense, isWhole: false }
  // A finger that is meant to end at its range has none left, in any set.
  return drawn !== undefined && drawn(left.figure) === travel.closed ? [] : [left]
}

function above(figure: string, { isWhole }: Pick<Behind, 'isWhole'>): Behind {
  return { figure, bound: 0, sense: 1, isWhole }
}

function strengthChecks(design: Design): readonly string[] {
  const ids = figureNames(design).map(({ id }) => id)
  return ids.filter((id) => id.startsWith(CHECK) && id !== 'strength.least' && id !== 'strength.givesFirst')
}

const CHECK = 'strength.'

/** Values of what was asked of a design. A check that nothing presses bears any load. */
export function figureValues({ figures, strength }: AskedEvaluation): FigureValues {
  const byId = new Map(figures.map((figure) => [figure.id, figure]))
  const margins = new Map(strength?.ranked.map(({ figure, margin }) => [figure, margin]))
  const open = new Set(strength?.open.map(({ figure }) => figure))
  return (id) => {
    const figure = byId.get(id)
    if (figure) return valueOfFigure(figure)
    if (!strength || strength.unknown !== undefined || open.has(id)) return Number.NaN
    return margins.get(id) ?? Number.POSITIVE_INFINITY
  }
}

function valueOfFigure({ value, beyond }: Figure): number {
  if (typeof value === 'number') return value
  if (beyond === undefined) return Number.NaN
  return beyond === 'above any' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY
}

/** How far a figure stands on the right side of its bound. */
export function numberOf({ figure, bound, sense }: FigureBehind, values: FigureValues): number {
  return sense * (values(figure) - bound)
}
