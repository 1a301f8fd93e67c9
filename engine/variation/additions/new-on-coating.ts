/** What a coater is told of a part: where the rack may touch it, and which faces stay bare. */
import type { Part, Point } from '../../design/design.ts'
import type { Change, JsonValue } from '../../design/edit/change.ts'
import { valueAt } from '../../design/edit/value-at.ts'
import type { Place } from '../../design/json-places.ts'
import { facesOf, isMasked } from '../../design/masked-faces.ts'
import type { Addition } from './addition.ts'
import { answered, askChoice, askQuantity } from './asks.ts'
import { type Ground, typedPoint } from './ground.ts'

/** A place of the rack: first in the middle of the longest side. None while no part that is asked about has a coating. */
export function newRack(ground: Ground): Addition | undefined {
  const part = coatedPart(ground)
  if (part === undefined) return undefined
  const [x, y] = typedPoint(middleOfLongest(part.outline))
  const asks = [askQuantity('x', 'length', { typed: x }), askQuantity('y', 'length', { typed: y })]
  const propose: Addition['propose'] = (inputs) => {
    const typed = answered(asks, inputs)
    return { value: [appended(ground, ['parts', part.id, 'racks'], [typed.x, typed.y])] }
  }
  return { kind: 'rack point', title: `A place for the rack on ${part.name}`, asks, propose }
}

/** A face that the coater masks. None while nothing that is asked about can still be masked. */
export function newMask(ground: Ground): Addition | undefined {
  const part = coatedPart(ground)
  if (part === undefined) return undefined
  const { design } = ground
  const threads = (design.screws ?? []).filter((screw) => design.parts[screw.part] === part)
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id)
  const all = facesOf({ holes: ids(part.holes), edges: ids(part.edges), threads: ids(threads) })
  const hasOneMasked = (kind: string): boolean => (part.masked ?? []).some((face) => face.startsWith(`${kind}.`))
  const free = all.filter((face) => !isMasked(part, face) && !hasOneMasked(face))
  if (free.length === 0) return undefined
  const asks = [askChoice('face', free)]
  const propose: Addition['propose'] = (inputs) => ({
    value: [appended(ground, ['parts', part.id, 'masked'], answered(asks, inputs).face)],
  })
  return { kind: 'masked face', title: `A masked face of ${part.name}`, asks, propose }
}

/** The part that is asked about, else the first, that has a coating. */
function coatedPart({ design, about }: Ground): Part | undefined {
  return design.parts.find(({ id, coating }) => coating !== undefined && (about === undefined || about === id))
}

function middleOfLongest(outline: readonly Point[]): Point {
  const sides = outline.map((from, index) => [from, outline[(index + 1) % outline.length]] as const)
  const length = ([from, to]: (typeof sides)[number]): number => Math.hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm)
  const [longest] = sides.toSorted((one, other) => length(other) - length(one))
  if (longest === undefined) return { x_mm: 0, y_mm: 0 }
  return { x_mm: (longest[0].x_mm + longest[1].x_mm) / 2, y_mm: (longest[0].y_mm + longest[1].y_mm) / 2 }
}

/** Behind the last of a list, which may not be there yet. */
function appended({ desk }: Ground, list: Place, value: JsonValue): Change {
  const there = valueAt(desk.document, list)
  if (!Array.isArray(there)) return { kind: 'set', place: list, value: [value] }
  return { kind: 'set', place: [...list, there.length], value }
}
