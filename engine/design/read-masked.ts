import { facesOf, isMasked, kindOfFace } from './masked-faces.ts'
import type { Reading } from './reading.ts'
import type { FaceName, Part } from './sections/parts.ts'

/**
 * What the coater keeps bare of a part: faces that it has, each once.
 *
 * @param place of the list
 * @param typed names by the pattern of the structure
 */
export function readMasked(
  place: string,
  {
    part,
    typed = [],
    holes,
    edges,
  }: { readonly part: string; readonly typed: readonly string[] | undefined } & Pick<Part, 'holes' | 'edges'>,
  reading: Reading,
): Pick<Part, 'masked'> {
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id)
  const screws = Object.entries(reading.document.screws ?? {}).filter(([, screw]) => screw.in === part)
  const known = facesOf({ holes: ids(holes), edges: ids(edges), threads: screws.map(([id]) => id) })
  const masked = typed as readonly FaceName[]
  for (const [index, face] of masked.entries()) {
    const here = `${place}.${index}`
    const isTakenOut = reading.wasTakenOut(takenOutWith(part, face))
    if (!known.includes(face) && !isTakenOut) reading.unknownName(here, { typed: face, what: `a face of ${part}`, known })
    const others = masked.filter((other, at) => other !== face || at < index)
    if (!isMasked({ masked: others }, face)) continue
    const found = others.includes(face) ? `${face} twice` : `${face} beside ${kindOfFace(face)}, which has it already`
    reading.report({ code: 'too many', place: here, found, needed: 'each face once' })
  }
  return masked.length === 0 ? {} : { masked }
}

/** Where what a face belongs to would stand, had it not been taken out for a fault of its own. */
function takenOutWith(part: string, face: FaceName): string {
  const kind = kindOfFace(face)
  return kind === 'threads' ? face.replace(kind, 'screws') : `parts.${part}.${face}`
}
