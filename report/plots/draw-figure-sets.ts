/**
 * Where the sets stand in one figure: their silhouette over an axis of the figure's own unit, a stroke at the median, and the bound that the design
 * asks for.
 */
import { scaleLinear } from 'd3-scale'
import { axisUnit, type DesignSpread, type FigureSpread, quantileShares, type UnitSystem } from '../../engine/index.ts'
import { element, lettering, line, px, type Shape } from '../drawing/svg.ts'
import { wrappedWords } from '../drawings/corner-marks.ts'
import { say } from '../tables/value-text.ts'
import { silhouette } from './silhouette.ts'

const SIDE_PX = 30
const RULE_PX = 84
const SILHOUETTE_PX = 54
/** Where the words below the axis begin, and from line to line. */
const CAPTION_PX = 114
const LINE_PX = 18
const LABEL_PX = 12.5
/** Numbers at the axis: one in so many px. */
const NUMBER_ROOM_PX = 90
/** Room beside the outermost set or bound, as a share of the range. */
const BESIDE_ratio = 0.06

/** Which figure, and how it is drawn. */
export interface FigureSetsAsked {
  /** Id of the figure. */
  readonly id: string
  readonly width_px: number
  readonly units: UnitSystem
}

/** @returns a drawing; undefined where no set has a value, or all have the same */
export function drawFigureSets(told: DesignSpread, { id, width_px, units }: FigureSetsAsked): Shape | undefined {
  const index = told.figures.findIndex((figure) => figure.id === id)
  const counted = told.spread.figures[index]?.counted
  if (!counted || !(counted.most > counted.least)) return undefined
  const { title, unit } = told.figures[index]
  const { factor, unit: shownUnit } = axisUnit(unit, units)
  const bounds = told.requirements.flatMap(({ figure, bound }) => (figure === id && bound.kind !== 'is' ? [bound.value] : []))
  const near = bounds.filter((bound) => isNear(bound, counted))
  const x = scaleOf(
    [counted.least, counted.most, ...near].map((value) => value * factor),
    width_px,
  )
  const at = (value: number): number => x(value * factor)
  const inUnit = unit === 'rad' ? 'degrees' : shownUnit === '' ? 'without a unit' : shownUnit
  const caption = wrappedWords(
    `${inUnit}; the height of each step is the number of sets in it, of ${counted.samples} in ${counted.histogram.length} steps`,
    width_px - 2 * SIDE_PX,
    LABEL_PX,
  )
  const height = CAPTION_PX + caption.length * LINE_PX
  const content = [
    silhouette(counted, at, { y: RULE_PX, height: -SILHOUETTE_PX, className: 'part' }),
    ...axis(x, width_px),
    ...medianMark(counted, at),
    ...bounds.flatMap((bound) => {
      const words = `asked: ${say(bound, unit, units)}`
      return near.includes(bound) ? boundMark(words, at(bound), width_px) : [farWords(words, bound < counted.least, width_px)]
    }),
    ...caption.map((words, index) =>
      lettering(words, { x: SIDE_PX, y: CAPTION_PX + 12 + index * LINE_PX }, { class: 'caption', 'font-size': LABEL_PX }),
    ),
  ]
  const attributes = {
    ...{ class: 'drawing figure-sets', viewBox: `0 0 ${px(width_px)} ${height}`, width: width_px, height },
    ...{ role: 'img', 'aria-label': `Where the sets stand in ${title}`, xmlns: 'http://www.w3.org/2000/svg' },
  }
  return element('svg', attributes, ...content)
}

type Scale = ReturnType<typeof scaleLinear<number, number>>

function scaleOf(values: readonly number[], width_px: number): Scale {
  const [least, most] = [Math.min(...values), Math.max(...values)]
  const beside = BESIDE_ratio * (most - least)
  return scaleLinear([least - beside, most + beside], [SIDE_PX, width_px - SIDE_PX])
}

function axis(x: Scale, width_px: number): readonly Shape[] {
  const count = Math.max(2, Math.floor((width_px - 2 * SIDE_PX) / NUMBER_ROOM_PX))
  const text = x.tickFormat(count)
  const numbers = x
    .ticks(count)
    .flatMap((value) => [
      line({ x: x(value), y: RULE_PX }, { x: x(value), y: RULE_PX + 6 }, 'tick'),
      lettering(
        text(value).replace('-', '−'),
        { x: x(value), y: RULE_PX + 22 },
        { class: 'axis', 'text-anchor': 'middle', 'font-size': LABEL_PX },
      ),
    ])
  return [line({ x: SIDE_PX, y: RULE_PX }, { x: width_px - SIDE_PX, y: RULE_PX }, 'axis-line'), ...numbers]
}

function medianMark({ quantiles }: FigureSpread, at: (value: number) => number): readonly Shape[] {
  const place = at(quantiles[quantileShares.indexOf(0.5)])
  return [element('path', { d: `M${px(place)} ${px(RULE_PX - 1)}l-4.5 -9h9z`, class: 'event' })]
}

/** A bound farther off than this, in ranges of the sets, would leave them no width. */
const FAR_ratio = 2

function isNear(bound: number, { least, most }: FigureSpread): boolean {
  const far = FAR_ratio * (most - least)
  return bound >= least - far && bound <= most + far
}

/** A bound that lies beyond the drawing, at the side on which it lies. */
function farWords(words: string, isLeft: boolean, width_px: number): Shape {
  const place = { x: isLeft ? SIDE_PX : width_px - SIDE_PX, y: RULE_PX - SILHOUETTE_PX - 8 }
  return lettering(`${words}, farther ${isLeft ? 'left' : 'right'}`, place, {
    class: 'event-words',
    'text-anchor': isLeft ? 'start' : 'end',
    'font-size': LABEL_PX,
  })
}

/** Its words stand on the side that has more room. */
function boundMark(words: string, place: number, width_px: number): readonly Shape[] {
  const isLeft = place < width_px / 2
  return [
    line({ x: place, y: RULE_PX - SILHOUETTE_PX - 18 }, { x: place, y: RULE_PX + 6 }, 'bound'),
    lettering(
      words,
      { x: place + (isLeft ? 5 : -5), y: RULE_PX - SILHOUETTE_PX - 8 },
      { class: 'event-words', 'text-anchor': isLeft ? 'start' : 'end', 'font-size': LABEL_PX },
    ),
  ]
}
