/** What goes to the coater: each coating with its parts, what is masked, and the sizes before and after it. */
import type { Coating, DrawnHole, ShopDesign } from '../../engine/index.ts'
import { diameterWords, lengthText, limitsWords } from '../drawings/size-words.ts'
import { maskedWords, placeText } from '../drawings/surface-words.ts'

const MICROMETRES = 1000

/** The note as text, a block for each coating; says so where nothing is coated. */
export function coatingNote(shop: ShopDesign): string {
  const { design } = shop.variation
  const coatings = new Map(
    [...shop.parts.map(({ part }) => part.coating), ...shop.pins.map(({ pin }) => pin.coating)].flatMap((coating) =>
      coating === undefined ? [] : [[coating.name, coating] as const],
    ),
  )
  if (coatings.size === 0) return `${design.title}\n\nNothing of this design is coated.\n`
  const blocks = [...coatings.values()].map((coating) => [...heading(coating), ...pieces(shop, coating)].join('\n'))
  return `${[design.title, ...blocks, CLOSING].join('\n\n')}\n`
}

const CLOSING = `Racks and hooks touch only where it says so here; where it says nothing, ask before you begin.
Measure a coupon of every batch and send it back with the parts.`

function heading({ name, thickness, inward_ratio, bore_ratio, cure, source }: Coating): readonly string[] {
  const [thin, thick] = [thickness.least_mm, thickness.most_mm].map((mm) => lengthText(mm * MICROMETRES))
  const heat = cure && `Cure: ${lengthText(cure.temperature_C)} °C for ${lengthText(cure.time_s / SECONDS)} min.`
  return [
    `${name}: ${thin} to ${thick} µm outside`,
    `${percent(inward_ratio)} of it grows into the metal; in a bore it is ${percent(bore_ratio)} as thick.`,
    ...(heat === undefined ? [] : [heat]),
    `Source: ${source}`,
  ]
}

const SECONDS = 60
const percent = (ratio: number): string => `${lengthText(ratio * 100)} %`

function pieces({ parts, pins }: ShopDesign, { name }: Coating): readonly string[] {
  const ofParts = parts.flatMap(({ part, holes }) => {
    if (part.coating?.name !== name) return []
    const bare = maskedWords(part)
    const racks =
      part.racks === undefined ? 'where the rack touches is not stated' : `rack at ${part.racks.map(placeText).join(' and at ')}`
    return [
      `- ${part.name}, ${bare === undefined ? 'nothing masked' : `masked: ${bare}`}, ${racks}`,
      ...holes.map((hole) => `    hole ${hole.hole.id}: ${sizes(hole)}`),
    ]
  })
  const ofPins = pins.flatMap((pin) => (pin.pin.coating?.name === name ? [`- pin ${pin.pin.id}: ${sizes(pin)}`] : []))
  return [...ofParts, ...ofPins]
}

function sizes({ diameter, beforeCoating }: Pick<DrawnHole, 'diameter' | 'beforeCoating'>): string {
  const before = beforeCoating === undefined ? 'no limits stated' : `Ø${limitsWords(beforeCoating)}`
  return `uncoated ${before}, coated ${diameterWords(diameter)}`
}
