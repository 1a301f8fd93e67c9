/**
 * A solid as triangles, for who prints or looks at a part. Rounds are cut into straight pieces, so that it has not the exact size: a shop machines
 * from the STEP file.
 *
 * The format has no standard: facets with an outward normal and three corners, counter-clockwise seen from outside, millimetres; from memory.
 */
import type { Point } from '../../engine/index.ts'
import type { Contour, FlatBody, Piece } from './flat-body.ts'
import { trianglesOf } from './triangles.ts'

/** Straight pieces of a whole round: on a hole of 3 mm they lie within 4 µm of it. */
export const PIECES_OF_ROUND = 64

type Corner = readonly [number, number, number]

/**
 * @param name of the part, as the file is called
 * @returns undefined where holes run into each other, or an outline into itself: then nothing can be said to be inside
 */
export function stlFile(name: string, bodies: readonly FlatBody[]): string | undefined {
  const all = bodies.map(facetsOf)
  if (all.includes(undefined)) return undefined
  const facets = all.flatMap((own) => own ?? [])
  return `${[`solid ${name}`, ...facets.map(facetText), `endsolid ${name}`].join('\n')}\n`
}

function facetsOf({ contours, from_mm, to_mm }: FlatBody): readonly (readonly Corner[])[] | undefined {
  const loops = contours.map(straightened)
  const at = ({ x_mm, y_mm }: Point, z_mm: number): Corner => [x_mm, y_mm, z_mm]
  const triangles = trianglesOf(loops)
  if (triangles === undefined) return undefined
  const lids = triangles.flatMap(([a, b, c]) => [
    [at(a, to_mm), at(b, to_mm), at(c, to_mm)],
    [at(a, from_mm), at(c, from_mm), at(b, from_mm)],
  ])
  const walls = loops.flatMap((loop) =>
    loop.flatMap((a, index) => {
      const b = loop[(index + 1) % loop.length]
      return [
        [at(a, from_mm), at(b, from_mm), at(b, to_mm)],
        [at(a, from_mm), at(b, to_mm), at(a, to_mm)],
      ]
    }),
  )
  return [...lids, ...walls]
}

/** The corners of a contour, its arcs in equal pieces. */
function straightened(contour: Contour): readonly Point[] {
  return contour.flatMap(pieceCorners)
}

function pieceCorners({ from, to, arc }: Piece): readonly Point[] {
  if (arc === undefined) return [from]
  const { centre, radius_mm, turn } = arc
  const angleOf = ({ x_mm, y_mm }: Point): number => Math.atan2(y_mm - centre.y_mm, x_mm - centre.x_mm)
  const way = turn === 'left' ? 1 : -1
  const swept = (way * (angleOf(to) - angleOf(from)) + 4 * Math.PI) % (2 * Math.PI)
  const count = Math.max(1, Math.round((PIECES_OF_ROUND * swept) / (2 * Math.PI)))
  return Array.from({ length: count }, (_, index) => {
    if (index === 0) return from
    const angle = angleOf(from) + (way * swept * index) / count
    return { x_mm: centre.x_mm + radius_mm * Math.cos(angle), y_mm: centre.y_mm + radius_mm * Math.sin(angle) }
  })
}

function facetText(corners: readonly Corner[]): string {
  const [a, b, c] = corners
  const [u, v] = [b, c].map((corner) => corner.map((value, axis) => value - a[axis]))
  const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]]
  const length = Math.hypot(...normal)
  const texts = corners.map((corner) => `vertex ${corner.map(real).join(' ')}`)
  return [
    `facet normal ${normal.map((value) => real(value / length)).join(' ')}`,
    'outer loop',
    ...texts,
    'endloop',
    'endfacet',
  ].join('\n')
}

const DIGITS = 9
/** Both zeros are written alike. */
const real = (value: number): string => String(Number(value.toPrecision(DIGITS)) + 0)
