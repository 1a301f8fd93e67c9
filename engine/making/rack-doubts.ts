/** What a coater has to be told: where the rack may touch, and that threads stay bare. */
import type { Design, Hole, Part, Point } from '../design/design.ts'
import { isMasked } from '../design/masked-faces.ts'
import type { Screw } from '../design/screws/screw.ts'
import type { MakingDoubt } from './doubt.ts'
import { wallTo } from './part-doubts.ts'
import { shopLimits } from './shop-limits.ts'

/** Doubts of the coated parts of a design. */
export function rackDoubts({ parts, screws = [] }: Design): readonly MakingDoubt[] {
  return parts.flatMap((part, index) => {
    if (part.coating === undefined) return []
    const threads = screws.filter((screw) => screw.part === index)
    return [...placeDoubts(part), ...threadDoubts(part, threads)]
  })
}

function placeDoubts(part: Part): readonly MakingDoubt[] {
  const { id, racks } = part
  if (racks === undefined) {
    const wayOut = 'Type racks, or let the coater propose it and look at it.'
    const needed = 'places where the rack may touch and the metal stay bare'
    return [{ place: `parts.${id}.racks`, found: 'a coated part that nobody says how to hang', needed, wayOut }]
  }
  return racks.flatMap((at, index) => {
    const holes = part.holes.filter(
      (hole) => !isMasked(part, `holes.${hole.id}`) && wallTo(hole, at, at) < shopLimits.rackAway_mm,
    )
    const edges = part.edges.filter(
      (edge) => !isMasked(part, `edges.${edge.id}`) && edge.kind === 'straight' && nearest(at, edge) < shopLimits.rackAway_mm,
    )
    return [...holes.map(({ id: hole }) => `hole ${hole}`), ...edges.map((edge) => `stop edge ${edge.id}`)].map(
      (what): MakingDoubt => ({
        place: `parts.${id}.racks.${index}`,
        found: `a rack that touches beside ${what}`,
        needed: `at least ${shopLimits.rackAway_mm} mm from what has a size with its coating on`,
        wayOut: 'Move the place, or mask what lies there.',
      }),
    )
  })
}

/** From a place to a straight edge, taken as a slot of no width. */
function nearest(at: Point, { from, to }: { readonly from: Point; readonly to: Point }): number {
  const point: Hole = { id: '', at, diameter_mm: 0 }
  return wallTo(point, from, to)
}

/** Each thread that is not masked. */
function threadDoubts(part: Part, threads: readonly Screw[]): readonly MakingDoubt[] {
  const coated = threads.filter(({ id }) => !isMasked(part, `threads.${id}`))
  if (coated.length === 0) return []
  const which = coated.length === threads.length ? 'threads' : `the threads of ${coated.map(({ id }) => id).join(', ')}`
  return [
    {
      place: `parts.${part.id}.masked`,
      found: `${which}, coated with their part`,
      needed: 'masked threads: a film narrows the pitch diameter by four times its growth',
      wayOut: 'Mask them, or have them cut larger by as much.',
    },
  ]
}
