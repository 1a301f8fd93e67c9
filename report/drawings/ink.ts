/**
 * What a shop drawing is made of: lines, circles and words on paper, in millimetres from its upper left corner, y down.
 *
 * They are kept as data until the sheet is finished, so that a place for words can be looked for among all that stands already, and a test
 * can ask whether anything lies over them.
 */

/** A place on the paper, mm. */
export interface At {
  readonly x: number
  readonly y: number
}

/**
 * Line types of ISO 128: wide and narrow, hidden edges dashed, centre lines in long dashes and dots; the same, wide, beside a face that is treated
 * otherwise than the rest (type 04.2 of ISO 128-2, from memory).
 */
export type LineType = 'wide' | 'narrow' | 'hidden' | 'centre' | 'apart'

export interface Line {
  readonly kind: 'line'
  readonly from: At
  readonly to: At
  readonly type: LineType
}

export interface Circle {
  readonly kind: 'circle'
  readonly at: At
  readonly radius: number
  readonly type: LineType
  readonly filled?: boolean
}

export interface Words {
  readonly kind: 'words'
  readonly words: string
  /** Where the base line begins, is in the middle, or ends. */
  readonly at: At
  readonly size: number
  readonly side: 'start' | 'middle' | 'end'
  /** Reads from the right-hand side of the sheet. */
  readonly turned?: boolean
  readonly heavy?: boolean
}

/** A filled arrow head, its point first. */
export interface Head {
  readonly kind: 'head'
  readonly corners: readonly [At, At, At]
}

export type Ink = Line | Circle | Words | Head

/** Sizes of letters: capitals of 2.5 mm (ISO 3098) for what is dimensioned, smaller ones for tables, larger ones for the title. */
export const lettering_mm = { value: 3.6, table: 2.9, title: 5 } as const

/** Upright box on the paper, mm. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/**
 * Widest that characters of the sans are, as a share of their size, also in its heavier cut; what is named nowhere is as wide as a capital.
 *
 * SOURCE dataset: widths of the face's own files, rounded up; a test compares what was kept with what a reader of the finished PDF measures.
 */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[mwMW@%…—]/, 0.97],
  [/[ .,:;'’ijlI|()/]/, 0.34],
  [/[frt-]/, 0.4],
  [/[a-z0-9±−–+“”]/, 0.58],
]
const CAPITAL_ratio = 0.72

const ASCENT_ratio = 0.72
const DESCENT_ratio = 0.22

/** Width that words take at most. */
export function widthOf(words: string, size: number): number {
  return [...words].reduce((sum, character) => sum + size * (WIDTHS.find(([of]) => of.test(character))?.[1] ?? CAPITAL_ratio), 0)
}

/** The box that words stand in. */
export function boxOf({ words, at, size, side, turned }: Words): Box {
  const width = widthOf(words, size)
  const before = { start: 0, middle: width / 2, end: width }[side]
  const [up, down] = [size * ASCENT_ratio, size * DESCENT_ratio]
  if (turned) return { left: at.x - up, right: at.x + down, top: at.y + before - width, bottom: at.y + before }
  return { left: at.x - before, right: at.x - before + width, top: at.y - up, bottom: at.y + down }
}

/** Whether two boxes share any paper. */
export function boxesMeet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom
}

/** Whether a straight line runs through a box: clipped to its four sides in turn (Liang and Barsky 1984, from memory), something is left. */
export function lineMeets({ from, to }: Pick<Line, 'from' | 'to'>, { left, top, right, bottom }: Box): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const sides = [
    [-dx, from.x - left],
    [dx, right - from.x],
    [-dy, from.y - top],
    [dy, bottom - from.y],
  ]
  let [enter, leave] = [0, 1]
  for (const [run, room] of sides) {
    if (run === 0) {
      if (room <= 0) return false
    } else if (run < 0) enter = Math.max(enter, room / run)
    else leave = Math.min(leave, room / run)
  }
  return enter < leave
}

/** Whether the line of a circle runs through a box; a filled one also where it lies inside. */
export function circleMeets({ at, radius, filled }: Circle, { left, top, right, bottom }: Box): boolean {
  const near = Math.hypot(Math.max(left - at.x, 0, at.x - right), Math.max(top - at.y, 0, at.y - bottom))
  const far = Math.hypot(Math.max(at.x - left, right - at.x), Math.max(at.y - top, bottom - at.y))
  return near < radius && (filled === true || far > radius)
}

/** Whether anything of a sheet lies in a box; lines that frame it do not. */
export function isTaken(box: Box, ink: readonly Ink[]): boolean {
  return ink.some((one) => inkMeets(one, box))
}

function inkMeets(one: Ink, box: Box): boolean {
  if (one.kind === 'words') return boxesMeet(boxOf(one), box)
  if (one.kind === 'line') return lineMeets(one, box)
  if (one.kind === 'circle') return circleMeets(one, box)
  return boxesMeet(boxAbout(one.corners), box)
}

/** The box about places. */
export function boxAbout(places: readonly At[]): Box {
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)]
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) }
}

/** A straight line. */
export function stroke(from: At, to: At, type: LineType = 'narrow'): Line {
  return { kind: 'line', from, to, type }
}

/** A rectangle of four lines. */
export function frame({ left, top, right, bottom }: Box, type: LineType = 'narrow'): readonly Line[] {
  const corners = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]
  return corners.map((corner, index) => stroke(corner, corners[(index + 1) % corners.length], type))
}

/** Words that begin at a place, in the size of values unless told. */
export function say(words: string, at: At, how: Partial<Omit<Words, 'kind' | 'words' | 'at'>> = {}): Words {
  return { kind: 'words', words, at, size: lettering_mm.value, side: 'start', ...how }
}

const HEAD_LENGTH = 2.5
const HEAD_HALF = 0.42

/** An arrow head with its point at a place, seen from the other end of its line. */
export function headAt(point: At, from: At): Head {
  const length = Math.hypot(point.x - from.x, point.y - from.y)
  const [ux, uy] = [(point.x - from.x) / length, (point.y - from.y) / length]
  const back = { x: point.x - HEAD_LENGTH * ux, y: point.y - HEAD_LENGTH * uy }
  const aside = (by: number): At => ({ x: back.x - by * uy, y: back.y + by * ux })
  return { kind: 'head', corners: [point, aside(HEAD_HALF), aside(-HEAD_HALF)] }
}
