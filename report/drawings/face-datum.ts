/** The front face as datum A: a filled triangle on it in the side view, with its letter in a frame (ISO 5459, from memory). */
import { drawDatum, frameHeight } from './feature-frame.ts'
import { type Ink, stroke } from './ink.ts'
import type { AcrossOnPaper, Projection } from './part-views.ts'

const TRIANGLE = 2.4
const HALF = 1.4
/** From the triangle to the frame. */
const STEM = 2
const LETTER = 5

interface FaceDatum {
  readonly across: AcrossOnPaper
  readonly slices: readonly { readonly to_mm: number }[]
  readonly projection: Projection
  /** Height on the paper at which it stands. */
  readonly y: number
}

/** Outside of the view, on the side of the front face. */
export function faceDatum({ across, slices, projection, y }: FaceDatum): readonly Ink[] {
  const face = across(slices[slices.length - 1].to_mm)
  const away = projection === 'third-angle' ? -1 : 1
  const point = { x: face + away * TRIANGLE, y }
  const frame = face + away * (TRIANGLE + STEM)
  return [
    { kind: 'head', corners: [point, { x: face, y: y - HALF }, { x: face, y: y + HALF }] },
    stroke(point, { x: frame, y }),
    ...drawDatum('A', { x: away > 0 ? frame : frame - LETTER, y: y - frameHeight / 2 }),
  ]
}
