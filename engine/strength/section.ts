/**
 * The sections of a part across a line through it, measured on its outline.
 *
 *          n ↑   ╭───────────────╮
 *     from ●─┼───│───┼───┼───────● to        at each station the material between the two edges that the cut meets first,
 *            │   ╰───────────────╯           less the holes that it runs through
 */
import type { Part, Point } from '../design/design.ts'
import { outlineReach } from './outline-reach.ts'

/** A cut through a part. */
export interface Section {
  /** Where the line is cut, part frame. */
  readonly at: Point
  /** Material in the cut, in the plane, mm. */
  readonly height_mm: number
  /** Middle of the cut's two ends off the line, towards n, mm. */
  readonly off_mm: number
}

/** A line in a part's frame. */
export interface Stretched {
  readonly from: Point
  readonly to: Point
}

/** A direction with the one a quarter turn to its left. */
export interface Axes {
  readonly along: { readonly x: number; readonly y: number }
  readonly across: { readonly x: number; readonly y: number }
}

/** Cuts between two points, their ends left out. */
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

function sectionAt(part: Part, at: Point, { along, across }: Axes): Section {
  const left = outlineReach(part.outline, at, across)
  const right = outlineReach(part.outline, at, { x: -across.x, y: -across.y })
  let open = 0
  for (const { at: hole, diameter_mm } of part.holes) {
    const ahead = (hole.x_mm - at.x_mm) * along.x + (hole.y_mm - at.y_mm) * along.y
    const aside = (hole.x_mm - at.x_mm) * across.x + (hole.y_mm - at.y_mm) * across.y
    const half = Math.sqrt(Math.max(0, (diameter_mm / 2) ** 2 - ahead ** 2))
    open += Math.max(0, Math.min(left, aside + half) - Math.max(-right, aside - half))
  }
  return { at, height_mm: Math.max(0, left + right - open), off_mm: (left - right) / 2 }
}
