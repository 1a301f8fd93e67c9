import type { Design, Travel } from '../../engine/index.ts'
import { type FingerSheet, sweptBox } from './layout-finger.ts'
import { boxAround, viewOf } from './view.ts'

const HEIGHT_MOST_PX = 520
const SCALE_MOST_PX_MM = 9
/** Two lines below the fingers that say which line type is which. */
const KEY_PX = 56

/** Lays a sheet out on which several fingers lie over each other: one view for all, the same for every posture. */
export function layoutCompared(
  fingers: readonly { readonly design: Design; readonly travel: Travel }[],
  width_px: number,
): FingerSheet {
  const boxes = fingers.map(sweptBox)
  const box = boxAround(
    boxes.flatMap(({ least, most }) => [least, most]),
    0,
  )
  const size = { width: box.most.x_mm - box.least.x_mm, height: box.most.y_mm - box.least.y_mm }
  const scale = Math.min(width_px / size.width, HEIGHT_MOST_PX / size.height, SCALE_MOST_PX_MM)
  const corner = { x: (width_px - size.width * scale) / 2, y: 0 }
  return { width: width_px, height: Math.ceil(size.height * scale + KEY_PX), view: viewOf(box, corner, scale) }
}
