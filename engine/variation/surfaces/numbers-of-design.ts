/** The numbers behind the requirements of a design: figures, with the bound that each has to stay above or below. */
import type { Design, Requirement } from '../../design/design.ts'
import { figureNames } from '../../design/figure-names.ts'
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

/** Figures by their ids, of the design as drawn. */
export type DrawnFigures = ReadonlyMap<string, Figure>

/** @returns why not, where some requirement has no number behind it */
export function numbersOfDesign(design: Design, drawn: DrawnFigures): readonly FigureBehind[] | NoSurface {
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

/** Ids of figures that may stand behind a design's requirements, whatever they come to. */
export function figuresBehind(design: Design): readonly string[] {
  return design.requirements.flatMap((asked) => behindOf(design, asked, undefined).map(({ figure }) => figure))
}

/** @param drawn absent: all that may stand behind it */
function behindOf(design: Design, { figure, bound }: Requirement, drawn: DrawnFigures | undefined): readonly Behind[] {
  if (bound.kind === 'is') return bound.value === usual(figure) ? behindYesOrNo(design, figure, drawn) : []
  const sense = bound.kind === 'atLeast' ? 1 : -1
  const itself: Behind = { figure, bound: bound.value, sense, isWhole: true }
  if (figure === 'strength.least' && sense === 1) return strengthChecks(design).map((check) => ({ ...itself, figure: check }))
  const [, loadCase, tail] = figure.split('.')
  if (tail !== 'letGoUnderLoadEffort' || sense === 1) return [itself]
  // Where it opens by itself no effort is needed, and none can be told apart from another.
  const reserve: Behind = above(`loadCase.${loadCase}.letGoUnderLoadReserve`, { isWhole: false })
  if (drawn === undefined) return [itself, reserve]
  return numberAt(drawn, reserve.figure) > 0 ? [reserve] : [itself]
}

/** The answer that is wanted of a yes or no: anything but running into each other. */
function usual(figure: string): boolean {
  return figure !== 'motion.collides'
}

function behindYesOrNo(design: Design, figure: string, drawn: DrawnFigures | undefined): readonly Behind[] {
  const [, loadCase, tail] = figure.split('.')
  if (figure === 'return.letsGo') return [above('return.reserveFromRest', { isWhole: true })]
  if (figure === 'motion.collides') return [above('motion.clearance', { isWhole: false })]
  if (tail === 'holdsByItself') return [above(`loadCase.${loadCase}.holdReserve`, { isWhole: true })]
  if (figure !== 'motion.closes') return []
  const angles = design.parts.flatMap(({ id, role }) => (role === 'link' ? [`motion.transmissionAngle.${id}.least`] : []))
  const margins = design.toggles.map(({ id }) => `closed.toggle.${id}.deadCentreMargin`)
  const open = [...angles, ...margins].map((id) => above(id, { isWhole: false }))
  return [...open, ...rangeLeft(design, drawn)].filter((one) => drawn === undefined || !Number.isNaN(numberAt(drawn, one.figure)))
}

/** What is left of the drive's range at the stop. */
function rangeLeft({ drive: { travel } }: Design, drawn: DrawnFigures | undefined): readonly Behind[] {
  const sense = travel.closed > travel.open ? -1 : 1
  const left: Behind = { figure: 'closed.drive', bound: travel.closed, sense, isWhole: false }
  // A finger that is meant to end at its range has none left, in any set.
  return drawn !== undefined && numberAt(drawn, left.figure) === travel.closed ? [] : [left]
}

function above(figure: string, { isWhole }: Pick<Behind, 'isWhole'>): Behind {
  return { figure, bound: 0, sense: 1, isWhole }
}

function strengthChecks(design: Design): readonly string[] {
  const ids = figureNames(design).map(({ id }) => id)
  return ids.filter((id) => id.startsWith('strength.') && id !== 'strength.least' && id !== 'strength.givesFirst')
}

function numberAt(drawn: DrawnFigures, id: string): number {
  const { value } = drawn.get(id) ?? {}
  return typeof value === 'number' ? value : Number.NaN
}

/** The number of a figure: how far it stands on the right side of its bound; +∞ where nothing could bring it there, NaN without a value. */
export function numberIn(figure: Figure | undefined, { bound, sense }: Pick<FigureBehind, 'bound' | 'sense'>): number {
  if (typeof figure?.value === 'number') return sense * (figure.value - bound)
  const isBeyond = figure?.beyond === (sense === 1 ? 'above any' : 'below any')
  return isBeyond ? Number.POSITIVE_INFINITY : Number.NaN
}
