/** Test support: a design from where its pins stand, so that the drawn posture closes exactly whatever the sizes. */
import type { Design } from '../design/design.ts'
import { type Sketch, type SketchPart, sketch } from './sketch.ts'

type Pair = readonly [number, number]

export interface LaidPin {
  readonly id: string
  /** Where it stands in the mount frame as drawn. */
  readonly at: Pair
  /** Parts it joins; the first is the one it is fixed in. */
  readonly joins: readonly string[]
  /** The joined part that has a slot for it, the direction of the slot in the mount frame, and how far off its middle the pin is. */
  readonly slot?: { readonly in: string; readonly along_rad: number; readonly off_mm?: number; readonly length_mm?: number }
  readonly radius_mm?: number
  readonly friction?: number
}

export interface LaidOut {
  /** Frames of the parts as drawn: x, y, turn. The mount comes first. */
  readonly frames: Readonly<Record<string, readonly [number, number, number]>>
  readonly pins: readonly LaidPin[]
  readonly drive: Sketch['drive']
  readonly more?: Partial<Sketch>
}

const LONG_SLOT_MM = 1000

/** Every hole is put where its pin stands. */
export function laidOut({ frames, pins, drive, more }: LaidOut): Design {
  const parts = Object.entries(frames).map(([id, frame], index): SketchPart => {
    const here = pins.filter((pin) => pin.joins.includes(id))
    const slotted = here.filter((pin) => pin.slot?.in === id)
    return {
      id,
      role: index === 0 ? 'mount' : 'other',
      drawn: frame,
      holes: Object.fromEntries(here.map((pin) => [pin.id, inFrame(frame, holeOf(pin, id))])),
      slots: Object.fromEntries(
        slotted.map((pin) => [pin.id, [pin.slot?.length_mm ?? LONG_SLOT_MM, pin.slot!.along_rad - frame[2]]]),
      ),
    }
  })
  return sketch({
    parts,
    pins: pins.map(({ id, joins, radius_mm, friction }) => ({
      id,
      joins: joins.map((part) => `${part}.${id}`),
      radius_mm: radius_mm ?? 1.5,
      friction: friction ?? 0,
    })),
    drive,
    ...more,
  })
}

function holeOf({ at, slot }: LaidPin, part: string): Pair {
  if (slot?.in !== part) return at
  const off = slot.off_mm ?? 0
  return [at[0] - off * Math.cos(slot.along_rad), at[1] - off * Math.sin(slot.along_rad)]
}

function inFrame([x, y, turn]: readonly [number, number, number], [px, py]: Pair): Pair {
  const dx = px - x
  const dy = py - y
  return [Math.cos(turn) * dx + Math.sin(turn) * dy, Math.cos(turn) * dy - Math.sin(turn) * dx]
}
