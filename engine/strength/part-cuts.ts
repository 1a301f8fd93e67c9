import type { Part, Point } from '../design/design.ts'
import { partWidth } from './part-width.ts'
import { type Axes, axesOf, type Section, type Stretched, sectionsOf } from './section.ts'

/** A part cut across the line between the two of its holes and pads that lie farthest apart. */
export interface Cuts {
  readonly line: Stretched
  readonly axes: Axes
  readonly width_mm: number
  readonly sections: readonly Section[]
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
  return line && axes && { line, axes, width_mm: partWidth(part) ?? 0, sections: sectionsOf(part, line) }
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
