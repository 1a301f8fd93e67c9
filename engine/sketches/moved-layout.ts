/** Test support: the same linkage seen in a mirror, or turned in its place. */
import type { LaidOut } from './laid-out.ts'

type Pair = readonly [number, number]

/** In a mirror along the x axis: y and all turns change sign. */
export function mirrored(layout: LaidOut): LaidOut {
  return moved(
    layout,
    ([x, y]) => [x, -y],
    (angle) => -angle,
  )
}

/** Turned about the origin of the mount's frame, which itself stays. */
export function rotated(layout: LaidOut, by_rad: number): LaidOut {
  const [c, s] = [Math.cos(by_rad), Math.sin(by_rad)]
  return moved(
    layout,
    ([x, y]) => [c * x - s * y, s * x + c * y],
    (angle) => angle + by_rad,
  )
}

function moved(layout: LaidOut, place: (at: Pair) => Pair, turn: (angle: number) => number): LaidOut {
  return {
    ...layout,
    frames: Object.fromEntries(
      Object.entries(layout.frames).map(([id, [x, y, angle]], index) =>
        index === 0 ? [id, [x, y, angle]] : [id, [...place([x, y]), turn(angle)]],
      ),
    ),
    pins: layout.pins.map(({ slot, ...pin }) => ({
      ...pin,
      at: place(pin.at),
      ...(slot && { slot: { ...slot, along_rad: turn(slot.along_rad) } }),
    })),
  }
}
