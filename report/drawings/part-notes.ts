/** What a drawing says in words about a part: material, coating, what the limits are of, what holds where nothing is said. */
import type { Design, Part, Screw } from '../../engine/index.ts'
import { slicesOf } from './part-views.ts'
import { lengthText } from './size-words.ts'
import { edgesOfPartWords, maskedWords, placeText, roughnessWords, threadWords } from './surface-words.ts'

/** One sentence a note, in the order in which a shop asks. */
export function partNotes(part: Part, design: Design): readonly string[] {
  const { material, coating } = part
  const { generalTolerance } = design
  return [
    `Material: ${material?.name ?? 'not stated; ask before you cut'}.`,
    ...(coating === undefined ? ['No coating.'] : coatingNotes(part)),
    generalTolerance === undefined
      ? 'Sizes without limits: no general tolerance is stated; ask before you cut.'
      : `Sizes without limits: ISO 2768-1, class ${generalTolerance}.`,
    ...(part.holes.some(({ positionZone_mm }) => positionZone_mm !== undefined)
      ? ['Framed sizes are exact; the zone of the frame is about them. A is the face that the view shows.']
      : []),
    ...surfaceNotes(part),
    ...threadNotes(part, design),
    ...(slicesOf(part).length > 1 ? ['What joins the plates of the fork is not in the design: as agreed.'] : []),
  ]
}

/** What is not stated is said, so that nobody takes silence for leave. */
function surfaceNotes(part: Part): readonly string[] {
  const edges = edgesOfPartWords(part)
  const { roughness_mm } = part
  return [
    edges ?? 'Edge states are not stated: break edges as agreed, leave no burr.',
    roughness_mm === undefined
      ? 'Roughness of what says none is not stated: as agreed.'
      : `Surfaces, where nothing else is said: ${roughnessWords(roughness_mm)}.`,
  ]
}

/** Threads that are made alike are one note. */
function threadNotes(part: Part, { screws = [], parts }: Design): readonly string[] {
  const own = screws.filter((screw) => parts[screw.part].id === part.id)
  const alike = [...new Set(own.map(threadWords))]
  return alike.map((words) => {
    const those = own.filter((screw) => threadWords(screw) === words)
    const ids = those.map(({ id }) => id).join(', ')
    const places = those.flatMap(({ holdsMount }) => (holdsMount === undefined ? [] : [placeText(holdsMount.at)]))
    const where = places.length < those.length ? 'where, is not in the design' : `at ${places.join(' and at ')}`
    return `Thread ${ids}: ${words}, ${where}${acrossWords(those)}.`
  })
}

/** Threads that are made alike and lie elsewhere across the width are told one by one. */
function acrossWords(screws: readonly Screw[]): string {
  const said = screws.map(({ across_mm }) => across_mm?.map(lengthText).join(' and '))
  if (said.every((words) => words === said[0] && words !== undefined)) return `; across the width at ${said[0]}`
  return screws
    .map(
      ({ id }, index) =>
        `; ${id} across the width ${said[index] === undefined ? 'where, is not in the design' : `at ${said[index]}`}`,
    )
    .join('')
}

const MICROMETRES = 1000

function coatingNotes({ coating, masked = [], racks = [] }: Part): readonly string[] {
  if (coating === undefined) return []
  const { least_mm, most_mm } = coating.thickness
  const [thin, thick] = [least_mm, most_mm].map((mm) => lengthText(mm * MICROMETRES))
  const range = thin === thick ? thin : `${thin} to ${thick}`
  const bare = maskedWords({ masked })
  return [
    `Coating: ${coating.name}, ${range} µm outside; limits without “uncoated” hold with it.`,
    bare === undefined ? 'Nothing is masked.' : `Masked: ${bare}.`,
    ...(racks.length === 0 ? [] : [`The rack touches at ${racks.map(placeText).join(' and at ')} only.`]),
  ]
}
