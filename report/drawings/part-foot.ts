/** What stands below the views of a part: its corners, and the notes beside them and, where they are many, over the title block too. */
import type { Point } from '../../engine/index.ts'
import { cornerList, cornerListHeight, cornerListWidth, wrappedWords } from './corner-marks.ts'
import { type Box, type Ink, lettering_mm, say } from './ink.ts'
import { titleSize } from './title-block.ts'

export interface Foot {
  readonly top: number
  readonly ink: readonly Ink[]
}

const INSET = 4
const NOTE_LINE = 3.9
const CORNER_LINES = 9
/** Narrower notes are hard to read. */
const NOTES_LEAST = 60
/** The lowest that corners and title block leave. */
const LEAST = Math.max(cornerListHeight(CORNER_LINES), titleSize.height)

/** Undefined where the notes have no room in the lower half of the sheet. */
export function partFoot(
  { outline, notes }: { readonly outline: readonly Point[]; readonly notes: readonly string[] },
  sheet: Box,
): Foot | undefined {
  const left = sheet.left + INSET + cornerListWidth(outline.length, CORNER_LINES) + INSET
  const over = sheet.right - titleSize.width
  const beside = over - INSET - left
  if (beside < NOTES_LEAST) return undefined
  const one = wrapped(notes, beside)
  const two = wrapped(notes, Math.min(beside, titleSize.width - INSET))
  const [single, double] = [heightOf(one.length, linesBeside), heightOf(two.length, linesOfBoth)]
  const [lines, height] = single <= double ? [one, single] : [two, double]
  if (height > (sheet.bottom - sheet.top) / 2) return undefined
  const top = sheet.bottom - height
  const said = lines.map((words, index) => {
    const beyond = index - linesBeside(height)
    const [x, row] = beyond < 0 ? [left, index] : [over, beyond]
    return say(words, { x, y: top + NOTE_LINE * (row + 1) }, { size: lettering_mm.table })
  })
  return { top, ink: [...cornerList(outline, { x: sheet.left + INSET, y: top + 1 }, CORNER_LINES), ...said] }
}

function wrapped(notes: readonly string[], width: number): readonly string[] {
  return notes.flatMap((note, index) => wrappedWords(`${index + 1}. ${note}`, width, lettering_mm.table))
}

const linesBeside = (height: number): number => Math.floor((height - INSET) / NOTE_LINE) - 1
const linesOver = (height: number): number => Math.max(0, Math.floor((height - titleSize.height - INSET) / NOTE_LINE))
const linesOfBoth = (height: number): number => linesBeside(height) + linesOver(height)

/** The least height at which so many lines have room. */
function heightOf(count: number, room: (height: number) => number): number {
  let height = LEAST + INSET
  while (room(height) < count) height += NOTE_LINE
  return height
}
