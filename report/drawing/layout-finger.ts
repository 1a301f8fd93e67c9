/** Where the finger and the detail of its toggle stand on the sheet: the same for every posture, so that nothing jumps while scrubbing. */
import type { Design, Point, Travel } from '../../engine/index.ts'
import { outlineOf } from './outline.ts'
import type { Place } from './svg.ts'
import { type Box, boxAround, inMount, type View, viewOf } from './view.ts'

const HEIGHT_MOST_PX = 470
const SCALE_MOST_PX_MM = 7
/** Room for arrows and labels around everything that the parts sweep over. */
const ROOM_MM = 12
const GAP_PX = 20
/** Narrower than this the detail stands below the finger. */
const BESIDE_FROM_PX = 620
/** Title and three lines of caption under the detail. */
const CAPTION_PX = 82
const POSTURES_LOOKED_AT = 16

/** A sheet with its two places. */
export interface FingerSheet {
  readonly width: number
  readonly height: number
  readonly view: View
  /** Absent for a finger without a toggle. */
  readonly detail?: { readonly centre: Place; readonly radius: number }
}

/** Lays the sheet out for a width in px. */
export function layoutSheet(about: { design: Design; travel: Travel; width_px: number }): FingerSheet {
  const { design, width_px: width } = about
  const box = sweptBox(about)
  const hasDetail = design.toggles.length > 0
  const beside = hasDetail && width >= BESIDE_FROM_PX
  const radius = Math.min(160, Math.max(96, beside ? width * 0.18 : width * 0.3))
  const room = { width: beside ? width - 2 * radius - GAP_PX : width, height: HEIGHT_MOST_PX }
  const size = { width: box.most.x_mm - box.least.x_mm, height: box.most.y_mm - box.least.y_mm }
  const scale = Math.min(room.width / size.width, room.height / size.height, SCALE_MOST_PX_MM)
  const drawn = { width: size.width * scale, height: size.height * scale }
  const detailHeight = 2 * radius + CAPTION_PX + 2
  const height = beside ? Math.max(drawn.height, detailHeight) : drawn.height + (hasDetail ? detailHeight + GAP_PX : 0)
  const corner = { x: (room.width - drawn.width) / 2, y: beside ? (height - drawn.height) / 2 : 0 }
  const centre = beside
    ? { x: width - radius - 1, y: (height - detailHeight) / 2 + radius + 1 }
    : { x: width / 2, y: drawn.height + GAP_PX + radius + 1 }
  return {
    width,
    height: Math.ceil(height),
    view: viewOf(box, corner, scale),
    ...(hasDetail ? { detail: { centre, radius } } : {}),
  }
}

/** Box of everything that the parts sweep over on the travel. */
export function sweptBox({ design, travel }: { design: Design; travel: Travel }): Box {
  const step = Math.max(1, Math.floor(travel.postures.length / POSTURES_LOOKED_AT))
  const looked = travel.postures.filter((posture, index) => index % step === 0 || posture === travel.postures.at(-1))
  const points: Point[] = looked.flatMap((posture) =>
    design.parts.flatMap((part, index) => outlineOf(part).map((at) => inMount(posture, index, at))),
  )
  return boxAround(points, ROOM_MM)
}
