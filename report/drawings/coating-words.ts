/** What is said to a coater of a film and of what it goes on. */
import { type Coating, type DrawnHole, type DrawnPart, isMasked, type Part, type ShopDesign } from '../../engine/index.ts'
import { diameterWords, lengthText, limitsWords } from './size-words.ts'
import { maskedWords, placeText } from './surface-words.ts'
import type { TableColumn } from './table-ink.ts'

const MICROMETRES = 1000
const SECONDS = 60
const percent = (ratio: number): string => `${lengthText(ratio * 100)} %`

/** The film itself: how thick, how much of it grows inwards, its heat, where it is known from. */
export function coatingLines({ name, thickness, inward_ratio, bore_ratio, cure, source }: Coating): readonly string[] {
  const [thin, thick] = [thickness.least_mm, thickness.most_mm].map((mm) => lengthText(mm * MICROMETRES))
  const heat = cure && `Cure: ${lengthText(cure.temperature_C)} °C for ${lengthText(cure.time_s / SECONDS)} min.`
  return [
    `${name}: ${thin} to ${thick} µm outside`,
    `${percent(inward_ratio)} of it grows into the metal; in a bore it is ${percent(bore_ratio)} as thick.`,
    ...(heat === undefined ? [] : [heat]),
    `Source: ${source}`,
  ]
}

/** What of a part is kept bare, and where the rack may touch. */
export function partCoatingLines(part: Part): readonly string[] {
  const bare = maskedWords(part)
  const { racks = [] } = part
  const touching = racks.map((at, index) => `${index + 1} at ${placeText(at)}`).join('; ')
  return [
    bare === undefined ? 'Nothing is masked.' : `Masked, it stays bare: ${bare}.`,
    racks.length === 0
      ? 'Where the rack may touch is not stated: ask before you begin.'
      : `The rack touches here and nowhere else, by x and y of the part: ${touching}.`,
  ]
}

/** Columns of the table of sizes. */
export const coatedColumns: readonly TableColumn[] = [
  { head: 'where', most: 40 },
  { head: 'uncoated' },
  { head: 'with its coating' },
]

/** Diameters of the holes of a part before and with its coating. */
export function coatedRows({ part, holes }: DrawnPart): readonly (readonly string[])[] {
  return holes.map((hole) => {
    const { id } = hole.hole
    const isBare = isMasked(part, `holes.${id}`)
    return [`hole ${id}`, isBare ? 'masked' : uncoated(hole), diameterWords(hole.diameter)]
  })
}

/** Diameters of the pins that have a coating, before and with it. */
export function coatedPinRows({ pins }: ShopDesign, { name }: Coating): readonly (readonly string[])[] {
  return pins.flatMap((pin) =>
    pin.pin.coating?.name === name ? [[`pin ${pin.pin.id}`, uncoated(pin), diameterWords(pin.diameter)]] : [],
  )
}

function uncoated({ beforeCoating }: Pick<DrawnHole, 'beforeCoating'>): string {
  return beforeCoating === undefined ? 'no limits stated' : `Ø${limitsWords(beforeCoating)}`
}
