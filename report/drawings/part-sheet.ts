/**
 * The drawing of one part on one sheet.
 *
 *     ┌──────────────────────────────────────────────┐
 *     │            holes and edges in words          │
 *     │  sizes   face of the part        side view   │
 *     │  across  sizes below it          its sizes   │
 *     │  corners of the outline  notes  title block  │
 *     └──────────────────────────────────────────────┘
 *
 * The largest scale is taken at which everything has its place; where none does, holes and edges stand in a table on the right instead of in blocks,
 * and where that has none, the next larger paper is taken.
 */
import { cornerMarks, freeMark } from './corner-marks.ts'
import { type Box, frame, type Ink } from './ink.ts'
import { innerFrame, type Paper, type PaperName, papersFrom, scales } from './paper.ts'
import { partFoot } from './part-foot.ts'
import { type ViewedPart, type Views, viewsWithBlocks, viewsWithTable } from './part-sheet-views.ts'
import { onPaper, type Placing, slicesOf } from './part-views.ts'
import type { Sheet } from './sheet-file.ts'
import { drawTitleBlock, type TitleBlock } from './title-block.ts'

/** What a sheet is asked for. */
export interface PartSheetAsked extends ViewedPart {
  readonly notes: readonly string[]
  readonly block: Omit<TitleBlock, 'scale' | 'paper' | 'projection'>
  readonly paper: PaperName
}

/** The sheet; undefined for a part without an outline or a thickness, and for one that has no place on any paper at any scale. */
export function partSheet(asked: PartSheetAsked): Sheet | undefined {
  const { part } = asked.drawn
  if (part.outline.length === 0 || slicesOf(part).length === 0) return undefined
  for (const tried of waysToTry(asked.paper)) {
    const ink = laidOut(asked, tried)
    if (ink !== undefined) return { name: `part-${part.id}`, title: `Drawing of ${part.name}`, paper: tried.paper, ink }
  }
  return undefined
}

/** Papers, scales and ways to name holes, the best first: what would be drawn smaller than it is comes last, for nobody reads it. */
function waysToTry(asked: PaperName): readonly Tried[] {
  const of = (viewsOf: Tried['viewsOf'], paper: Paper) => scales.map((scale): Tried => ({ paper, ...scale, viewsOf }))
  const inOrder = papersFrom(asked).flatMap((paper) => [...of(viewsWithBlocks, paper), ...of(viewsWithTable, paper)])
  return [...inOrder.filter(({ ratio }) => ratio >= 1), ...inOrder.filter(({ ratio }) => ratio < 1)]
}

interface Tried {
  readonly paper: Paper
  readonly ratio: number
  readonly words: string
  readonly viewsOf: (asked: PartSheetAsked, room: Box, ratio: number) => Views | undefined
}

const INSET = 4

function laidOut(asked: PartSheetAsked, { paper, ratio, words, viewsOf }: Tried): readonly Ink[] | undefined {
  const { drawn, block, projection } = asked
  const sheet = innerFrame(paper)
  const foot = partFoot({ outline: drawn.part.outline, notes: asked.notes }, sheet)
  if (foot === undefined) return undefined
  const room = { left: sheet.left + INSET, top: sheet.top + INSET, right: sheet.right - INSET, bottom: foot.top - INSET }
  const views = viewsOf(asked, room, ratio)
  if (views === undefined) return undefined
  const corners = cornerMarks(drawn.part.outline, views.placing, views.ink)
  const marks = corners && threadMarks(asked, views.placing, { ink: views.ink, corners })
  if (marks === undefined) return undefined
  const title = drawTitleBlock({ ...block, scale: words, paper: paper.name, projection }, { x: sheet.right, y: sheet.bottom })
  return [...frame(sheet, 'wide'), ...views.ink, ...marks, ...foot.ink, ...title]
}

/** Corners and the names of threads; undefined where one finds no place. */
function threadMarks(
  { screws }: PartSheetAsked,
  placing: Placing,
  { ink, corners }: { readonly ink: readonly Ink[]; readonly corners: readonly Ink[] },
): readonly Ink[] | undefined {
  const marks = [...corners]
  for (const { id, holdsMount } of screws) {
    if (holdsMount === undefined) continue
    const mark = freeMark(`thread ${id}`, onPaper(placing, holdsMount.at), [...ink, ...marks])
    if (mark === undefined) return undefined
    marks.push(...mark)
  }
  return marks
}
