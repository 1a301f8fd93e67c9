/**
 * Readings in the order of their making, and below them the steps from one to the next: what chance explains (thin lines, their values at the
 * right), what the drawing allows (dashed, at the left), and what stands out (a ring).
 */
import { element, lettering, line, type Place, pathThrough, type Shape } from '../drawing/svg.ts'
import { roundedBy, type StudiedLot } from './lot-rows.ts'
import { sizeText } from './plan-rows.ts'

const WIDTH_px = 520
const LEFT_px = 70
const RIGHT_px = 62
const EDGE_px = 14
const DOT_px = 2.5
const RING_px = 6
const RUN_px = 150
const STEPS_px = 90

/** @returns a drawing with its words; a study without control limits has none */
export function drawRun({ study, words, unit }: StudiedLot): Shape | undefined {
  const { values, control, limits, sample, signals } = study
  if (!control) return undefined
  const allowed = [limits.least, limits.most].filter((one) => one !== undefined)
  return drawTrace({
    label: `Readings of ${words} in order`,
    height_px: RUN_px,
    values: values.map((value, place) => ({ value, place })),
    places_count: values.length,
    levels: [
      ...allowed.map((value): Level => ({ value, className: 'bound', at: 'left' })),
      ...[control.least, control.most].map((value): Level => ({ value, className: 'grid', at: 'right' })),
      { value: sample.mean, className: 'zero', at: 'right' },
    ],
    ringed: signals,
    textOf: (value) => sizeText(allowed.includes(value) ? value : roundedBy(value, sample), unit, 'metric').number,
  })
}

/** @returns the steps from one reading to the next with their mean and the largest that chance explains; none without control limits */
export function drawSteps({ study, words, unit }: StudiedLot): Shape | undefined {
  const { values, control, sample } = study
  if (!control) return undefined
  const steps = values.slice(1).map((value, index) => ({ value: Math.abs(value - values[index]), place: index + 1 }))
  return drawTrace({
    label: `Steps of ${words} from one reading to the next`,
    height_px: STEPS_px,
    values: steps,
    places_count: values.length,
    levels: [
      { value: 0, className: 'axis', at: 'left' },
      { value: sample.movingRange, className: 'zero', at: 'right' },
      { value: control.stepMost, className: 'grid', at: 'right' },
    ],
    ringed: steps.flatMap(({ value, place }) => (value > control.stepMost ? [place] : [])),
    textOf: (value) => sizeText(roundedBy(value, sample), unit, 'metric').number,
  })
}

/** A value across the whole trace, with its number at one end. */
interface Level {
  readonly value: number
  readonly className: string
  readonly at: 'left' | 'right'
}

interface Trace {
  readonly label: string
  readonly height_px: number
  readonly values: readonly { readonly value: number; readonly place: number }[]
  readonly places_count: number
  readonly levels: readonly Level[]
  /** Places that stand out. */
  readonly ringed: readonly number[]
  readonly textOf: (value: number) => string
}

function drawTrace({ label, height_px, values, places_count, levels, ringed, textOf }: Trace): Shape {
  const heights = [...values, ...levels].map(({ value }) => value)
  const [low, high] = [Math.min(...heights), Math.max(...heights)]
  const yOf = (value: number): number => height_px - EDGE_px - ((value - low) / (high - low || 1)) * (height_px - 2 * EDGE_px)
  const [left, right] = [LEFT_px, WIDTH_px - RIGHT_px]
  const step = (right - left) / Math.max(1, places_count - 1)
  const placeOf = ({ value, place }: Trace['values'][number]): Place => ({ x: left + place * step, y: yOf(value) })
  const drawn = levels.flatMap(({ value, className, at }): readonly Shape[] => {
    const y = yOf(value)
    const label = at === 'left' ? { 'text-anchor': 'end', ...LABEL } : LABEL
    const x = at === 'left' ? left - LABEL_px : right + LABEL_px
    return [line({ x: left, y }, { x: right, y }, className), lettering(textOf(value), { x, y: y + HALF_LETTER_px }, label)]
  })
  const size = { viewBox: `0 0 ${WIDTH_px} ${height_px}`, width: WIDTH_px, height: height_px }
  return element(
    'svg',
    { class: 'drawing', xmlns: 'http://www.w3.org/2000/svg', role: 'img', 'aria-label': label, ...size },
    drawn,
    element('path', { d: pathThrough(values.map(placeOf), false), class: 'curve' }),
    values.map(placeOf).map(({ x, y }) => element('circle', { cx: x, cy: y, r: DOT_px, class: 'event' })),
    values
      .filter(({ place }) => ringed.includes(place))
      .map(placeOf)
      .map(({ x, y }) => element('circle', { cx: x, cy: y, r: RING_px, class: 'ring' })),
  )
}

const LABEL = { 'font-size': 10, class: 'axis' }
const LABEL_px = 6
const HALF_LETTER_px = 3
