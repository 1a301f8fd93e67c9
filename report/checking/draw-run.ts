/** Readings in the order of their making, with what chance explains (thin lines), what the drawing allows (dashed), and what stands out (a ring). */
import { element, lettering, line, type Place, pathThrough, type Shape } from '../drawing/svg.ts'
import type { StudiedLot } from './lot-rows.ts'
import { sizeText } from './plan-rows.ts'

const WIDTH_px = 520
const HEIGHT_px = 150
const LEFT_px = 70
const EDGE_px = 14
const DOT_px = 2.5
const RING_px = 6

/** @returns a drawing with its words; a study without control limits has none */
export function drawRun({ study, words, unit }: StudiedLot): Shape | undefined {
  const { values, control, limits, sample, signals } = study
  if (!control) return undefined
  const heights = [...values, control.least, control.most, ...[limits.least, limits.most].filter((one) => one !== undefined)]
  const [low, high] = [Math.min(...heights), Math.max(...heights)]
  const span = high - low || 1
  const yOf = (value: number): number => HEIGHT_px - EDGE_px - ((value - low) / span) * (HEIGHT_px - 2 * EDGE_px)
  const step = (WIDTH_px - LEFT_px - EDGE_px) / Math.max(1, values.length - 1)
  const places = values.map((value, index): Place => ({ x: LEFT_px + index * step, y: yOf(value) }))
  const level = (value: number | undefined, className: string): readonly Shape[] => {
    if (value === undefined) return []
    const y = yOf(value)
    const label = lettering(sizeText(value, unit, 'metric').number, { x: LEFT_px - 6, y: y + 3 }, LABEL)
    return [line({ x: LEFT_px, y }, { x: WIDTH_px - EDGE_px, y }, className), label]
  }
  const head = {
    class: 'drawing',
    xmlns: 'http://www.w3.org/2000/svg',
    role: 'img',
    'aria-label': `Readings of ${words} in order`,
  }
  return element(
    'svg',
    { ...head, viewBox: `0 0 ${WIDTH_px} ${HEIGHT_px}`, width: WIDTH_px, height: HEIGHT_px },
    level(limits.least, 'bound'),
    level(limits.most, 'bound'),
    [control.least, control.most].map((value) =>
      line({ x: LEFT_px, y: yOf(value) }, { x: WIDTH_px - EDGE_px, y: yOf(value) }, 'grid'),
    ),
    line({ x: LEFT_px, y: yOf(sample.mean) }, { x: WIDTH_px - EDGE_px, y: yOf(sample.mean) }, 'zero'),
    element('path', { d: pathThrough(places, false), class: 'curve' }),
    places.map(({ x, y }) => element('circle', { cx: x, cy: y, r: DOT_px, class: 'event' })),
    signals.map((place) => element('circle', { cx: places[place].x, cy: places[place].y, r: RING_px, class: 'ring' })),
  )
}

const LABEL = { 'text-anchor': 'end', 'font-size': 10, class: 'axis' }
