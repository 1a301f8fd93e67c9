/**
 * Margin, return and play over the closings, one above the other: the likely wear as a full line, the most as a dashed one, the stated life
 * as an upright line.
 */
import { scaleLinear } from 'd3-scale'
import { line as curveThrough } from 'd3-shape'
import { axisUnit, type Design, type FigureUnit, type Life, type WearPoint } from '../../engine/index.ts'
import { element, lettering, line, px, type Shape } from '../drawing/svg.ts'
import { closingsWords } from './wear-rows.ts'

const SHEET = { width_px: 720, panel_px: 170, foot_px: 34 }
const MARGIN = { left: 56, right: 120, top: 34, bottom: 14 }
const LABEL_PX = 12.5

interface Panel {
  readonly title: string
  readonly unit: FigureUnit
  readonly value: (point: WearPoint) => number | undefined
}

/** Draws the curves of a life; a curve that exists nowhere is left out. */
export function drawWear(design: Design, life: Life): Shape {
  const panels = panelsOf(design).filter(({ value }) => life.likely.points.some((point) => value(point) !== undefined))
  const height = panels.length * SHEET.panel_px + SHEET.foot_px
  const x = scaleLinear()
    .domain([0, Math.max(life.likely.end_closings, life.most.end_closings, life.most.life_closings)])
    .range([MARGIN.left, SHEET.width_px - MARGIN.right])
  const attributes = {
    class: 'drawing plot',
    viewBox: `0 0 ${px(SHEET.width_px)} ${px(height)}`,
    width: SHEET.width_px,
    height,
    role: 'img',
    'aria-label': 'margin, return and play over the closings',
    xmlns: 'http://www.w3.org/2000/svg',
  }
  const drawn = panels.flatMap((panel, index) => panelOf({ panel, life, x }, index * SHEET.panel_px))
  return element('svg', attributes, drawn, closingsAxis(x, height - SHEET.foot_px))
}

function panelsOf({ toggles }: Design): readonly Panel[] {
  const margins = toggles.map(({ id }, index): Panel => {
    return { title: `Dead-centre margin of ${id}, closed`, unit: 'rad', value: ({ margins_rad }) => margins_rad[index] }
  })
  return [
    ...margins,
    { title: 'Return reserve from rest', unit: 'N·mm per pin', value: ({ returnReserve_Nmm }) => returnReserve_Nmm },
    { title: 'Play of the tip', unit: 'mm', value: ({ tipPlay_mm }) => tipPlay_mm },
  ]
}

type Scale = ReturnType<typeof scaleLinear<number>>

interface Drawn {
  readonly panel: Panel
  readonly life: Life
  readonly x: Scale
}

function panelOf({ panel, life, x }: Drawn, top: number): readonly Shape[] {
  const { unit, factor } = axisUnit(panel.unit)
  const shown = (point: WearPoint): number | undefined => {
    const value = panel.value(point)
    return value === undefined ? undefined : value * factor
  }
  const values = [life.likely, life.most].flatMap(({ points }) => points.map(shown).filter((value) => value !== undefined))
  const bottom = top + SHEET.panel_px - MARGIN.bottom
  const y = scaleLinear()
    .domain([Math.min(0, ...values), Math.max(0, ...values)])
    .nice(4)
    .range([bottom, top + MARGIN.top])
  const right = x.range()[1]
  const axis = y
    .ticks(4)
    .flatMap((tick) => [
      line({ x: MARGIN.left, y: y(tick) }, { x: right, y: y(tick) }, tick === 0 ? 'zero' : 'grid'),
      lettering(
        String(tick).replace('-', '−'),
        { x: MARGIN.left - 8, y: y(tick) + 4 },
        { class: 'axis', 'text-anchor': 'end', 'font-size': LABEL_PX },
      ),
    ])
  const life_px = x(life.most.life_closings)
  const curves = (
    [
      ['likely', 'curve first'],
      ['most', 'curve second'],
    ] as const
  ).map(([level, className]) => element('path', { d: curveOf(life[level].points, { x, y, shown }), class: className }))
  const title = `${panel.title}, ${unit === '°' ? 'degrees' : unit}`
  const words = lettering(title, { x: 0, y: top + 15 }, { class: 'plot-title', 'font-size': 14 })
  return [
    words,
    ...axis,
    line({ x: life_px, y: top + MARGIN.top }, { x: life_px, y: bottom }, 'bound'),
    ...curves,
    ...endNames({ life, x, y, shown }),
  ]
}

interface Curve {
  readonly x: Scale
  readonly y: Scale
  readonly shown: (point: WearPoint) => number | undefined
}

function curveOf(points: readonly WearPoint[], { x, y, shown }: Curve): string {
  const path = curveThrough<WearPoint>()
    .defined((point) => shown(point) !== undefined)
    .x(({ closings }) => x(closings))
    .y((point) => y(shown(point) ?? 0))
    .digits(2)
  return path([...points]) ?? ''
}

function endNames({ life, x, y, shown }: Curve & { readonly life: Life }): readonly Shape[] {
  return (['likely', 'most'] as const).flatMap((level) => {
    const last = life[level].points.findLast((point) => shown(point) !== undefined)
    if (!last) return []
    const at = { x: x(last.closings) + 6, y: y(shown(last) ?? 0) + 4 }
    return [lettering(`${level} wear`, at, { class: 'name', 'font-size': LABEL_PX })]
  })
}

function closingsAxis(x: Scale, at: number): readonly Shape[] {
  const [left, right] = x.range()
  const ticks = x
    .ticks(5)
    .flatMap((tick) => [
      line({ x: x(tick), y: at }, { x: x(tick), y: at + 5 }, 'tick'),
      lettering(
        closingsWords(tick),
        { x: x(tick), y: at + 20 },
        { class: 'axis', 'text-anchor': 'middle', 'font-size': LABEL_PX },
      ),
    ])
  const name = lettering('closings', { x: right + 11, y: at + 4 }, { class: 'name', 'font-size': LABEL_PX })
  return [line({ x: left, y: at }, { x: right, y: at }, 'axis-line'), ...ticks, name]
}
