/**
 * One plot over the travel: curves in one ink told apart by line type, their names at the ends of the lines, the unit at the axis, and a
 * pale stretch with a word where a quantity does not exist.
 */
import { scaleLinear } from 'd3-scale'
import { line as curveThrough } from 'd3-shape'
import { axisUnit, type Series } from '../../engine/index.ts'
import { textSize } from '../drawing/labels.ts'
import { element, lettering, line, px, type Shape } from '../drawing/svg.ts'
import type { ToldTravel } from '../tables/told.ts'
import { say } from '../tables/value-text.ts'
import type { PlotGroup } from './plot-groups.ts'
import { spread } from './spread-labels.ts'
import { axisRange, driveMarks, driveSign, driveStep } from './travel-axis.ts'

const MARGIN = { left: 52, top: 34, bottom: 30 }
/** Room for the names at the ends of the lines: as much as they need, but never more than this share of the width. */
const NAMES = { least_px: 90, most_ratio: 0.42, joint_px: 14 }
const CURVE_CLASSES = ['first', 'second', 'third', 'fourth']
const LABEL_PX = 12.5

/** Size on the sheet, and where the pointer stands; no pointer is drawn when it is absent. */
export interface PlotOptions {
  readonly width_px: number
  readonly height_px: number
  readonly pointer_ratio?: number
}

/** A plot with what a page needs to move a pointer over it. */
export interface Plot {
  readonly svg: Shape
  readonly width: number
  readonly height: number
  /** px on the sheet of a share of the travel. */
  readonly left: number
  readonly right: number
  readonly range: readonly [number, number]
}

interface Frame {
  readonly x: (arc_ratio: number) => number
  readonly y: (value: number) => number
  readonly ticks: readonly number[]
  /** Where the lines end and their names begin, px. */
  readonly right: number
  readonly options: PlotOptions
}

/** Draws one group of series over a travel. */
export function drawPlot(about: { readonly group: PlotGroup; readonly travel: ToldTravel }, options: PlotOptions): Plot {
  const { group, travel } = about
  const frame = frameOf(about, options)
  const content = [
    lettering(titleOf(group), { x: 0, y: 15 }, { class: 'plot-title', 'font-size': 14 }),
    gapsOf(about, frame),
    axisOf(about, frame),
    travelAxisOf(travel, frame),
    ...group.limits.map((limit) => {
      const y = frame.y(limit.value)
      return line({ x: MARGIN.left, y }, { x: frame.right, y }, 'bound')
    }),
    ...group.series.map((series, index) =>
      element('path', { d: curveOf(series, travel, frame), class: `curve ${CURVE_CLASSES[index % 4]}` }),
    ),
    endLabels(about, frame),
    pointerOf(frame),
  ]
  const attributes = {
    class: 'drawing plot',
    viewBox: `0 0 ${px(options.width_px)} ${px(options.height_px)}`,
    width: options.width_px,
    height: options.height_px,
    role: 'img',
    'aria-label': `${group.title} over the travel`,
    xmlns: 'http://www.w3.org/2000/svg',
  }
  const svg = element('svg', attributes, ...content)
  return {
    svg,
    width: options.width_px,
    height: options.height_px,
    left: MARGIN.left,
    right: frame.right,
    range: axisRange(travel),
  }
}

function frameOf({ group, travel }: { group: PlotGroup; travel: ToldTravel }, options: PlotOptions): Frame {
  const values = group.series
    .flatMap((series) => series.values.filter((value) => value !== undefined))
    .map((value) => shown(value, group))
  const limits = group.limits.map((limit) => shown(limit.value, group))
  const domain = [Math.min(0, ...values, ...limits), Math.max(0, ...values, ...limits)]
  const y = scaleLinear()
    .domain(domain[0] === domain[1] ? [domain[0], domain[0] + 1] : domain)
    .nice(5)
    .range([options.height_px - MARGIN.bottom, MARGIN.top])
  const right = options.width_px - namesRoom(group, options.width_px)
  const x = scaleLinear()
    .domain([...axisRange(travel)])
    .range([MARGIN.left, right])
  return { x, y: (value) => y(shown(value, group)), ticks: y.ticks(5), right, options }
}

function namesRoom(group: PlotGroup, width_px: number): number {
  const names = [...group.series.map(nameOf), ...group.limits.map((limit) => `${limit.words} 00.0°`)]
  const longest = Math.max(NAMES.least_px, ...names.map((name) => textSize(name, LABEL_PX).width + NAMES.joint_px))
  return Math.min(longest, NAMES.most_ratio * width_px)
}

/** Values as they are read at the axis, in the reader's unit. */
function shown(value: number, group: PlotGroup): number {
  return value * axisUnit(group.unit, group.units).factor
}

function titleOf(group: PlotGroup): string {
  const unit = group.unit === 'rad' ? 'degrees' : axisUnit(group.unit, group.units).unit
  return unit === '' ? group.title : `${group.title}, ${unit}`
}

function axisOf({ group }: { group: PlotGroup }, frame: Frame): readonly Shape[] {
  const { right } = frame
  const back = 1 / axisUnit(group.unit, group.units).factor
  return frame.ticks.flatMap((tick) => {
    const y = frame.y(tick * back)
    const number = lettering(
      tickText(tick),
      { x: MARGIN.left - 8, y: y + 4 },
      { class: 'axis', 'text-anchor': 'end', 'font-size': LABEL_PX },
    )
    return [line({ x: MARGIN.left, y }, { x: right, y }, tick === 0 ? 'zero' : 'grid'), number]
  })
}

function tickText(tick: number): string {
  return String(tick).replace('-', '−')
}

function travelAxisOf(travel: ToldTravel, frame: Frame): readonly Shape[] {
  const bottom = frame.options.height_px - MARGIN.bottom
  const { right } = frame
  const step = driveStep(travel, { width_px: right - MARGIN.left, apart_px: 56 })
  const marks = driveMarks(travel, step).flatMap((mark) => {
    const x = frame.x(mark.arc_ratio)
    const words = `${tickText(Math.round(mark.drive * 100) / 100)}${driveSign(travel)}`
    return [
      line({ x, y: bottom }, { x, y: bottom + 5 }, 'tick'),
      lettering(words, { x, y: bottom + 20 }, { class: 'axis', 'text-anchor': 'middle', 'font-size': LABEL_PX }),
    ]
  })
  return [line({ x: MARGIN.left, y: bottom }, { x: right, y: bottom }, 'axis-line'), ...marks]
}

function curveOf(series: Series, travel: ToldTravel, frame: Frame): string {
  const path = curveThrough<number | undefined>()
    .defined((value) => value !== undefined)
    .x((_, index) => frame.x(travel.postures[index].arc_ratio))
    .y((value) => frame.y(value ?? 0))
    .digits(2)
  return path([...series.values]) ?? ''
}

/** Names at the right ends of the curves and limits, moved apart where they would touch. */
function endLabels({ group }: { group: PlotGroup; travel: ToldTravel }, frame: Frame): readonly Shape[] {
  const { right } = frame
  const curves = group.series.flatMap((series) => {
    const last = series.values.findLast((value) => value !== undefined)
    return last === undefined ? [] : [{ words: nameOf(series), y: frame.y(last), className: 'name' }]
  })
  const limits = group.limits.map((limit) => {
    return { words: `${limit.words} ${say(limit.value, group.unit, group.units)}`, y: frame.y(limit.value), className: 'bound' }
  })
  const wanted = [...curves, ...limits]
  const placed = spread(
    wanted.map((label) => ({ at: label.y, length: 15 })),
    { least: MARGIN.top - 8, most: frame.options.height_px - MARGIN.bottom + 8 },
  )
  return wanted.flatMap(({ words, y, className }, index) => {
    const joint = line({ x: right, y }, { x: right + 8, y: placed[index] }, 'leader')
    return [joint, lettering(words, { x: right + 11, y: placed[index] + 4 }, { class: className, 'font-size': LABEL_PX })]
  })
}

/** Within a plot of efforts to close a series need not say `close:` again. */
function nameOf(series: Series): string {
  return series.title.replace(/^(close|hold): /, '')
}

/** Stretches where no series has a value. */
function gapsOf({ group, travel }: { group: PlotGroup; travel: ToldTravel }, frame: Frame): readonly Shape[] {
  const missing = travel.postures.map((_, index) => group.series.some((series) => series.values[index] === undefined))
  const starts = missing.flatMap((gone, index) => (gone && !missing[index - 1] ? [index] : []))
  return starts.flatMap((start) => {
    const after = missing.indexOf(false, start)
    const end = after === -1 ? missing.length - 1 : after
    const from = frame.x(travel.postures[Math.max(0, start - 1)].arc_ratio)
    const to = frame.x(travel.postures[end].arc_ratio)
    const box = {
      x: from,
      y: MARGIN.top,
      width: Math.max(2, to - from),
      height: frame.options.height_px - MARGIN.top - MARGIN.bottom,
    }
    const words = to - from > 96 ? 'does not exist here' : to - from > 30 ? 'none' : ''
    const word = lettering(
      words,
      { x: (from + to) / 2, y: MARGIN.top + 14 },
      { class: 'axis', 'text-anchor': 'middle', 'font-size': 12 },
    )
    return [element('rect', { ...box, class: 'gap' }), word]
  })
}

function pointerOf(frame: Frame): readonly Shape[] {
  const { pointer_ratio, height_px } = frame.options
  if (pointer_ratio === undefined) return []
  const x = frame.x(pointer_ratio)
  return [line({ x, y: MARGIN.top }, { x, y: height_px - MARGIN.bottom }, 'pointer')]
}
