/** A part cut across the line between the two of its holes and pads that lie farthest apart, and its places along that line. */
import type { Part, Point } from '../design/design.ts'
import { partWidth } from './part-width.ts'
import { type Axes, axesOf, type Section, type Stretched, sectionsOf } from './section.ts'

export interface Cuts {
  readonly axes: Axes
  readonly width_mm: number
  readonly sections: readonly Section[]
  /** Places of the cuts along the line, mm from its beginning. */
  readonly along_mm: readonly number[]
  /** A place along the line and off it to the left, mm. */
  readonly place: (at: Point) => { readonly along_mm: number; readonly off_mm: number }
}

/** Cuts of parts: a memory, not a state. */
const known = new WeakMap<Part, Cuts | 'no line'>()

/** The cuts of a part; undefined for a part with a single place, or none. */
export function cutsOf(part: Part): Cuts | undefined {
  const found = known.get(part) ?? cut(part) ?? 'no line'
  known.set(part, found)
  return found === 'no line' ? undefined : found
}

function cut(part: Part): Cuts | undefined {
  const line = longest([...part.holes, ...part.pads].map(({ at }) => at))
  const axes = line && axesOf(line)
  if (!line || !axes) return undefined
  const { along, across } = axes
  const place: Cuts['place'] = ({ x_mm, y_mm }) => {
    const x = x_mm - line.from.x_mm
    const y = y_mm - line.from.y_mm
    return { along_mm: x * along.x + y * along.y, off_mm: x * across.x + y * across.y }
  }
  const sections = sectionsOf(part, line)
  return { axes, width_mm: partWidth(part) ?? 0, sections, along_mm: sections.map(({ at }) => place(at).along_mm), place }
}

function longest(points: readonly Point[]): Stretched | undefined {
  let most = 0
  let line: Stretched | undefined
  for (const [index, from] of points.entries()) {
    for (const to of points.slice(index + 1)) {
      const length = Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm)
      if (length <= most) continue
      most = length
      line = { from, to }
    }
  }
  return line
}
