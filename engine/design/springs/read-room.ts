/** The room that there is for a spring; a coil that does not fit into it is refused. */
import type { Document } from '../document.ts'
import type { Reading } from '../reading.ts'
import type { CoiledWire } from './coil.ts'

type TypedSpring = NonNullable<Document['springs']>[string]
type TypedRoom<Kind extends TypedSpring['kind']> = NonNullable<(TypedSpring & { readonly kind: Kind })['room']>

interface Wanted {
  /** Of the spring. */
  readonly place: string
  readonly reading: Reading
  readonly wire: CoiledWire | undefined
}

const shown = (value: number): string => `${Number(value.toPrecision(4))}`

/** Room of a torsion spring; its length is that of the coil as wound, unloaded. */
export function readTorsionRoom(typed: TypedRoom<'torsion'>, wanted: Wanted & { readonly bodyTurns: number }) {
  const { place, reading, wire, bodyTurns } = wanted
  const outside_mm = outsideOf(typed, wanted)
  const width_mm = reading.size(`${place}.room.width`, typed.width)
  const long_mm = wire ? wire.wire_mm * (bodyTurns + 1) : 0
  if (long_mm > width_mm) {
    const found = `a coil of ${shown(long_mm)} mm in ${shown(width_mm)} mm along the pin`
    reading.report({ code: 'too small', place: `${place}.room.width`, found, needed: 'room for the coil' })
  }
  return { outside_mm, width_mm }
}

/** Room of a compression or tension spring. */
export function readStraightRoom(typed: TypedRoom<'tension' | 'compression'>, wanted: Wanted) {
  const { place, reading, wire } = wanted
  const outside_mm = outsideOf(typed, wanted)
  const over_mm = typed.over === undefined ? 0 : reading.size(`${place}.room.over`, typed.over)
  if (wire && wire.mean_mm - wire.wire_mm <= over_mm) {
    const found = `a coil of ${shown(wire.mean_mm - wire.wire_mm)} mm inside over ${shown(over_mm)} mm`
    reading.report({ code: 'too large', place: `${place}.room.over`, found, needed: 'a coil that goes over it' })
  }
  return { outside_mm, over_mm }
}

function outsideOf({ outside }: { readonly outside: string }, { place, reading, wire }: Wanted): number {
  const outside_mm = reading.size(`${place}.room.outside`, outside)
  if (wire && wire.mean_mm + wire.wire_mm > outside_mm) {
    const found = `a coil of ${shown(wire.mean_mm + wire.wire_mm)} mm outside in ${shown(outside_mm)} mm`
    reading.report({ code: 'too small', place: `${place}.room.outside`, found, needed: 'room for the coil' })
  }
  return outside_mm
}
