/** All drawings of a design: parts, pins, what the coater is told, the finger put together; and what has no drawing and why. */
import {
  type Design,
  type DrawnPart,
  type Evaluation,
  evaluate,
  partsList,
  type Screw,
  type ShopDesign,
} from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { massText } from '../making/item-rows.ts'
import type { TypesetJob } from '../typeset/typeset-job.ts'
import { assemblySheet } from './assembly-sheet.ts'
import { coatedPartSheet, coatedPinsSheet } from './coating-sheets.ts'
import { largestFrom, type PaperName } from './paper.ts'
import { partNotes } from './part-notes.ts'
import { partSheet } from './part-sheet.ts'
import { type Projection, slicesOf } from './part-views.ts'
import { pinsSheet } from './pins-sheet.ts'
import { type Sheet, sheetShape } from './sheet-file.ts'
import type { TitleBlock } from './title-block.ts'

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

/** A sheet a part, one of the pins, what the coater is told, and the finger put together. The same design gives the same sheets. */
export function drawingSheets(shop: ShopDesign, asked: DrawingsAsked = usualDrawings): Drawings {
  const { design } = shop.variation
  const drafts = [
    ...partDrafts(shop, asked),
    ...pinDrafts(shop, asked),
    ...coatingDrafts(shop, asked),
    assemblyDraft(design, asked),
  ]
  const done = drafts.map(({ title, mass, drawn, whyNone }, index) => {
    const revision = asked.revision ?? '–'
    const block = { title, design: design.title, revision, sheet: `${index + 1} of ${drafts.length}`, ...(mass && { mass }) }
    return { sheet: drawn(block), whyNone }
  })
  return {
    sheets: done.flatMap(({ sheet }) => (sheet === undefined ? [] : [sheet])),
    left: done.flatMap(({ sheet, whyNone }) => (sheet === undefined ? [whyNone] : [])),
  }
}

/** A sheet before it has its number. */
interface Draft {
  readonly title: string
  /** What a piece weighs, in words. */
  readonly mass?: string
  /** Undefined where it cannot be drawn; then `whyNone` is said. */
  readonly drawn: (block: Omit<TitleBlock, 'scale' | 'paper' | 'projection'>) => Sheet | undefined
  readonly whyNone: string
}

function partDrafts(shop: ShopDesign, { paper, projection }: DrawingsAsked): readonly Draft[] {
  const { design } = shop.variation
  const { items } = partsList(design)
  return shop.parts.map((drawn, index) => {
    const { mass_kg } = items[index]
    const weighed = mass_kg === undefined ? undefined : massText(mass_kg)
    const notes = partNotes(drawn.part, design)
    const screws = screwsOf(shop, index)
    return {
      title: drawn.part.name,
      ...(weighed && { mass: `one weighs ${weighed.number} ${weighed.unit}` }),
      drawn: (block) => partSheet({ drawn, screws, notes, block, paper, projection }),
      whyNone: whyNone(drawn),
    }
  })
}

function screwsOf({ variation }: ShopDesign, index: number): readonly Screw[] {
  return (variation.design.screws ?? []).filter(({ part }) => part === index)
}

function pinDrafts(shop: ShopDesign, { paper }: DrawingsAsked): readonly Draft[] {
  if (shop.pins.length === 0) return []
  const title = shop.variation.design.springs.length === 0 ? 'Pins' : 'Pins and springs'
  const whyNone =
    'the table of pins and springs has no room on a sheet: their sizes stand in the parts list and the inspection plan'
  return [{ title, drawn: (block) => pinsSheet({ shop, paper, block }), whyNone }]
}

function coatingDrafts(shop: ShopDesign, { paper }: DrawingsAsked): readonly Draft[] {
  const ofParts = shop.parts.flatMap((drawn, index): readonly Draft[] => {
    const { coating, name, id } = drawn.part
    if (coating === undefined) return []
    const screws = screwsOf(shop, index)
    const whyNone = `parts.${id} has no coating sheet: it has no outline, or no place on a sheet; the note to the coater names it`
    return [{ title: `${name}: coating`, drawn: (block) => coatedPartSheet({ drawn, screws }, { paper, block }), whyNone }]
  })
  const coatings = new Map(shop.pins.flatMap(({ pin: { coating } }) => (coating === undefined ? [] : [[coating.name, coating]])))
  const ofPins = [...coatings.values()].map((coating, index): Draft => {
    const name = coatings.size === 1 ? 'coating-pins' : `coating-pins-${index + 1}`
    const whyNone = `the pins with ${coating.name} have no room on a coating sheet; the note to the coater names them`
    return { title: 'Pins: coating', drawn: (block) => coatedPinsSheet({ shop, coating, name }, { paper, block }), whyNone }
  })
  return [...ofParts, ...ofPins]
}

function assemblyDraft(design: Design, { paper, evaluation }: DrawingsAsked): Draft {
  return {
    title: 'Assembly',
    drawn: (block) => assemblySheet({ evaluation: evaluation ?? evaluate(design), paper: largestFrom(paper), block }),
    whyNone: 'the finger cannot be moved, so that it is not drawn put together',
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
