/** What a drawing says in words about a part: material, coating, what the limits are of, what holds where nothing is said. */
import type { Design, Part } from '../../engine/index.ts'
import { slicesOf } from './part-views.ts'
import { lengthText } from './size-words.ts'

/** One sentence a note, in the order in which a shop asks. */
export function partNotes(part: Part, { generalTolerance }: Design): readonly string[] {
  const { material, coating } = part
  return [
    `Material: ${material?.name ?? 'not stated; ask before you cut'}.`,
    ...(coating === undefined ? ['No coating.'] : coatingNotes(part)),
    generalTolerance === undefined
      ? 'Sizes without limits: no general tolerance is stated; ask before you cut.'
      : `Sizes without limits: ISO 2768-1, class ${generalTolerance}.`,
    ...(part.holes.some(({ positionZone_mm }) => positionZone_mm !== undefined)
      ? ['Framed sizes are exact; the zone of the frame is about them. A is the face of the part as drawn.']
      : []),
    'Edge states and roughness are not stated: break edges as agreed, leave no burr.',
    ...(slicesOf(part).length > 1 ? ['What joins the plates of the fork is not in the design: as agreed.'] : []),
  ]
}

const MICROMETRES = 1000

function coatingNotes({ coating, masked = [] }: Part): readonly string[] {
  if (coating === undefined) return []
  const { least_mm, most_mm } = coating.thickness
  const [thin, thick] = [least_mm, most_mm].map((mm) => lengthText(mm * MICROMETRES))
  const range = thin === thick ? thin : `${thin} to ${thick}`
  return [
    `Coating: ${coating.name}, ${range} µm outside; limits without “uncoated” hold with it.`,
    masked.length === 0 ? 'Nothing is masked.' : `Masked: ${masked.join(' and ')}.`,
  ]
}
