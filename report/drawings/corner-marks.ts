/** The corners of an outline, numbered on the view and listed with their places beside it. */
import type { Point } from '../../engine/index.ts'
import { type At, boxOf, type Ink, isTaken, lettering_mm, lineMeets, say, stroke, widthOf } from './ink.ts'
import { onPaper, type Placing } from './part-views.ts'
import { lengthText } from './size-words.ts'

const DIRECTIONS = 16
const REACHES = [2.6, 3.6, 5, 7, 9.5, 12.5, 16]
/** From here on a thin line leads to the corner. */
const LED_FROM = 4

/** Numbers beside the corners where nothing else stands; undefined where one finds no place. @param ink what stands already */
export function cornerMarks(outline: readonly Point[], placing: Placing, ink: readonly Ink[]): readonly Ink[] | undefined {
  const marks: Ink[] = []
  for (const [index, corner] of outline.entries()) {
    const mark = freeMark(String(index + 1), onPaper(placing, corner), [...ink, ...marks])
    if (mark === undefined) return undefined
    marks.push(...mark)
  }
  return marks
}

/** Words beside a place where nothing else stands; undefined where they find no room. @param ink what stands already */
export function freeMark(words: string, at: At, ink: readonly Ink[]): readonly Ink[] | undefined {
  const size = lettering_mm.table
  const boxes = ink.flatMap((one) => (one.kind === 'words' ? [boxOf(one)] : []))
  for (const reach of REACHES) {
    for (let direction = 0; direction < DIRECTIONS; direction++) {
      const angle = (2 * Math.PI * direction) / DIRECTIONS
      const middle = { x: at.x + reach * Math.cos(angle), y: at.y - reach * Math.sin(angle) }
      const label = say(words, { x: middle.x, y: middle.y + size / 4 }, { side: 'middle', size })
      if (isTaken(boxOf(label), ink)) continue
      if (reach < LED_FROM) return [label]
      const share = (reach - 2.4) / reach
      const lead = stroke(at, { x: at.x + share * (middle.x - at.x), y: at.y + share * (middle.y - at.y) })
      if (!lineMeets(lead, boxOf(label)) && !boxes.some((box) => lineMeets(lead, box))) return [label, lead]
    }
  }
  return undefined
}

const LINE = 3.9
const COLUMN = 35

const HEADING = 'Corners of the outline: number, x, y'

/** Width of a list of so many corners with so many lines below one another. */
export function cornerListWidth(count: number, lines: number): number {
  return Math.max(widthOf(HEADING, lettering_mm.table), COLUMN * Math.ceil(count / lines))
}

/** The list of corners in the part's frame. @param at upper left corner */
export function cornerList(outline: readonly Point[], at: At, lines: number): readonly Ink[] {
  const size = lettering_mm.table
  const head = say(HEADING, { x: at.x, y: at.y + LINE * 0.8 }, { size, heavy: true })
  const rows = outline.flatMap(({ x_mm, y_mm }, index): readonly Ink[] => {
    const left = at.x + COLUMN * Math.floor(index / lines)
    const y = at.y + LINE * (1.8 + (index % lines))
    const right = (words: string, x: number) => say(words, { x: left + x, y }, { size, side: 'end' })
    return [right(String(index + 1), 4), right(lengthText(x_mm), 17), right(lengthText(y_mm), 30)]
  })
  return [head, ...rows]
}

/** Height of a list with so many lines. */
export function cornerListHeight(lines: number): number {
  return LINE * (lines + 1.5)
}

/** Words broken into lines of a width. */
export function wrappedWords(words: string, width: number, size: number): readonly string[] {
  const lines: string[] = []
  for (const word of words.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`
    if (lines.length > 0 && widthOf(longer, size) <= width) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
