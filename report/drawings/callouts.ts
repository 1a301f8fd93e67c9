/** What is said of single holes and edges, in blocks above the view, each with a line to what it speaks of. */
import type { DrawnHole, DrawnPart, Edge, Point } from '../../engine/index.ts'
import { drawDatum, drawFrame, type FeatureFrame, frameHeight, frameWidth } from './feature-frame.ts'
import { type At, headAt, type Ink, lettering_mm, say, stroke, widthOf } from './ink.ts'
import { middleOfEdge, onPaper, type Placing } from './part-views.ts'
import { sideBySide } from './side-by-side.ts'
import { diameterWords, lengthText, limitsWords } from './size-words.ts'
import { placeText, surfaceLines } from './surface-words.ts'

/** One block. */
export interface Callout {
  /** What it points to, and how far from there its line ends. */
  readonly at: Point
  readonly radius_mm: number
  readonly lines: readonly string[]
  readonly frame?: FeatureFrame
  readonly datum?: string
}

/** The face of the part is the first datum, the datum hole the second. */
const FACE = 'A'
const HOLE = 'B'

/** Blocks of a part: its holes, then the edges that stops run against. */
export function calloutsOf({ part, holes }: DrawnPart): readonly Callout[] {
  const datums = part.holes.some(({ isDatum }) => isDatum) ? [FACE, HOLE] : [FACE]
  return [...holes.map((hole) => ofHole(hole, datums)), ...part.edges.map((edge) => ofEdge(edge, datums))]
}

function ofHole({ hole, diameter, beforeCoating }: DrawnHole, datums: readonly string[]): Callout {
  const { id, at, diameter_mm, slot, positionZone_mm, hasPositionBonus, isDatum } = hole
  const slotWords = slot === undefined ? [] : [`slot, ${lengthText(slot.length_mm)} between its centres`]
  const zone = (positionZone_mm ?? 0) > 0 || hasPositionBonus
  return {
    at,
    radius_mm: diameter_mm / 2,
    lines: [
      id,
      diameterWords(diameter),
      ...slotWords,
      ...(beforeCoating === undefined ? [] : [`uncoated Ø${limitsWords(beforeCoating)}`]),
      ...surfaceLines(hole),
    ],
    ...(zone && {
      frame: { of: 'position', zone_mm: positionZone_mm ?? 0, hasBonus: hasPositionBonus === true, datums } as const,
    }),
    ...(isDatum && { datum: HOLE }),
  }
}

function ofEdge(edge: Edge, datums: readonly string[]): Callout {
  const words =
    edge.kind === 'straight'
      ? `${placeText(edge.from)} to ${placeText(edge.to)}`
      : `R${lengthText(edge.radius_mm)} about ${placeText(edge.centre)}`
  const zone_mm = edge.profileZone_mm
  return {
    at: middleOfEdge(edge),
    radius_mm: 0,
    lines: [`stop edge ${edge.id}`, words, ...surfaceLines(edge)],
    ...(zone_mm !== undefined && { frame: { of: 'profile', zone_mm, datums } as const }),
  }
}

const LINE = 4.4
const BETWEEN = 6

/** Width and height of a block. */
export function calloutSize({ lines, frame, datum }: Callout): { readonly width: number; readonly height: number } {
  const widths = [...lines.map((words) => widthOf(words, lettering_mm.value)), frame === undefined ? 0 : frameWidth(frame)]
  const framed = frame === undefined && datum === undefined ? 0 : frameHeight + 1
  return { width: Math.max(...widths), height: LINE * lines.length + framed }
}

/** Width that all blocks take side by side. */
export function calloutsWidth(callouts: readonly Callout[]): number {
  return callouts.reduce((sum, callout) => sum + calloutSize(callout).width + BETWEEN, 0)
}

interface Room {
  readonly left: number
  readonly right: number
  /** Lower end of the blocks. */
  readonly bottom: number
  readonly placing: Placing
}

/** The blocks in one row, in the order of what they point to, as near over it as the others leave room. */
export function drawCallouts(callouts: readonly Callout[], { left, right, bottom, placing }: Room): readonly Ink[] {
  const sorted = callouts.toSorted((one, other) => one.at.x_mm - other.at.x_mm || other.at.y_mm - one.at.y_mm)
  const sizes = sorted.map(calloutSize)
  const blocks = sorted.map(({ at }, index) => ({
    wish: onPaper(placing, at).x - sizes[index].width / 2,
    width: sizes[index].width,
  }))
  const lefts = sideBySide({ blocks, left, right, gap: BETWEEN })
  return sorted.flatMap((callout, index) => drawBlock(callout, { x: lefts[index], y: bottom }, placing))
}

/** @param foot lower left corner */
function drawBlock(callout: Callout, foot: At, placing: Placing): readonly Ink[] {
  const { width, height } = calloutSize(callout)
  const top = foot.y - height
  const lines = callout.lines.map((words, index) =>
    say(words, { x: foot.x, y: top + LINE * (index + 0.75) }, { heavy: index === 0 }),
  )
  const framed = { x: foot.x, y: foot.y - frameHeight }
  const target = onPaper(placing, callout.at)
  const from = { x: Math.min(Math.max(target.x, foot.x), foot.x + width), y: foot.y + 1 }
  const length = Math.hypot(target.x - from.x, target.y - from.y)
  const share = 1 - (placing.ratio * callout.radius_mm) / length
  const point = { x: from.x + share * (target.x - from.x), y: from.y + share * (target.y - from.y) }
  return [
    ...lines,
    ...(callout.frame ? drawFrame(callout.frame, framed) : []),
    ...(callout.datum === undefined ? [] : drawDatum(callout.datum, framed)),
    stroke({ x: foot.x, y: from.y }, { x: foot.x + width, y: from.y }),
    stroke(from, point),
    headAt(point, from),
  ]
}
