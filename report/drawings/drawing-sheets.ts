/** All drawings of a design: a sheet for each part that has a shape, and what has none and why. */
import { type DrawnPart, partsList, type ShopDesign } from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { massText } from '../making/item-rows.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import type { PaperName } from './paper.ts'
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
}

/** What stands where nobody asks for anything else. */
export const usualDrawings: DrawingsAsked = { paper: 'A4', projection: 'third-angle' }

export interface Drawings {
  readonly sheets: readonly Sheet[]
  /** What has no drawing and why, a sentence each. */
  readonly left: readonly string[]
}

/** The same design gives the same sheets. */
export function drawingSheets(shop: ShopDesign, asked: DrawingsAsked = usualDrawings): Drawings {
  const { design } = shop.variation
  const { items } = partsList(design)
  const drawn = shop.parts.map((part, index) => {
    const { mass_kg } = items[index]
    const mass = mass_kg === undefined ? undefined : massText(mass_kg)
    const block = {
      title: part.part.name,
      design: design.title,
      revision: asked.revision ?? '–',
      sheet: `${index + 1} of ${shop.parts.length}`,
      ...(mass && { mass: `one weighs ${mass.number} ${mass.unit}` }),
    }
    const notes = partNotes(part.part, design)
    return { part, sheet: partSheet({ drawn: part, notes, block, paper: asked.paper, projection: asked.projection }) }
  })
  return {
    sheets: drawn.flatMap(({ sheet }) => (sheet === undefined ? [] : [sheet])),
    left: drawn.flatMap(({ part, sheet }) => (sheet === undefined ? [whyNone(part)] : [])),
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
