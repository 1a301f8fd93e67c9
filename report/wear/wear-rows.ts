/** The life of a finger as rows: requirements, films, what is worn, and the curves as numbers. Page and command line share them. */
import {
  type Design,
  figureNames,
  type Life,
  type LifeFinding,
  showFigure,
  shownFigure,
  type Wear,
  yearsOf,
} from '../../engine/index.ts'
import { figureName } from '../sentences/figure-name.ts'
import { marks } from '../tables/marks.ts'

/** One requirement over the stated life. */
export interface LifeRow {
  readonly verdict: LifeFinding['verdict']
  readonly mark: string
  readonly figure: string
  /** After how many closings and years it is no longer met. */
  readonly atMost: string
  readonly atLikely: string
}

/** What stands over the columns of `lifeRows`. */
export const lifeHeads: Omit<LifeRow, 'verdict'> = {
  mark: '',
  figure: 'what is required',
  atMost: 'no longer met after, at most wear',
  atLikely: 'at likely wear',
}

/** One row a requirement, the first to fall short at the most wear first. */
export function lifeRows(design: Design, life: Life): readonly LifeRow[] {
  const titles = new Map(figureNames(design).map((name) => [name.id, figureName(name)]))
  return life.findings.map(({ verdict, figure, untilMost, untilLikely, becomes }) => ({
    verdict,
    mark: `${marks[verdict].character} ${marks[verdict].word}`,
    figure: titles.get(figure) ?? figure,
    atMost: `${untilWords(design, life.most, untilMost)}${becomes === 'undecided' ? ' (undecided then)' : ''}`,
    atLikely: untilWords(design, life.likely, untilLikely),
  }))
}

/** Between groups of digits: a line is never broken there. */
const NO_BREAK = '\u00a0'

/** Closings with three digits, in groups of three that stay on one line: `196 000`. */
export function closingsWords(closings: number): string {
  const round = Number(closings.toPrecision(3))
  return String(Math.round(round)).replace(/\B(?=(\d{3})+$)/g, NO_BREAK)
}

/** Years with two digits: `0.48 years`. */
export function yearsWords(design: Design, closings: number): string {
  if (!design.use) return ''
  const years = Number(yearsOf(design.use, closings).toPrecision(2))
  return years === 1 ? '1 year' : `${years} years`
}

function untilWords(design: Design, wear: Wear, until: number | undefined): string {
  if (until !== undefined) return `${closingsWords(until)}, ${yearsWords(design, until)}`
  return `holds for ${closingsWords(wear.end_closings)}`
}

/** One pin, hole or stop that wears. */
export interface PlaceRow {
  readonly place: string
  readonly rubbed: string
  /** At the end that was looked at. */
  readonly atMost: string
  readonly atLikely: string
  /** Closings after which its film is gone. */
  readonly bareAtMost: string
  readonly bareAtLikely: string
}

/** What stands over the columns of `placeRows`. */
export const placeHeads: PlaceRow = {
  place: 'what wears',
  rubbed: 'rubs a closing',
  atMost: 'worn at the end, most',
  atLikely: 'likely',
  bareAtMost: 'film gone after, most',
  bareAtLikely: 'likely',
}

/** One row a hole or stop. */
export function placeRows({ most, likely }: Life): readonly PlaceRow[] {
  return most.places.map(({ at, part, depth_mm, rubbed_Nm }, index) => ({
    place: part === undefined ? `stop ${at.id}` : `pin ${at.id} in ${part}`,
    rubbed: `${shownFigure(rubbed_Nm, '1').number} N·m`,
    atMost: microns(depth_mm),
    atLikely: microns(likely.places[index].depth_mm),
    bareAtMost: bareWords(most, at),
    bareAtLikely: bareWords(likely, at),
  }))
}

const MICRONS_A_MM = 1000

/** Two digits, as nothing more is known of wear: `8.9 µm`. */
export function microns(depth_mm: number): string {
  return `${Number((depth_mm * MICRONS_A_MM).toPrecision(2))} µm`
}

function bareWords({ films }: Wear, at: Wear['films'][number]['at']): string {
  const film = films.find((one) => one.at.kind === at.kind && one.at.id === at.id)
  return film ? closingsWords(film.closings) : '–'
}

/** The finger after some of the closings. */
export interface CurveRow {
  readonly closings: string
  readonly years: string
  readonly margins: readonly string[]
  readonly returnMargin: string
  readonly tipPlay: string
}

/** Rows of a curve that are printed. */
const CURVE_ROWS = 9

/** Some of the points of a life, from new to the end, evenly by number. */
export function curveRows({ points }: Wear): readonly CurveRow[] {
  const step = Math.max(1, (points.length - 1) / (CURVE_ROWS - 1))
  const chosen = [...new Set(Array.from({ length: CURVE_ROWS }, (_, row) => Math.min(points.length - 1, Math.round(row * step))))]
  return chosen
    .map((index) => points[index])
    .map(({ closings, years, margins_rad, returnMargin, tipPlay_mm }) => ({
      closings: closingsWords(closings),
      years: String(Number(years.toPrecision(2))),
      margins: margins_rad.map((margin) => (margin === undefined ? '–' : showFigure(margin, 'rad'))),
      returnMargin: returnMargin === undefined ? '–' : shownFigure(returnMargin, '1').number,
      tipPlay: tipPlay_mm === undefined ? '–' : showFigure(tipPlay_mm, 'mm'),
    }))
}
