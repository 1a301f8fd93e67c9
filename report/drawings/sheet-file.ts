/** A finished sheet as a drawing: every attribute stands on its element, so that a page, a file and a typesetter show the same. */
import { type Attribute, element, lettering, pathThrough, type Shape } from '../drawing/svg.ts'
import type { Ink, LineType } from './ink.ts'
import type { Paper } from './paper.ts'

/** A sheet that goes to the shop. */
export interface Sheet {
  /** Name of its file, without an ending. */
  readonly name: string
  readonly title: string
  readonly paper: Paper
  readonly ink: readonly Ink[]
}

const DASHES: Readonly<Record<LineType, string | undefined>> = {
  wide: undefined,
  narrow: undefined,
  hidden: '2 1',
  centre: '6 1 1 1',
  apart: '4 1.4 0.1 1.4',
}
const WIDE = 0.5
const NARROW = 0.25
/** Black ink on paper; a page gives its own. */
const INK = '#1d2733'

/** The sheet as one element, its size in millimetres. */
export function sheetShape({ title, paper, ink }: Sheet): Shape {
  const { width, height } = paper
  const root = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${width} ${height}`,
    width: `${width}mm`,
    height: `${height}mm`,
    color: INK,
    fill: 'none',
    role: 'img',
    'aria-label': title,
    'font-family': "'Source Sans 3', 'Helvetica Neue', Arial, sans-serif",
    class: 'shop-sheet',
  }
  return element('svg', root, ink.map(inkShape))
}

function inkShape(one: Ink): Shape {
  switch (one.kind) {
    case 'line':
      return element('line', { x1: one.from.x, y1: one.from.y, x2: one.to.x, y2: one.to.y, ...lineStyle(one.type) })
    case 'circle': {
      const style = one.filled ? { fill: 'currentColor' } : lineStyle(one.type)
      return element('circle', { cx: one.at.x, cy: one.at.y, r: one.radius, ...style })
    }
    case 'head':
      return element('path', { d: pathThrough(one.corners, true), fill: 'currentColor' })
    case 'words':
      return lettering(one.words, one.at, {
        'font-size': one.size,
        fill: 'currentColor',
        'text-anchor': one.side,
        ...(one.heavy && { 'font-weight': '600' }),
        ...(one.turned && { transform: `rotate(-90 ${one.at.x.toFixed(2)} ${one.at.y.toFixed(2)})` }),
      })
  }
}

function lineStyle(type: LineType): Readonly<Record<string, Attribute>> {
  const dashes = DASHES[type]
  return {
    stroke: 'currentColor',
    'stroke-width': type === 'wide' || type === 'apart' ? WIDE : NARROW,
    'stroke-linecap': 'round',
    ...(dashes !== undefined && { 'stroke-dasharray': dashes }),
  }
}
