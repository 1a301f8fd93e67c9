/** Changes to the text of a design that the drawing offers: where a hole stands. Nothing else of the document is touched. */
import type { Design, Point } from '../../engine/index.ts'

/** The shop's step for a dragged pin. */
export const STEP_MM = 0.1

const LITERAL_MM = /^\s*([-−+]?\d+(?:\.\d+)?)\s*mm\s*$/

/** A hole whose place may be changed by hand, because both of its coordinates are plain millimetres in the file. */
export interface MovableHole {
  readonly pin: number
  /** Part and hole by index, and by name as in the file. */
  readonly part: number
  readonly partId: string
  readonly holeId: string
  readonly at: Point
}

/**
 * The hole that moves when a pin is dragged: of the parts that the pin joins, the first that is no link, whose hole is not the origin of its
 * own frame, and whose place is written as plain millimetres. None for pins whose place is an expression: there the dimension must be changed.
 */
export function movableHoles(design: Design, text: string): readonly MovableHole[] {
  const written = JSON.parse(text) as Written
  return design.pins.flatMap((pin, index) => {
    const found = pin.joins.flatMap(({ part, hole }) => {
      const { id: partId, role, holes } = design.parts[part]
      const { id: holeId, at } = holes[hole]
      const place = written.parts[partId]?.holes?.[holeId]
      const isPlain = place !== undefined && literal(place.x) && literal(place.y)
      const isOrigin = at.x_mm === 0 && at.y_mm === 0
      return role === 'link' || isOrigin || !isPlain ? [] : [{ pin: index, part, partId, holeId, at }]
    })
    return found.slice(0, 1)
  })
}

/** The text with one hole at another place, rounded to the shop's step. */
export function withHoleAt(text: string, hole: MovableHole, at: Point): string {
  const written = JSON.parse(text) as Written
  const place = written.parts[hole.partId]?.holes?.[hole.holeId]
  if (place === undefined) throw new Error(`the design has no hole ${hole.partId}.${hole.holeId}`)
  place.x = millimetres(at.x_mm)
  place.y = millimetres(at.y_mm)
  return JSON.stringify(written, null, 2)
}

/** A place rounded to the shop's step. */
export function stepped(at: Point): Point {
  return { x_mm: Math.round(at.x_mm / STEP_MM) * STEP_MM, y_mm: Math.round(at.y_mm / STEP_MM) * STEP_MM }
}

interface Written {
  parts: Record<string, { holes?: Record<string, { x: unknown; y: unknown }> }>
}

function literal(value: unknown): boolean {
  return typeof value === 'string' && LITERAL_MM.test(value)
}

function millimetres(value: number): string {
  return `${value.toFixed(2)} mm`
}

/** Holes that stand elsewhere than in the file, with both places in words. */
export function movedHoles(
  fileText: string,
  text: string,
): readonly { readonly hole: string; readonly from: string; readonly to: string }[] {
  if (fileText === text) return []
  const [before, after] = [JSON.parse(fileText) as Written, JSON.parse(text) as Written]
  return Object.entries(before.parts).flatMap(([partId, part]) =>
    Object.entries(part.holes ?? {}).flatMap(([holeId, place]) => {
      const now = after.parts[partId]?.holes?.[holeId]
      if (now === undefined || (now.x === place.x && now.y === place.y)) return []
      return [{ hole: `${partId}.${holeId}`, from: `(${place.x}, ${place.y})`, to: `(${now.x}, ${now.y})` }]
    }),
  )
}
