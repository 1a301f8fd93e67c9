/**
 * The hold-window ruler: one axis of degrees short of dead centre, with the margin at which the sets stand above the rule, and below it
 * where they jam (left) and where the load slips (right). What of the margin lies outside is told in words at each line.
 */
import { scaleLinear } from 'd3-scale'
import { type CountedShare, type DesignSpread, type FigureSpread, quantileShares } from '../../engine/index.ts'
import { fileText } from '../drawing/file-text.ts'
import { element, lettering, line, px, type Shape } from '../drawing/svg.ts'
import { shareText } from '../tables/spread-rows.ts'
import { rulerFoot } from './ruler-foot.ts'
import { silhouette } from './silhouette.ts'

/** Below the last line of words. */
const BOTTOM_PX = 10
const SIDE_PX = 30
const RULE_PX = 112
const SILHOUETTE_PX = 62
const HANGING_PX = 34
const LABEL_PX = 12.5
const DEGREES_PER_RAD = 180 / Math.PI
/** Strokes of the rule nearer than this run together; numbers need more. */
const STROKE_ROOM_PX = 4
const NUMBER_ROOM_PX = 44
/** Room beside the outermost set, as a share of the range. */
const BESIDE_ratio = 0.06

interface Ruled {
  readonly margin: FigureSpread
  readonly jam: FigureSpread
  readonly slip: FigureSpread
}

/** @returns a drawing, or undefined where the design has no hold window or no set has one */
export function drawHoldWindow(told: DesignSpread, options: { readonly width_px: number }): Shape | undefined {
  const { window, figures } = told.spread
  if (!window) return undefined
  const { margin, jam, slip, loadCase } = window.watched
  const [margins, jams, slips] = [margin, jam, slip].map((index) => figures[index].counted)
  if (!margins || !jams || !slips) return undefined
  const ruled = { margin: margins, jam: jams, slip: slips }
  const x = scaleOf(ruled, options.width_px)
  const at = (angle: number): number => x(angle * DEGREES_PER_RAD)
  const foot = footOf(told, { ruled, width_px: options.width_px, loadCase })
  const height = px(foot.end_px + BOTTOM_PX)
  const nominal = told.spread.plan.steps.middle.values[margin]
  const content = [
    silhouette(margins, at, { y: RULE_PX, height: -SILHOUETTE_PX, className: 'part' }),
    silhouette(jams, at, { y: RULE_PX, height: HANGING_PX, className: 'friction' }),
    silhouette(slips, at, { y: RULE_PX, height: HANGING_PX, className: 'friction' }),
    ...rule(x, options.width_px),
    bound(medianOf(jams), x),
    bound(medianOf(slips), x),
    ...pointer(nominal, x),
    ...words(ruled, x),
    ...foot.shapes,
  ]
  const attributes = {
    ...{ class: 'drawing hold-window', viewBox: `0 0 ${px(options.width_px)} ${height}`, width: options.width_px },
    ...{
      height,
      role: 'img',
      'aria-label': 'Margin of the sets between jam and slip',
      xmlns: 'http://www.w3.org/2000/svg',
    },
  }
  return element('svg', attributes, ...content)
}

/** The ruler as a file that needs no other; undefined as above. */
export function holdWindowFile(told: DesignSpread, options: { readonly width_px: number }): string | undefined {
  const svg = drawHoldWindow(told, options)
  return svg && fileText(svg)
}

type Scale = ReturnType<typeof scaleLinear<number, number>>

/** From the sets that jam latest and stand innermost to those that slip first and stand outermost, all but one in 740 of each. */
function scaleOf({ margin, jam, slip }: Ruled, width_px: number): Scale {
  const last = quantileShares.length - 1
  const least = Math.min(margin.quantiles[0], jam.quantiles[0]) * DEGREES_PER_RAD
  const most = Math.max(margin.quantiles[last], slip.quantiles[last]) * DEGREES_PER_RAD
  const beside = BESIDE_ratio * (most - least)
  return scaleLinear([least - beside, most + beside], [SIDE_PX, width_px - SIDE_PX]).clamp(true)
}

const STEPS_deg = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 45]
const STROKES_PX = { long: 12, fine: 6 }

function rule(x: Scale, width_px: number): readonly Shape[] {
  const [least, most] = x.domain()
  const px_deg = (width_px - 2 * SIDE_PX) / (most - least)
  const stepFor = (room: number): number => STEPS_deg.find((step) => step * px_deg >= room) ?? STEPS_deg[STEPS_deg.length - 1]
  const [fine, numbered] = [stepFor(STROKE_ROOM_PX), stepFor(NUMBER_ROOM_PX)]
  const marks = (step: number): number[] => {
    const first = Math.ceil(least / step)
    return Array.from({ length: Math.max(0, Math.floor(most / step) - first + 1) }, (_, index) => (first + index) * step)
  }
  const stroke = (at: number, length: number): Shape => line({ x: x(at), y: RULE_PX }, { x: x(at), y: RULE_PX + length }, 'tick')
  const numbers = marks(numbered).flatMap((at) => {
    const text = `${Number(at.toFixed(2))}°`.replace('-', '−')
    const place = { x: x(at), y: RULE_PX + HANGING_PX + 18 }
    return [
      stroke(at, STROKES_PX.long),
      lettering(text, place, { class: 'axis', 'text-anchor': 'middle', 'font-size': LABEL_PX }),
    ]
  })
  const beam = line({ x: SIDE_PX, y: RULE_PX }, { x: width_px - SIDE_PX, y: RULE_PX }, 'axis-line')
  return [beam, ...marks(fine).map((at) => stroke(at, STROKES_PX.fine)), ...numbers]
}

function bound(value: number, x: Scale): Shape {
  const place = x(value * DEGREES_PER_RAD)
  return line({ x: place, y: RULE_PX - SILHOUETTE_PX - 12 }, { x: place, y: RULE_PX + HANGING_PX + 4 }, 'bound')
}

function pointer(nominal: number, x: Scale): readonly Shape[] {
  if (Number.isNaN(nominal)) return []
  const place = x(nominal * DEGREES_PER_RAD)
  return [element('path', { d: `M${px(place)} ${px(RULE_PX - 1)}l-4.5 -9h9z`, class: 'event' })]
}

function medianOf({ quantiles }: FigureSpread): number {
  return quantiles[quantileShares.indexOf(0.5)]
}

function words(ruled: Ruled, x: Scale): readonly Shape[] {
  const above = RULE_PX - SILHOUETTE_PX - 6
  const said = (text: string, at_px: number, anchor: 'start' | 'end'): Shape =>
    lettering(text, { x: at_px, y: above }, { class: 'event-words', 'text-anchor': anchor, 'font-size': LABEL_PX })
  const at = (of: FigureSpread): number => x(medianOf(of) * DEGREES_PER_RAD)
  return [
    lettering('Where the sets stand between jam and slip', { x: SIDE_PX, y: 15 }, { class: 'plot-title', 'font-size': 14 }),
    said('jams', at(ruled.jam) + 5, 'start'),
    said('slips', at(ruled.slip) - 5, 'end'),
  ]
}

interface Footed {
  readonly ruled: Ruled
  readonly width_px: number
  readonly loadCase: string
}

function footOf({ spread }: DesignSpread, { ruled, width_px, loadCase }: Footed): ReturnType<typeof rulerFoot> {
  const share = (of: CountedShare | undefined): string => (of ? shareText(of.value, of) : '')
  return rulerFoot({
    left: `${share(spread.window?.jammed)} stand inside the jam`,
    right: `${share(spread.window?.slipped)} slip: ${loadCase}`,
    caption: `degrees short of dead centre; above the rule the closed margin of ${ruled.margin.samples} sets, below it their jam and slip`,
    ...{ from_px: SIDE_PX, to_px: width_px - SIDE_PX, y_px: RULE_PX + HANGING_PX + 38, size_px: LABEL_PX },
  })
}
