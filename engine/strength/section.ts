/**
 * The sections of a part across a line through it, measured on its outline.
 *
 *          n ↑   ╭───────────────╮
 *     from ●─┼───│───┼───┼───────● to        each cut runs right through the part, to the left and to the right of the line: all
 *            │   ╰───────────────╯           material on it less the holes that it meets
 *
 * A cut parts the outline in two, so what acts beyond it is held by what lies on it, wherever that lies: the line itself may leave an angled part.
 */
import type { Part, Point } from '../design/design.ts'
import type { Vector } from '../numbers/vector.ts'

/** A cut through a part. */
export interface Section {
  /** Where the line is cut, part frame. */
  readonly at: Point
  /** Material in the cut, mm. */
  readonly height_mm: number
  /** Its middle off the line, towards n, mm. */
  readonly off_mm: number
  /** Second moment about its middle for each millimetre of width, mm³, and the farthest material from there, mm. */
  readonly stiffness_mm3: number
  readonly reach_mm: number
}

/** A line in a part's frame. */
export interface Stretched {
  readonly from: Point
  readonly to: Point
}

/** A direction with the one a quarter turn to its left. */
export interface Axes {
  readonly along: Vector
  readonly across: Vector
}

/** Stretches between two points: a cut at each end of one but the outermost. On a phalanx of the example about 2 mm. */
const CUTS = 24

/** Direction of a line and the one across it; undefined for two equal points. */
export function axesOf({ from, to }: Stretched): Axes | undefined {
  const x = to.x_mm - from.x_mm
  const y = to.y_mm - from.y_mm
  const length = Math.hypot(x, y)
  if (!(length > 0)) return undefined
  return { along: { x: x / length, y: y / length }, across: { x: -y / length, y: x / length } }
}

/** The cuts of a part along a line; none where nothing is left between its holes. @returns empty for two equal points */
export function sectionsOf(part: Part, line: Stretched): readonly Section[] {
  const axes = axesOf(line)
  if (!axes) return []
  return Array.from({ length: CUTS - 1 }, (_, index) => {
    const share = (index + 1) / CUTS
    const at = {
      x_mm: line.from.x_mm + share * (line.to.x_mm - line.from.x_mm),
      y_mm: line.from.y_mm + share * (line.to.y_mm - line.from.y_mm),
    }
    return sectionAt(part, at, axes)
  })
}

function sectionAt(part: Part, at: Point, axes: Axes): Section {
  let pieces = piecesOf(crossingsOf(part.outline, at, axes))
  for (const { at: hole, diameter_mm } of part.holes) {
    const ahead = reachOf(hole, at, axes.along)
    if (Math.abs(ahead) >= diameter_mm / 2) continue
    const aside = reachOf(hole, at, axes.across)
    const half = Math.sqrt((diameter_mm / 2) ** 2 - ahead ** 2)
    pieces = pieces.flatMap((piece) => without(piece, { from: aside - half, to: aside + half }))
  }
  return measured(at, pieces)
}

function reachOf({ x_mm, y_mm }: Point, from: Point, { x, y }: Vector): number {
  return (x_mm - from.x_mm) * x + (y_mm - from.y_mm) * y
}

/** A stretch of the cut, from its right to its left, mm from the line. */
interface Piece {
  readonly from: number
  readonly to: number
}

/** Where the outline crosses the cut, from right to left. */
function crossingsOf(outline: readonly Point[], at: Point, { along, across }: Axes): number[] {
  const crossings: number[] = []
  let start = outline[outline.length - 1]
  let before = start ? reachOf(start, at, along) : 0
  for (const end of outline) {
    const behind = reachOf(end, at, along)
    // A corner that lies on the cut belongs to one of its two sides only.
    if (before > 0 !== behind > 0) {
      const [from, to] = [reachOf(start, at, across), reachOf(end, at, across)]
      crossings.push(from + (before / (before - behind)) * (to - from))
    }
    start = end
    before = behind
  }
  return crossings.sort((one, other) => one - other)
}

function piecesOf(crossings: readonly number[]): Piece[] {
  return crossings.flatMap((from, index) => (index % 2 === 0 ? [{ from, to: crossings[index + 1] }] : []))
}

function without({ from, to }: Piece, open: Piece): Piece[] {
  const left = [
    { from, to: Math.min(to, open.from) },
    { from: Math.max(from, open.to), to },
  ]
  return left.filter((piece) => piece.to > piece.from)
}

function measured(at: Point, pieces: readonly Piece[]): Section {
  let height = 0
  let first = 0
  for (const { from, to } of pieces) {
    height += to - from
    first += (to ** 2 - from ** 2) / 2
  }
  const off = height > 0 ? first / height : 0
  let stiffness = 0
  let reach = 0
  for (const { from, to } of pieces) {
    stiffness += ((to - off) ** 3 - (from - off) ** 3) / 3
    reach = Math.max(reach, off - from, to - off)
  }
  return { at, height_mm: height, off_mm: off, stiffness_mm3: stiffness, reach_mm: reach }
}
