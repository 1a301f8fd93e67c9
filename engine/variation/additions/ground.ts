/** The design that something is added to: its document, its parts as drawn, and what of it new things take over. */
import type { Design, Point } from '../../design/design.ts'
import type { Change, JsonValue } from '../../design/edit/change.ts'
import { type Desk, deskOf } from '../../design/edit/desk.ts'
import { entriesOf, valueAt } from '../../design/edit/value-at.ts'
import type { Place } from '../../design/json-places.ts'
import { readDesign } from '../../design/read-design.ts'
import { assemble, drawnPosture } from '../../motion/assemble.ts'
import { mechanismOf, placed } from '../../motion/mechanism.ts'

/** A document without problems, and where its parts stand as drawn. */
export interface Ground {
  readonly desk: Desk
  readonly design: Design
  /** Three numbers a part; assembled where the finger can be, else as it stands in the document. */
  readonly posture: Float64Array
  /** The part that is asked about; absent where any will do. */
  readonly about?: string
}

/** A hole of the design by its name in the document, `part.hole`. */
export interface NamedHole {
  readonly name: string
  readonly part: number
  readonly hole: number
  /** In the mount frame as drawn. */
  readonly at: Point
  /** The pin that sits in it. */
  readonly pin?: number
}

/** Undefined while the document has problems: nothing can be placed on it. @param about id of a part */
export function groundOf(text: string, about?: string): Ground | undefined {
  const design = readDesign(text).value
  if (!design) return undefined
  const mechanism = mechanismOf(design)
  const assembled = mechanism.columns_count === mechanism.rows_count + 1 ? assemble(mechanism).posture : undefined
  return { desk: deskOf(text), design, posture: assembled ?? drawnPosture(design), ...(about !== undefined && { about }) }
}

/** All holes, in the order of the parts. */
export function holesOf({ design, posture }: Ground): readonly NamedHole[] {
  return design.parts.flatMap(({ id, holes }, part) =>
    holes.map((hole, index): NamedHole => {
      const pin = design.pins.findIndex(({ joins }) => joins.some((one) => one.part === part && one.hole === index))
      const at = placed(posture, part, hole.at)
      return { name: `${id}.${hole.id}`, part, hole: index, at, ...(pin >= 0 && { pin }) }
    }),
  )
}

/** A point of the mount frame in the frame of a part, as drawn. */
export function onPart({ posture }: Ground, part: number, at: Point): Point {
  const [x, y, turn] = posture.subarray(3 * part, 3 * part + 3)
  const [dx, dy] = [at.x_mm - x, at.y_mm - y]
  return {
    x_mm: Math.cos(turn) * dx + Math.sin(turn) * dy,
    y_mm: Math.cos(turn) * dy - Math.sin(turn) * dx,
  }
}

/** A name that no thing at that place has: the one given, or with the first number behind it that is free. */
export function freeName({ desk }: Ground, place: Place, wanted: string): string {
  return nameBeside(
    entriesOf(valueAt(desk.document, place)).map(([id]) => id),
    wanted,
  )
}

/** A name that no hole, edge or pad of any part has. */
export function freeNameOnParts({ design }: Ground, wanted: string): string {
  return nameBeside(
    design.parts.flatMap(({ holes, edges, pads }) => [...holes, ...edges, ...pads].map(({ id }) => id)),
    wanted,
  )
}

function nameBeside(names: readonly string[], wanted: string): string {
  const taken = new Set(names)
  let name = wanted
  for (let number = 2; taken.has(name); number++) name = `${wanted}${number}`
  return name
}

/** Puts a thing into a section of the document, or of a part, which may not be there yet. */
export function putInto({ desk }: Ground, section: Place, [id, thing]: readonly [string, JsonValue]): Change {
  if (valueAt(desk.document, section) !== undefined) return { kind: 'set', place: [...section, id], value: thing }
  return { kind: 'set', place: section, value: { [id]: thing } }
}

/** What is typed at a place; undefined where nothing is, or no text. */
export function typedAt({ desk }: Ground, ...place: Place): string | undefined {
  const value = valueAt(desk.document, place)
  return typeof value === 'string' ? value : undefined
}

/** Digits of a calculated length: a micrometre, finer than any shop holds. */
const digits = 3

/** A calculated length as it is typed, to the micrometre. */
export function typedLength(value_mm: number): string {
  return `${Number(value_mm.toFixed(digits)) + 0} mm`
}

/** A calculated point as it is typed. */
export function typedPoint({ x_mm, y_mm }: Point): readonly [string, string] {
  return [typedLength(x_mm), typedLength(y_mm)]
}
