import { type Grip, onSheet, type View } from '../../report/index.ts'

/** Where on the sheet a grip stands, px. */
export function gripPlace(view: View, { at, beside }: Grip): { readonly x: number; readonly y: number } {
  const { x, y } = onSheet(view, at)
  if (beside === undefined) return { x, y }
  return { x: x + beside.px * Math.cos(beside.direction_rad), y: y - beside.px * Math.sin(beside.direction_rad) }
}
