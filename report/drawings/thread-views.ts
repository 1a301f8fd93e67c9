/** Tapped holes in the views of a part, as hidden lines: from the mouth inwards to the end of the thread, against the pull of the screw. */
import type { Part, Screw } from '../../engine/index.ts'
import { type At, type Ink, stroke } from './ink.ts'
import { type AcrossOnPaper, onPaper, type Placing } from './part-views.ts'

/** A part with the screws that are turned into it. */
export interface Threaded {
  readonly part: Part
  readonly screws: readonly Screw[]
}

/** Centre line beyond either end, on the paper. */
const OVER = 1.5

/** On the face of the part; nothing of screws whose place is not stated. */
export function threadsOnFace({ screws }: Threaded, placing: Placing): readonly Ink[] {
  return screws.flatMap(({ holdsMount, thread, tapped, engagement_mm }) => {
    if (holdsMount === undefined) return []
    const mouth = onPaper(placing, holdsMount.at)
    const { pulls_rad } = holdsMount
    return bore({
      mouth,
      inwards: { x: -Math.cos(pulls_rad), y: Math.sin(pulls_rad) },
      depth: placing.ratio * (tapped.threadDepth_mm ?? engagement_mm),
      half: (placing.ratio * thread.diameter_mm) / 2,
    })
  })
}

/** Nearer to square than this a thread runs along the view's height. */
const SQUARE = 1e-6

/** Seen along x, those that run up or down and whose places across the width are stated. */
export function threadsOnSide(
  { screws }: Threaded,
  { placing, across }: { readonly placing: Placing; readonly across: AcrossOnPaper },
): readonly Ink[] {
  return screws.flatMap(({ holdsMount, across_mm = [], thread, tapped, engagement_mm }) => {
    if (holdsMount === undefined || Math.abs(Math.cos(holdsMount.pulls_rad)) > SQUARE) return []
    const inwards = { x: 0, y: Math.sign(Math.sin(holdsMount.pulls_rad)) }
    const sizes = {
      depth: placing.ratio * (tapped.threadDepth_mm ?? engagement_mm),
      half: (placing.ratio * thread.diameter_mm) / 2,
    }
    return across_mm.flatMap((z_mm) => {
      const mouth = { x: across(z_mm), y: onPaper(placing, holdsMount.at).y }
      return bore({ mouth, inwards, ...sizes })
    })
  })
}

interface Bore {
  readonly mouth: At
  /** Of length 1, on the paper. */
  readonly inwards: At
  readonly depth: number
  readonly half: number
}

function bore({ mouth, inwards, depth, half }: Bore): readonly Ink[] {
  const at = (along: number, aside: number): At => ({
    x: mouth.x + along * inwards.x - aside * inwards.y,
    y: mouth.y + along * inwards.y + aside * inwards.x,
  })
  return [
    stroke(at(0, half), at(depth, half), 'hidden'),
    stroke(at(0, -half), at(depth, -half), 'hidden'),
    stroke(at(depth, half), at(depth, -half), 'hidden'),
    stroke(at(-OVER, 0), at(depth + OVER, 0), 'centre'),
  ]
}
