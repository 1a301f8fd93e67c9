import { lettering, type Place, type Shape } from '../drawing/svg.ts'
import { wrappedWords } from '../drawings/corner-marks.ts'
import { widthOf } from '../drawings/ink.ts'

/** What stands below a ruler: a share at its left end, a share at its right end, and what the ruler shows. */
export interface FootAsked {
  readonly left: string
  readonly right: string
  readonly caption: string
  /** Ends of the ruler, and the base line of the first line. */
  readonly from_px: number
  readonly to_px: number
  readonly y_px: number
  readonly size_px: number
}

/** Room between the two shares on one line. */
const BETWEEN_PX = 24
const LINE_ratio = 1.5

/** The words with the base line of the last of them. Where both shares have no room beside each other, they stand one below the other. */
export function rulerFoot(asked: FootAsked): { readonly shapes: readonly Shape[]; readonly end_px: number } {
  const { left, right, caption, from_px, to_px, y_px, size_px } = asked
  const room = to_px - from_px
  const areBeside = widthOf(left, size_px) + widthOf(right, size_px) + BETWEEN_PX <= room
  const leftLines = wrappedWords(left, room, size_px)
  const rightLines = wrappedWords(right, room, size_px)
  const captionLines = wrappedWords(caption, room, size_px)
  const line = (index: number): number => y_px + index * LINE_ratio * size_px
  const place = (index: number, x: number): Place => ({ x, y: line(index) })
  const said = (words: string, at: Place, anchor: 'start' | 'end', of: string): Shape =>
    lettering(words, at, { class: of, 'text-anchor': anchor, 'font-size': size_px })
  const rightFrom = areBeside ? 0 : leftLines.length
  const captionFrom = rightFrom + rightLines.length
  return {
    shapes: [
      ...leftLines.map((words, index) => said(words, place(index, from_px), 'start', 'event-words')),
      ...rightLines.map((words, index) => said(words, place(rightFrom + index, to_px), 'end', 'event-words')),
      ...captionLines.map((words, index) => said(words, place(captionFrom + index, from_px), 'start', 'caption')),
    ],
    end_px: line(captionFrom + captionLines.length - 1),
  }
}
