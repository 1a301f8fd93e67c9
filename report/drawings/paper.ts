/** Sizes of paper and scales for shop drawings. */
import type { Box } from './ink.ts'

/** A sheet of paper lying across, mm. */
export interface Paper {
  readonly name: PaperName
  readonly width: number
  readonly height: number
}

/** Papers that a drawing can be asked for on, two of either family. */
export const paperNames = ['A4', 'A3', 'Letter', 'Tabloid'] as const
export type PaperName = (typeof paperNames)[number]

/** SOURCE standard: ISO 216 (A4, A3); ANSI/ASME Y14.1 sizes A and B, 8.5 × 11 in and 11 × 17 in; from memory. */
const PAPERS: Readonly<Record<PaperName, Paper>> = {
  A4: { name: 'A4', width: 297, height: 210 },
  A3: { name: 'A3', width: 420, height: 297 },
  Letter: { name: 'Letter', width: 279.4, height: 215.9 },
  Tabloid: { name: 'Tabloid', width: 431.8, height: 279.4 },
}

/** The larger sheet that is taken where a drawing does not fit on the smaller. */
const LARGER: Partial<Record<PaperName, PaperName>> = { A4: 'A3', Letter: 'Tabloid' }

/** The papers that a drawing is tried on, the one asked for first. */
export function papersFrom(name: PaperName): readonly Paper[] {
  const larger = LARGER[name]
  return [PAPERS[name], ...(larger === undefined ? [] : [PAPERS[larger]])]
}

/** The largest paper that goes with one: for what has much to say. */
export function largestFrom(name: PaperName): Paper {
  const papers = papersFrom(name)
  return papers[papers.length - 1]
}

/** Scales of ISO 5455, largest first (from memory): the drawing over the part. */
export const scales: readonly { readonly words: string; readonly ratio: number }[] = [
  { words: '5:1', ratio: 5 },
  { words: '2:1', ratio: 2 },
  { words: '1:1', ratio: 1 },
  { words: '1:2', ratio: 1 / 2 },
  { words: '1:5', ratio: 1 / 5 },
]

/** Margins of ISO 5457 (from memory): 20 mm where sheets are filed, 10 mm elsewhere. */
const margins = { filed: 20, other: 10 } as const

/** The frame within which a paper is drawn on. */
export function innerFrame({ width, height }: Paper): Box {
  return { left: margins.filed, top: margins.other, right: width - margins.other, bottom: height - margins.other }
}
