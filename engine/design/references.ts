import type { HoleRef, Part, PartPoint, Pin } from './design.ts'
import type { Reading } from './reading.ts'

type TypedPartPoint = { readonly part: string } & (
  | { readonly hole: string }
  | { readonly pad: string }
  | { readonly x: string; readonly y: string }
)

/** Not found, and reported. Never leaves the reader, because a document with a problem gives no Design. */
export const notFound = -1

/** Finds parts, holes, edges, pads and pins by their ids and reports those that are not there, with the nearest one that is. */
export class References {
  private readonly reading: Reading
  private readonly parts: readonly Part[]
  private readonly pins: readonly Pin[]

  constructor(reading: Reading, parts: readonly Part[], pins: readonly Pin[] = []) {
    this.reading = reading
    this.parts = parts
    this.pins = pins
  }

  /** Index of a part; -1 when it has been reported. */
  part(place: string, id: string): number {
    return this.find(place, { id, what: 'a part', section: 'parts', known: this.parts })
  }

  /** Index of a pin; -1 when it has been reported. */
  pin(place: string, id: string): number {
    return this.find(place, { id, what: 'a pin', section: 'pins', known: this.pins })
  }

  /** Index of a load case; -1 when it has been reported. */
  loadCase(place: string, id: string): number {
    return this.ofSection(place, { id, what: 'a load case', section: 'loadCases' })
  }

  /** Index of a spring; -1 when it has been reported. */
  spring(place: string, id: string): number {
    return this.ofSection(place, { id, what: 'a spring', section: 'springs' })
  }

  /** `part.hole`, `part.edge` or `part.pad`, as two indices. */
  hole(place: string, typed: string): HoleRef {
    const { part, thing } = this.thing(place, { typed, section: 'holes' })
    return { part, hole: thing }
  }

  edge(place: string, typed: string): { readonly part: number; readonly edge: number } {
    const { part, thing } = this.thing(place, { typed, section: 'edges' })
    return { part, edge: thing }
  }

  pad(place: string, typed: string): { readonly part: number; readonly pad: number } {
    const { part, thing } = this.thing(place, { typed, section: 'pads' })
    return { part, pad: thing }
  }

  /** A place on a part by one of its holes, one of its pads, or coordinates in its own frame. */
  point(place: string, typed: TypedPartPoint): PartPoint {
    if ('x' in typed) {
      const at = {
        x_mm: this.reading.quantity(`${place}.x`, typed.x, 'length'),
        y_mm: this.reading.quantity(`${place}.y`, typed.y, 'length'),
      }
      return { part: this.part(`${place}.part`, typed.part), at }
    }
    const isHole = 'hole' in typed
    const section = isHole ? 'holes' : 'pads'
    const part = this.part(`${place}.part`, typed.part)
    const index = this.within(`${place}.${isHole ? 'hole' : 'pad'}`, { part, id: isHole ? typed.hole : typed.pad, section })
    return { part, at: this.parts[part]?.[section][index]?.at ?? { x_mm: Number.NaN, y_mm: Number.NaN } }
  }

  private thing(
    place: string,
    { typed, section }: { typed: string; section: 'holes' | 'edges' | 'pads' },
  ): { readonly part: number; readonly thing: number } {
    const [partId, id] = typed.split('.')
    const part = this.part(place, partId)
    return { part, thing: this.within(place, { part, id, section }) }
  }

  private within(
    place: string,
    { part, id, section }: { part: number; id: string; section: 'holes' | 'edges' | 'pads' },
  ): number {
    if (part === notFound) return notFound
    const owner = this.parts[part]
    const what = `one of the ${section} of ${owner.id}`
    return this.find(place, { id, what, section: `parts.${owner.id}.${section}`, known: owner[section] })
  }

  /** By the order of the document, which is that of the design; the things themselves need not have been read yet. */
  private ofSection(place: string, wanted: Omit<Wanted, 'known'> & { readonly section: 'loadCases' | 'springs' }): number {
    const known = Object.keys(this.reading.document[wanted.section] ?? {}).map((id) => ({ id }))
    return this.find(place, { ...wanted, known })
  }

  private find(place: string, { id, what, section, known }: Wanted): number {
    const index = known.findIndex((thing) => thing.id === id)
    if (index < 0 && !this.reading.wasTakenOut(`${section}.${id}`)) {
      this.reading.unknownName(place, { typed: id, what, known: known.map((thing) => thing.id) })
    }
    return index
  }
}

interface Wanted {
  readonly id: string
  readonly what: string
  readonly section: string
  readonly known: readonly { readonly id: string }[]
}
