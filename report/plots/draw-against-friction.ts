/**
 * The hold window against friction: across the friction at rest of one pair, upwards the degrees short of dead centre. Three bands from the
 * least to the most of the sets in each slice of friction: where they jam, where they stand, where the load slips.
 */
import { scaleLinear } from 'd3-scale'
import type { AgainstFriction, FrictionSlice } from '../../engine/index.ts'
import { element, lettering, line, type Place, pathThrough, px, type Shape } from '../drawing/svg.ts'
import { wrappedWords } from '../drawings/corner-marks.ts'
import { widthOf } from '../drawings/ink.ts'

const PLOT = { left: 52, right: 62, top: 34, height: 170 }
const LABEL_PX = 12.5
const TITLE_PX = 14
const LINE_PX = 18
const DEGREES_PER_RAD = 180 / Math.PI
/** Numbers at the axes: some five. */
const NUMBERS = 5
/** Room above and below the outermost sets, as a share of the range. */
const BESIDE_ratio = 0.06

type Scale = ReturnType<typeof scaleLinear<number, number>>
type BandName = 'jam' | 'margin' | 'slip'

interface Frame {
  readonly x: Scale
  readonly y: Scale
}

/** @returns a drawing; undefined where fewer than two slices hold sets */
export function drawAgainstFriction(
  { pair, slices }: AgainstFriction,
  { width_px }: { readonly width_px: number },
): Shape | undefined {
  if (slices.length < 2) return undefined
  const title = wrappedWords(`Where they stand at each friction of ${pair.name}`, width_px, TITLE_PX)
  const top = PLOT.top + (title.length - 1) * LINE_PX
  const bottom = top + PLOT.height
  const frame = frameOf(slices, { width_px, top, bottom })
  const caption = wrappedWords(
    'coefficient at rest; upwards degrees short of dead centre, from the least to the most of the sets',
    width_px,
    LABEL_PX,
  )
  const height = bottom + 40 + caption.length * LINE_PX
  const content = [
    ...title.map((words, index) =>
      lettering(words, { x: 0, y: 15 + index * LINE_PX }, { class: 'plot-title', 'font-size': TITLE_PX }),
    ),
    ...(['jam', 'slip', 'margin'] as const).map((name) => band(slices, name, frame)),
    ...axes(frame, { width_px, bottom }),
    ...names(slices, frame, width_px),
    ...caption.map((words, index) =>
      lettering(words, { x: 0, y: bottom + 44 + index * LINE_PX }, { class: 'caption', 'font-size': LABEL_PX }),
    ),
  ]
  const attributes = {
    ...{ class: 'drawing against-friction', viewBox: `0 0 ${px(width_px)} ${px(height)}`, width: width_px, height: px(height) },
    ...{ role: 'img', 'aria-label': `Jam, closed margin and slip of the sets against friction of ${pair.name}` },
    xmlns: 'http://www.w3.org/2000/svg',
  }
  return element('svg', attributes, ...content)
}

interface Room {
  readonly width_px: number
  readonly top: number
  readonly bottom: number
}

function frameOf(slices: readonly FrictionSlice[], { width_px, top, bottom }: Room): Frame {
  const all = slices.flatMap(({ margin, jam, slip }) => [margin, jam, ...(slip ? [slip] : [])])
  const least = Math.min(...all.map((one) => one.least)) * DEGREES_PER_RAD
  const most = Math.max(...all.map((one) => one.most)) * DEGREES_PER_RAD
  const beside = BESIDE_ratio * (most - least)
  return {
    x: scaleLinear([slices[0].from, slices[slices.length - 1].to], [PLOT.left, width_px - PLOT.right]),
    y: scaleLinear([least - beside, most + beside], [bottom, top]),
  }
}

/** From the least to the most of each slice, in steps. */
function band(slices: readonly FrictionSlice[], name: BandName, { x, y }: Frame): Shape {
  const edge = (end: 'least' | 'most'): Place[] =>
    slices.flatMap((slice) => {
      const { [name]: angles } = slice
      if (!angles) return []
      const height = y(angles[end] * DEGREES_PER_RAD)
      return [
        { x: x(slice.from), y: height },
        { x: x(slice.to), y: height },
      ]
    })
  const className = name === 'margin' ? 'part' : 'friction'
  return element('path', { d: pathThrough([...edge('most'), ...edge('least').reverse()], true), class: className })
}

function axes({ x, y }: Frame, { width_px, bottom }: Pick<Room, 'width_px' | 'bottom'>): readonly Shape[] {
  const small = { class: 'axis', 'font-size': LABEL_PX }
  const friction = x.tickFormat(NUMBERS)
  const across = x
    .ticks(NUMBERS)
    .flatMap((at) => [
      line({ x: x(at), y: bottom }, { x: x(at), y: bottom + 6 }, 'tick'),
      lettering(friction(at), { x: x(at), y: bottom + 22 }, { ...small, 'text-anchor': 'middle' }),
    ])
  const upwards = y
    .ticks(NUMBERS)
    .flatMap((at) => [
      line({ x: PLOT.left - 6, y: y(at) }, { x: PLOT.left, y: y(at) }, 'tick'),
      lettering(`${at}°`.replace('-', '−'), { x: PLOT.left - 10, y: y(at) + LABEL_PX / 3 }, { ...small, 'text-anchor': 'end' }),
    ])
  const corner = { x: PLOT.left, y: bottom }
  return [
    line(corner, { x: width_px - PLOT.right, y: bottom }, 'axis-line'),
    line(corner, { x: PLOT.left, y: y.range()[1] }, 'axis-line'),
    ...across,
    ...upwards,
  ]
}

const SAID: Readonly<Record<BandName, string>> = { jam: 'jams', margin: 'stands', slip: 'slips' }

/** Behind the last slice of each band; where two would cover each other the upper one gives way. */
function names(slices: readonly FrictionSlice[], { x, y }: Frame, width_px: number): readonly Shape[] {
  let lowest = Number.POSITIVE_INFINITY
  return (['jam', 'margin', 'slip'] as const)
    .flatMap((name) => {
      const last = slices.findLast((slice) => slice[name])
      return last === undefined ? [] : [{ name, to: last.to, middle: last[name]?.middle ?? 0 }]
    })
    .sort((one, other) => one.middle - other.middle)
    .map(({ name, to, middle }) => {
      const at = Math.min(y(middle * DEGREES_PER_RAD) + LABEL_PX / 3, lowest)
      lowest = at - LABEL_PX
      const from = Math.min(x(to) + 8, width_px - widthOf(SAID[name], LABEL_PX))
      return lettering(SAID[name], { x: from, y: at }, { class: 'event-words', 'text-anchor': 'start', 'font-size': LABEL_PX })
    })
}
