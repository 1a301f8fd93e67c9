/**
 * How deep two outlines reach into each other.
 *
 *      ┌──────────┐            depth: the farthest that a point of one outline's boundary lies inside the other, measured to the
 *      │    ┌─────┼────┐       nearest place of that other's boundary. The points tried are the corners, and the middle of every
 *      │    │  d  │    │       stretch of an edge that runs inside, so that two bars laid across each other count too.
 *      └────┼─────┘    │       0 where they are apart or only touch.
 *           └──────────┘
 *
 * Outlines are closed polygons, convex or not, in either order; corners are x, y, x, y … in one frame. The true penetration of
 * odd shapes can be deeper than the points tried show, never shallower.
 */
import { distanceToEdge, isInside, type Outline } from '../numbers/place-in-outline.ts'

export interface Overlap {
  readonly depth_mm: number
  readonly x_mm: number
  readonly y_mm: number
}

export interface Box {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** Smallest upright rectangle round an outline. */
export function boxOf(outline: Outline): Box {
  let left = outline[0]
  let right = left
  let bottom = outline[1]
  let top = bottom
  for (let at = 2; at < outline.length; at += 2) {
    left = Math.min(left, outline[at])
    right = Math.max(right, outline[at])
    bottom = Math.min(bottom, outline[at + 1])
    top = Math.max(top, outline[at + 1])
  }
  return { left, right, bottom, top }
}

/** Whether two boxes have more than a line in common. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
}

/** The deepest place found; depth 0 at no place in particular where they do not overlap. */
export function overlapOf(a: Outline, b: Outline): Overlap {
  const inB = deepestOf(a, b)
  const inA = deepestOf(b, a)
  return inA.depth_mm > inB.depth_mm ? inA : inB
}

/** The deepest point of `outline` inside `other`. */
function deepestOf(outline: Outline, other: Outline): Overlap {
  const box = boxOf(other)
  let deepest: Overlap = { depth_mm: 0, x_mm: 0, y_mm: 0 }
  const consider = (x: number, y: number): void => {
    if (x < box.left || x > box.right || y < box.bottom || y > box.top || !isInside(other, x, y)) return
    const depth_mm = distanceToEdge(other, x, y)
    if (depth_mm > deepest.depth_mm) deepest = { depth_mm, x_mm: x, y_mm: y }
  }
  const count = outline.length / 2
  for (let corner = 0; corner < count; corner++) {
    const from = 2 * corner
    const to = 2 * ((corner + 1) % count)
    const x0 = outline[from]
    const y0 = outline[from + 1]
    const x1 = outline[to]
    const y1 = outline[to + 1]
    consider(x0, y0)
    const outside = Math.max(x0, x1) < box.left || Math.min(x0, x1) > box.right
    if (outside || Math.max(y0, y1) < box.bottom || Math.min(y0, y1) > box.top) continue
    const shares = crossings(other, { x0, y0, dx: x1 - x0, dy: y1 - y0 })
    for (let index = 1; index < shares.length; index++) {
      const middle = (shares[index - 1] + shares[index]) / 2
      consider(x0 + middle * (x1 - x0), y0 + middle * (y1 - y0))
    }
  }
  return deepest
}

interface Stretch {
  readonly x0: number
  readonly y0: number
  readonly dx: number
  readonly dy: number
}

/** Shares of a stretch, 0 and 1 among them, at which it crosses the edges of an outline; ascending. */
function crossings(outline: Outline, { x0, y0, dx, dy }: Stretch): number[] {
  const shares = [0, 1]
  const count = outline.length
  for (let at = 0; at < count; at += 2) {
    const next = (at + 2) % count
    const ex = outline[next] - outline[at]
    const ey = outline[next + 1] - outline[at + 1]
    const across = dx * ey - dy * ex
    if (across === 0) continue
    const px = outline[at] - x0
    const py = outline[at + 1] - y0
    const share = (px * ey - py * ex) / across
    const onEdge = (px * dy - py * dx) / across
    if (share > 0 && share < 1 && onEdge >= 0 && onEdge <= 1) putInOrder(shares, share)
  }
  return shares
}

/** Puts a share between those that stand in order; there are few. */
function putInOrder(shares: number[], share: number): void {
  let index = shares.length - 1
  for (; shares[index] > share; index--) shares[index + 1] = shares[index]
  shares[index + 1] = share
}
