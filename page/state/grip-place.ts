import { type Grip, onSheet, type View } from '../../report/index.ts'

/** What moves by less is left where it is: nobody sees a tenth of a px. */
const GRAIN_PX = 0.1

/** Where on the sheet a grip stands, px. */
export function gripPlace(view: View, { at, beside }: Grip): { readonly x: number; readonly y: number } {
  const { x, y } = onSheet(view, at)
  if (beside === undefined) return { x: inGrains(x), y: inGrains(y) }
  const { px, direction_rad } = beside
  return { x: inGrains(x + px * Math.cos(direction_rad)), y: inGrains(y - px * Math.sin(direction_rad)) }
}

function inGrains(value: number): number {
  return Math.round(value / GRAIN_PX) * GRAIN_PX
}
