/** What goes to the coater: each coating with its parts, what is masked, and the sizes before and after it. */
import type { Coating, ShopDesign } from '../../engine/index.ts'
import { coatedPinRows, coatedRows, coatingLines, partCoatingLines } from '../drawings/coating-words.ts'

/** The note as text, a block for each coating; says so where nothing is coated. */
export function coatingNote(shop: ShopDesign): string {
  const { design } = shop.variation
  const coatings = coatingsOf(shop)
  if (coatings.length === 0) return `${design.title}\n\nNothing of this design is coated.\n`
  const blocks = coatings.map((coating) => [...coatingLines(coating), ...pieces(shop, coating)].join('\n'))
  return `${[design.title, ...blocks, CLOSING].join('\n\n')}\n`
}

/** Coatings of parts, then those of pins, each once. */
function coatingsOf({ parts, pins }: ShopDesign): readonly Coating[] {
  const all = [...parts.map(({ part }) => part.coating), ...pins.map(({ pin }) => pin.coating)]
  return [...new Map(all.flatMap((coating) => (coating === undefined ? [] : [[coating.name, coating] as const]))).values()]
}

const CLOSING = 'Measure a coupon of every batch and send it back with the parts.'

function pieces(shop: ShopDesign, coating: Coating): readonly string[] {
  const ofParts = shop.parts.flatMap((drawn) => {
    if (drawn.part.coating?.name !== coating.name) return []
    const lines = [...partCoatingLines(drawn.part), ...coatedRows(drawn).map(rowText)]
    return [`- ${drawn.part.name}`, ...lines.map((line) => `    ${line}`)]
  })
  return [...ofParts, ...coatedPinRows(shop, coating).map((row) => `- ${rowText(row)}`)]
}

const rowText = ([where, uncoated, coated]: readonly string[]): string => `${where}: uncoated ${uncoated}, coated ${coated}`
