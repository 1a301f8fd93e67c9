/** All drawings of a design: a sheet for each part that has a shape, and what has none and why. */
import { type DrawnPart, type Evaluation, evaluate, partsList, type ShopDesign } from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { massText } from '../making/item-rows.ts'
import type { ValueText } from '../tables/value-text.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { assemblySheet } from './assembly-sheet.ts'
import { largestFrom, type PaperName } from './paper.ts'
import { partNotes } from './part-notes.ts'
import { partSheet } from './part-sheet.ts'
import { type Projection, slicesOf } from './part-views.ts'
import { type Sheet, sheetShape } from './sheet-file.ts'

/** How drawings are made. */
export interface DrawingsAsked {
  readonly paper: PaperName
  readonly projection: Projection
  /** As it stands in the title block; a dash where the design is kept in no store. */
  readonly revision?: string
  /** Of this design, where it is there already; else it is evaluated for the assembly sheet. */
  readonly evaluation?: Evaluation
}

/** What stands where nobody asks for anything else. */
export const usualDrawings: DrawingsAsked = { paper: 'A4', projection: 'third-angle' }

export interface Drawings {
  readonly sheets: readonly Sheet[]
  /** What has no drawing and why, a sentence each. */
  readonly left: readonly string[]
}

/** A sheet a part, and the finger put together. The same design gives the same sheets. */
export function drawingSheets(shop: ShopDesign, asked: DrawingsAsked = usualDrawings): Drawings {
  const { design } = shop.variation
  const { items } = partsList(design)
  const count = shop.parts.length + 1
  const blockOf = (title: string, number: number, mass?: ValueText) => ({
    title,
    design: design.title,
    revision: asked.revision ?? '–',
    sheet: `${number} of ${count}`,
    ...(mass && { mass: `one weighs ${mass.number} ${mass.unit}` }),
  })
  const drawn = shop.parts.map((part, index) => {
    const { mass_kg } = items[index]
    const block = blockOf(part.part.name, index + 1, mass_kg === undefined ? undefined : massText(mass_kg))
    const notes = partNotes(part.part, design)
    const sheet = partSheet({ drawn: part, notes, block, paper: asked.paper, projection: asked.projection })
    return sheet === undefined ? { why: whyNone(part) } : { sheet }
  })
  const block = blockOf('Assembly', count)
  const together = assemblySheet({ evaluation: asked.evaluation ?? evaluate(design), paper: largestFrom(asked.paper), block })
  const all: readonly { readonly sheet?: Sheet; readonly why?: string }[] = [
    ...drawn,
    together === undefined ? { why: 'the finger cannot be moved, so that it is not drawn put together' } : { sheet: together },
  ]
  return {
    sheets: all.flatMap(({ sheet }) => (sheet === undefined ? [] : [sheet])),
    left: all.flatMap(({ why }) => (why === undefined ? [] : [why])),
  }
}

function whyNone({ part }: DrawnPart): string {
  if (part.outline.length === 0) return `parts.${part.id} has no outline, so that it has no drawing`
  if (slicesOf(part).length === 0) return `parts.${part.id} has no thickness, so that it has no drawing`
  return `parts.${part.id} has no place on a sheet at any scale: give fewer holes a block, or draw it by hand from its solid`
}

/** The sheets as one document for the typesetter, a page each. */
export function drawingsJob(title: string, sheets: readonly Sheet[]): TypesetJob {
  const pages = sheets.map((sheet) => {
    const { width, height } = sheet.paper
    return { title: sheet.title, width, height, svg: svgText(sheetShape(sheet)) }
  })
  return { template: 'sheets', data: { title, sheets: pages } }
}
