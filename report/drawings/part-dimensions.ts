/** Which sizes a part's two views carry: each hole from the datum hole, the outline from end to end, and the slices across the finger. */
import type { DrawnHole, DrawnPart, DrawnSize } from '../../engine/index.ts'
import { type AcrossOnPaper, onPaper, type Placing } from './part-views.ts'
import { lengthText, sizeWords } from './size-words.ts'
import type { Dimension } from './stacked-dimensions.ts'

interface Size {
  readonly axis: 'x' | 'y'
  readonly from: { readonly x_mm: number; readonly y_mm: number }
  readonly to: { readonly x_mm: number; readonly y_mm: number }
  readonly words: string
  readonly isExact?: boolean
}

/** Nearer than this two places are in line. */
const IN_LINE_mm = 1e-6

/** The sizes of a part's face, by axis, and how they lie on paper. */
export function faceDimensions({ part, holes }: DrawnPart): {
  readonly along: { readonly x: readonly Size[]; readonly y: readonly Size[] }
  readonly placed: (placing: Placing) => { readonly x: readonly Dimension[]; readonly y: readonly Dimension[] }
} {
  const origin = holes.find(({ hole }) => hole.isDatum) ?? holes.at(0)
  const offsets = (axis: 'x' | 'y') => (origin === undefined ? [] : offsetsOf(holes, { origin, axis }))
  const along = { x: [...offsets('x'), overall(part.outline, 'x')], y: [...offsets('y'), overall(part.outline, 'y')] }
  const placed = (placing: Placing) => {
    const onSheet = ({ from, to, words, isExact }: Size): Dimension => {
      return { from: onPaper(placing, from), to: onPaper(placing, to), words, ...(isExact && { isExact }) }
    }
    return { x: along.x.map(onSheet), y: along.y.map(onSheet) }
  }
  return { along, placed }
}

/** From the origin hole to each other one that is not in line with it; two that agree are told once. */
function offsetsOf(
  holes: readonly DrawnHole[],
  { origin, axis }: { readonly origin: DrawnHole; readonly axis: 'x' | 'y' },
): readonly Size[] {
  const sizes = holes.flatMap((drawn): readonly Size[] => {
    const offset = apart(drawn[axis], origin[axis].nominal_mm)
    if (drawn === origin || Math.abs(offset.nominal_mm) < IN_LINE_mm) return []
    const isExact = (drawn.hole.positionZone_mm ?? 0) > 0
    return [{ axis, from: origin.hole.at, to: drawn.hole.at, words: sizeWords(offset), ...(isExact && { isExact }) }]
  })
  return sizes.filter(
    (size, index) => !sizes.slice(0, index).some(({ words, to }) => words === size.words && inLine(to, size.to, axis)),
  )
}

const inLine = (one: Size['to'], other: Size['to'], axis: 'x' | 'y'): boolean =>
  Math.abs(one[`${axis}_mm`] - other[`${axis}_mm`]) < IN_LINE_mm

/** How far a place lies from another along one axis, whichever way. */
function apart({ nominal_mm, limits }: DrawnSize, from_mm: number): DrawnSize {
  const way = Math.sign(nominal_mm - from_mm)
  const ends = limits && [way * (limits.least - from_mm), way * (limits.most - from_mm)]
  const less = ends && { limits: { least: Math.min(...ends), most: Math.max(...ends) } }
  return { nominal_mm: way * (nominal_mm - from_mm), ...less }
}

function overall(outline: DrawnPart['part']['outline'], axis: 'x' | 'y'): Size {
  const along = `${axis}_mm` as const
  const sorted = outline.toSorted((one, other) => one[along] - other[along])
  const [from, to] = [sorted[0], sorted[sorted.length - 1]]
  return { axis, from, to, words: lengthText(to[along] - from[along]) }
}

/** Each slice, and all of them. @param place where they stand in the side view, and the lower end of that */
export function sideDimensions(
  slices: readonly { readonly from_mm: number; readonly to_mm: number }[],
  { across, foot }: { readonly across: AcrossOnPaper; readonly foot: number },
): readonly Dimension[] {
  const sized = (from_mm: number, to_mm: number): Dimension => ({
    from: { x: across(from_mm), y: foot },
    to: { x: across(to_mm), y: foot },
    words: lengthText(to_mm - from_mm),
  })
  const each = slices.map(({ from_mm, to_mm }) => sized(from_mm, to_mm))
  return slices.length === 1 ? each : [...each, sized(slices[0].from_mm, slices[slices.length - 1].to_mm)]
}
