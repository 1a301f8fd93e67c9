/**
 * The boundary of a flat body as STEP entities: two flat faces, and a side face for each piece of its contours.
 *
 *     top     ─▶──        A side face has the material to the left of its piece, so its outward side is to the right:
 *            │  ▲         along × up = outward. Its loop runs along the foot, up, back along the top, down.
 *     foot   ▼──▶
 *
 * SOURCE standard: ISO 10303-42 (geometry and topology), from memory.
 */
import type { Point } from '../../engine/index.ts'
import type { Contour, FlatBody, Piece } from './flat-body.ts'
import { type StepText, stepList, stepReal, stepString } from './step-text.ts'

const NAMELESS = stepString('')

interface Direction {
  readonly x: number
  readonly y: number
  readonly z: number
}

const UP: Direction = { x: 0, y: 0, z: 1 }
const DOWN: Direction = { x: 0, y: 0, z: -1 }
const AHEAD: Direction = { x: 1, y: 0, z: 0 }

/** Writes the closed shell of a body as a solid. @returns the reference of the solid */
export function writeSolid(text: StepText, body: FlatBody): string {
  const walls = body.contours.map((contour) => writeWalls(text, contour, body))
  const faces = [...walls.flatMap(({ faces: own }) => own), lid(text, body, walls, 'top'), lid(text, body, walls, 'foot')]
  return text.add('MANIFOLD_SOLID_BREP', NAMELESS, text.add('CLOSED_SHELL', NAMELESS, stepList(faces)))
}

/** The side faces of one contour, and its edges for the lids. */
interface Walls {
  readonly faces: readonly string[]
  readonly foot: readonly string[]
  readonly top: readonly string[]
}

function writeWalls(text: StepText, contour: Contour, { from_mm, to_mm }: FlatBody): Walls {
  const feet = contour.map(({ from }) => vertex(text, from, from_mm))
  const tops = contour.map(({ from }) => vertex(text, from, to_mm))
  const after = (index: number): number => (index + 1) % contour.length
  const foot = contour.map((piece, index) => edge(text, [feet[index], feet[after(index)]], curve(text, piece, from_mm)))
  const top = contour.map((piece, index) => edge(text, [tops[index], tops[after(index)]], curve(text, piece, to_mm)))
  const uprights = contour.map(({ from }, index) => {
    const straight = { geometry: lineFrom(text, from, { z_mm: from_mm, direction: UP }), isAlong: true }
    return edge(text, [feet[index], tops[index]], straight)
  })
  const faces = contour.map((piece, index) => {
    const loop = [
      oriented(text, foot[index], true),
      oriented(text, uprights[after(index)], true),
      oriented(text, top[index], false),
      oriented(text, uprights[index], false),
    ]
    const { surface, isOutward } = wall(text, piece, from_mm)
    return face(text, [loop], { surface, isOutward })
  })
  return { faces, foot, top }
}

function lid(text: StepText, body: FlatBody, walls: readonly Walls[], which: 'top' | 'foot'): string {
  const isTop = which === 'top'
  const [{ from }] = body.contours[0]
  const at = { z_mm: isTop ? body.to_mm : body.from_mm, axis: isTop ? UP : DOWN, ahead: AHEAD }
  const surface = text.add('PLANE', NAMELESS, placement(text, from, at))
  const loops = walls.map((own) => {
    const edges = own[which].map((one) => oriented(text, one, isTop))
    return isTop ? edges : edges.toReversed()
  })
  return face(text, loops, { surface, isOutward: true })
}

interface Surface {
  readonly surface: string
  /** Whether the surface's own normal points out of the body. */
  readonly isOutward: boolean
}

function wall(text: StepText, { from, to, arc }: Piece, z_mm: number): Surface {
  if (arc) {
    const place = placement(text, arc.centre, { z_mm, axis: UP, ahead: AHEAD })
    return { surface: text.add('CYLINDRICAL_SURFACE', NAMELESS, place, stepReal(arc.radius_mm)), isOutward: arc.turn === 'left' }
  }
  const along = unit(from, to)
  const place = placement(text, from, { z_mm, axis: { x: along.y, y: -along.x, z: 0 }, ahead: along })
  return { surface: text.add('PLANE', NAMELESS, place), isOutward: true }
}

/** The first loop bounds a face, the others are openings in it. */
function face(text: StepText, loops: readonly (readonly string[])[], { surface, isOutward }: Surface): string {
  const bounds = loops.map((loop, index) => {
    const ring = text.add('EDGE_LOOP', NAMELESS, stepList(loop))
    return text.add(index === 0 ? 'FACE_OUTER_BOUND' : 'FACE_BOUND', NAMELESS, ring, '.T.')
  })
  return text.add('ADVANCED_FACE', NAMELESS, stepList(bounds), surface, logical(isOutward))
}

interface Curve {
  readonly geometry: string
  /** Whether the curve's own sense is that of the edge. */
  readonly isAlong: boolean
}

function curve(text: StepText, { from, to, arc }: Piece, z_mm: number): Curve {
  if (!arc) return { geometry: lineFrom(text, from, { z_mm, direction: unit(from, to) }), isAlong: true }
  const place = placement(text, arc.centre, { z_mm, axis: UP, ahead: AHEAD })
  return { geometry: text.add('CIRCLE', NAMELESS, place, stepReal(arc.radius_mm)), isAlong: arc.turn === 'left' }
}

function lineFrom(text: StepText, from: Point, { z_mm, direction }: { z_mm: number; direction: Direction }): string {
  const vector = text.add('VECTOR', NAMELESS, directionOf(text, direction), stepReal(1))
  return text.add('LINE', NAMELESS, pointAt(text, from, z_mm), vector)
}

function edge(text: StepText, [from, to]: readonly [string, string], { geometry, isAlong }: Curve): string {
  return text.add('EDGE_CURVE', NAMELESS, from, to, geometry, logical(isAlong))
}

function oriented(text: StepText, of: string, isAlong: boolean): string {
  return text.add('ORIENTED_EDGE', NAMELESS, '*', '*', of, logical(isAlong))
}

function vertex(text: StepText, at: Point, z_mm: number): string {
  return text.add('VERTEX_POINT', NAMELESS, pointAt(text, at, z_mm))
}

interface Placed {
  readonly z_mm: number
  readonly axis: Direction
  readonly ahead: Direction
}

function placement(text: StepText, at: Point, { z_mm, axis, ahead }: Placed): string {
  return text.add('AXIS2_PLACEMENT_3D', NAMELESS, pointAt(text, at, z_mm), directionOf(text, axis), directionOf(text, ahead))
}

function pointAt(text: StepText, { x_mm, y_mm }: Point, z_mm: number): string {
  return text.add('CARTESIAN_POINT', NAMELESS, stepList([x_mm, y_mm, z_mm].map(stepReal)))
}

function directionOf(text: StepText, { x, y, z }: Direction): string {
  return text.add('DIRECTION', NAMELESS, stepList([x, y, z].map(stepReal)))
}

function unit(from: Point, to: Point): Direction {
  const [x, y] = [to.x_mm - from.x_mm, to.y_mm - from.y_mm]
  const length = Math.hypot(x, y)
  return { x: x / length, y: y / length, z: 0 }
}

function logical(value: boolean): string {
  return value ? '.T.' : '.F.'
}
