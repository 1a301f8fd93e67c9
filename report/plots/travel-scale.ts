/**
 * The printed scale of the travel, engraved like the beam of a vernier: fine strokes each degree (or mm), longer ones at five and ten, the
 * numbers below, the events of the travel above. A pointer on it sets the posture of every drawing.
 */
import type { TravelEvent } from '../../engine/index.ts'
import { textSize } from '../drawing/labels.ts'
import { element, lettering, line, type Place, px, type Shape } from '../drawing/svg.ts'
import { fixedText } from '../tables/fixed-text.ts'
import type { ToldTravel } from '../tables/told.ts'
import { spread } from './spread-labels.ts'
import { axisRange, driveAt, driveMarks, driveSign, driveStep, readDrive, travelEnd } from './travel-axis.ts'

const HEIGHT_PX = 78
const SIDE_PX = 26
const BEAM_PX = 42
const LABEL_PX = 12.5
const STROKES_PX = { long: 16, middle: 11, fine: 6.5 }
/** Fine strokes nearer than this run together. */
const STROKE_ROOM_PX = 4

/** A scale with what a page needs to lay a pointer over it. */
export interface TravelScale {
  readonly svg: Shape
  readonly width: number
  readonly height: number
  readonly left: number
  readonly right: number
  readonly range: readonly [number, number]
}

/** Draws the scale for a width in px; the pointer is drawn when its place is given. */
export function drawTravelScale(
  travel: ToldTravel,
  options: { readonly width_px: number; readonly pointer_ratio?: number },
): TravelScale {
  const { width_px: width } = options
  const [left, right] = [SIDE_PX, width - SIDE_PX]
  const range = axisRange(travel)
  const x = (ratio: number): number => left + ((ratio - range[0]) / (range[1] - range[0])) * (right - left)
  const content = [
    line({ x: left, y: BEAM_PX }, { x: x(travelEnd(travel)), y: BEAM_PX }, 'axis-line'),
    line({ x: x(travelEnd(travel)), y: BEAM_PX }, { x: right, y: BEAM_PX }, 'beyond'),
    strokes(travel, x, right - left),
    eventMarks(travel, x, { left, right }),
    options.pointer_ratio === undefined ? [] : pointer({ x: x(options.pointer_ratio), y: BEAM_PX }),
  ]
  const attributes = {
    class: 'drawing travel-scale',
    viewBox: `0 0 ${px(width)} ${HEIGHT_PX}`,
    width,
    height: HEIGHT_PX,
    'aria-hidden': 'true',
    xmlns: 'http://www.w3.org/2000/svg',
  }
  return { svg: element('svg', attributes, ...content), width, height: HEIGHT_PX, left, right, range }
}

/** What the pointer reads: `MCP 62.4°` without the name; the events are named that the pointer stands on. */
export function readTravel(travel: ToldTravel, arc_ratio: number): string {
  const drive = `${fixedText(readDrive(travel, driveAt(travel, arc_ratio)), decimals(travel))}${driveSign(travel)}`
  const events = travel.events.filter((one) => Math.abs(one.arc_ratio - arc_ratio) < 5e-4)
  return [drive, ...events.map(shortWords)].join(', ')
}

/** A thousandth of an inch is what a tenth of a millimetre is elsewhere; degrees are read to a tenth. */
function decimals(travel: ToldTravel): number {
  return travel.driveUnit === 'mm' && travel.units === 'inch' ? 3 : 1
}

function strokes(travel: ToldTravel, x: (ratio: number) => number, room_px: number): readonly Shape[] {
  const numbered = driveStep(travel, { width_px: room_px, apart_px: 44 })
  const fine = numbered / 10
  const drives = travel.postures.map((posture) => readDrive(travel, posture.drive))
  const span = Math.max(...drives) - Math.min(...drives)
  const step = (room_px / span) * fine >= STROKE_ROOM_PX ? fine : numbered / 5
  const marks = driveMarks(travel, step).map(({ arc_ratio, drive }) => ({ place: x(arc_ratio), drive }))
  const lengthAt = (drive: number): number =>
    isMultiple(drive, numbered) ? STROKES_PX.long : isMultiple(drive, numbered / 2) ? STROKES_PX.middle : STROKES_PX.fine
  const d = marks.map(({ place, drive }) => `M${px(place)} ${BEAM_PX}v${lengthAt(drive)}`).join('')
  const numbers = marks
    .filter(({ drive }) => isMultiple(drive, numbered))
    .map(({ place, drive }) => {
      const words = `${Math.round(drive * 100) / 100}`.replace('-', '−')
      const at = { x: place, y: BEAM_PX + STROKES_PX.long + 14 }
      return lettering(words, at, { class: 'axis', 'text-anchor': 'middle', 'font-size': LABEL_PX })
    })
  return [element('path', { d, class: 'tick' }), ...numbers]
}

function isMultiple(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6
}

/** Events above the beam; events at one place share a mark. */
function eventMarks(travel: ToldTravel, x: (ratio: number) => number, room: { left: number; right: number }): readonly Shape[] {
  const events = gathered(travel.events)
  const places = spread(
    events.map((event) => ({ at: x(event.arc_ratio), length: textSize(event.words, LABEL_PX).width + 10 })),
    { least: room.left - SIDE_PX, most: room.right + SIDE_PX },
  )
  return events.flatMap((event, index) => {
    const mark = x(event.arc_ratio)
    const middle = places[index]
    const peak = { x: mark, y: BEAM_PX - 2 }
    const triangle = element('path', { d: `M${px(peak.x)} ${peak.y}l-4.5 -9h9z`, class: 'event' })
    const joint = line({ x: mark, y: BEAM_PX - 11 }, { x: middle, y: BEAM_PX - 20 }, 'leader')
    return [
      triangle,
      joint,
      lettering(
        event.words,
        { x: middle, y: BEAM_PX - 25 },
        { class: 'event-words', 'text-anchor': 'middle', 'font-size': LABEL_PX },
      ),
    ]
  })
}

const EVENT_WORDS: Record<TravelEvent['kind'], string> = {
  open: 'open',
  closed: 'closed',
  stop: 'stop',
  fold: 'drive turns back',
  deadCentre: 'dead centre',
  jam: 'jams at rest',
  runJam: 'jams moving',
  slip: 'slips',
  worstReturn: 'weakest return',
}

function shortWords(event: TravelEvent): string {
  return EVENT_WORDS[event.kind]
}

function gathered(events: readonly TravelEvent[]): readonly { readonly arc_ratio: number; readonly words: string }[] {
  const places: { arc_ratio: number; words: string[] }[] = []
  for (const event of events.filter((one) => one.arc_ratio >= -1e-9 && one.arc_ratio < 1.5)) {
    const same = places.find((place) => Math.abs(place.arc_ratio - event.arc_ratio) < 2e-3)
    if (same === undefined) places.push({ arc_ratio: event.arc_ratio, words: [shortWords(event)] })
    else if (!same.words.includes(shortWords(event))) same.words.push(shortWords(event))
  }
  return places.map(({ arc_ratio, words }) => ({ arc_ratio, words: words.join(', ') }))
}

function pointer(at: Place): readonly Shape[] {
  const d = `M${px(at.x)} ${px(at.y)}l-7 14h14z`
  return [line({ x: at.x, y: 4 }, { x: at.x, y: at.y }, 'pointer'), element('path', { d, class: 'pointer-dot' })]
}
