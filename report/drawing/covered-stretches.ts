/**
 * Which stretches of an outline lie under others.
 *
 * Every edge is cut where it crosses an edge of a cover. Between two cuts it lies either wholly inside a cover or wholly outside, which its
 * middle tells; stretches that go on over a corner are one.
 *
 *        ┌───────┐ cover            a ─┤├─ b of the edge is covered, and the stretch goes on round the corner c.
 *     ───a───────b───
 *        └───────┘
 */
import { isInside, type Outline } from '../../engine/index.ts'
import type { Place } from './svg.ts'

/** Closer cuts than this share of an edge are one: far below what a drawing shows. */
const ONE_CUT_RATIO = 1e-9

/**
 * The covered stretches in the order of the outline, each from its begin over its corners to its end.
 *
 * @param outline a closed polygon; its frame and unit are those of the covers and of what comes back
 * @param covers closed polygons
 * @returns empty where nothing is covered; the whole outline, back to its first corner, where all of it is
 */
export function coveredStretches(outline: Outline, covers: readonly Outline[]): readonly (readonly Place[])[] {
  const stretches: Place[][] = []
  for (let at = 0; at < outline.length; at += 2) {
    const edge = edgeFrom(outline, at)
    const cuts = cutsOf(edge, covers)
    for (let index = 1; index < cuts.length; index++) {
      const [from, to] = [cuts[index - 1], cuts[index]]
      if (to - from < ONE_CUT_RATIO || !isCovered(alongEdge(edge, (from + to) / 2), covers)) continue
      const last = stretches.at(-1)
      const begin = alongEdge(edge, from)
      if (last === undefined || !isSame(last[last.length - 1], begin)) stretches.push([begin, alongEdge(edge, to)])
      else last.push(alongEdge(edge, to))
    }
  }
  return joinedRound(stretches)
}

interface Edge {
  readonly x: number
  readonly y: number
  /** From its begin to its end. */
  readonly dx: number
  readonly dy: number
}

function edgeFrom(outline: Outline, at: number): Edge {
  const next = at + 2 < outline.length ? at + 2 : 0
  const [x, y] = [outline[at], outline[at + 1]]
  return { x, y, dx: outline[next] - x, dy: outline[next + 1] - y }
}

/** The begin and the end of an edge are places of the outline to the last bit, so that stretches meet there. */
function alongEdge({ x, y, dx, dy }: Edge, share: number): Place {
  return { x: x + share * dx, y: y + share * dy }
}

function isSame(one: Place, other: Place): boolean {
  return Math.abs(one.x - other.x) + Math.abs(one.y - other.y) < ONE_CUT_RATIO * (1 + Math.abs(one.x) + Math.abs(one.y))
}

/** Shares of an edge at which it crosses covers, with 0 and 1, in order. */
function cutsOf({ x, y, dx, dy }: Edge, covers: readonly Outline[]): readonly number[] {
  const cuts = [0, 1]
  for (const cover of covers) {
    const count = cover.length
    for (let at = 0, before = count - 2; at < count; before = at, at += 2) {
      // On which side of the edge's line the cover's two corners lie; they differ where the line is crossed.
      const side0 = dx * (cover[before + 1] - y) - dy * (cover[before] - x)
      const side1 = dx * (cover[at + 1] - y) - dy * (cover[at] - x)
      if (side0 > 0 === side1 > 0) continue
      const [ex, ey] = [cover[at] - cover[before], cover[at + 1] - cover[before + 1]]
      const share = ((cover[before] - x) * ey - (cover[before + 1] - y) * ex) / (dx * ey - dy * ex)
      if (share > 0 && share < 1) cuts.push(share)
    }
  }
  return cuts.length === 2 ? cuts : cuts.sort((one, other) => one - other)
}

function isCovered({ x, y }: Place, covers: readonly Outline[]): boolean {
  return covers.some((cover) => isInside(cover, x, y))
}

/** A stretch that runs over the outline's first corner was begun as two. */
function joinedRound(stretches: readonly (readonly Place[])[]): readonly (readonly Place[])[] {
  const [first, last] = [stretches[0], stretches.at(-1)]
  if (first === undefined || last === undefined || first === last || !isSame(last[last.length - 1], first[0])) return stretches
  return [...stretches.slice(1, -1), [...last, ...first.slice(1)]]
}
