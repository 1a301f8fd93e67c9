/** A point of a part that is moved by its two coordinates, or by the one of them that is free. */
import { type Bound, type Change, type Lever, type Point, pulled } from '../../engine/index.ts'
import { inMount, intoPart } from '../drawing/view.ts'
import { listed } from '../sentences/words.ts'
import { type Grip, type GripRow, type GripScene, type Hand, inSteps, isLever, type StepSize, steps } from './grip.ts'

/** A point with the places of its coordinates in the document. */
export interface PointPlaces {
  readonly id: string
  readonly says: string
  readonly part: number
  readonly own: Point
  readonly x: readonly (string | number)[]
  readonly y: readonly (string | number)[]
  readonly rows: readonly GripRow[]
}

/** The two coordinates of a point: what moves each of them, or why nothing does. */
export interface Coordinates {
  readonly x: Lever | Bound
  readonly y: Lever | Bound
}

/** What moves a point's coordinates. */
export function coordinatesOf({ lever }: GripScene, { x, y }: Pick<PointPlaces, 'x' | 'y'>): Coordinates {
  return { x: lever({ place: x, kind: 'length' }), y: lever({ place: y, kind: 'length' }) }
}

/** A grip on a point. */
export function pointGrip(scene: GripScene, point: PointPlaces): Grip {
  const coordinates = coordinatesOf(scene, point)
  const at = inMount(scene.posture, point.part, point.own)
  const note = noteOf(coordinates)
  const isFree = isLever(coordinates.x) || isLever(coordinates.y)
  return {
    id: point.id,
    says: point.says,
    at,
    rows: point.rows,
    ...(note === '' ? {} : { note }),
    ...(isFree ? { hand: pointHand(scene, { part: point.part, pull: (moved) => pullPoint(coordinates, moved) }) } : {}),
  }
}

/** Moves a point of a part: what is done in the mount frame is handed to `pull` in whole steps of the part's own frame. */
export function pointHand(scene: GripScene, about: { part: number; pull: (moved: Point) => readonly Change[] }): Hand {
  const move = (moved: Point, size: StepSize): readonly Change[] => {
    const own = intoPart(scene.posture, about.part, moved)
    const { length_mm } = steps[size]
    return about.pull({ x_mm: inSteps(own.x_mm, length_mm), y_mm: inSteps(own.y_mm, length_mm) })
  }
  return {
    drag: ({ from, to }, size) => move({ x_mm: to.x_mm - from.x_mm, y_mm: to.y_mm - from.y_mm }, size),
    nudge: ([right, up], size) => move({ x_mm: right * steps[size].length_mm, y_mm: up * steps[size].length_mm }, size),
  }
}

/** Where x and y are one and the same number it goes by x. */
function pullPoint({ x, y }: Coordinates, moved: Point): readonly Change[] {
  const byX = isLever(x) && moved.x_mm !== 0 ? [pulled(x, moved.x_mm)] : []
  const isSame = isLever(x) && isLever(y) && x.place.join('.') === y.place.join('.')
  const byY = isLever(y) && moved.y_mm !== 0 && !isSame ? [pulled(y, moved.y_mm)] : []
  return [...byX, ...byY]
}

function noteOf({ x, y }: Coordinates): string {
  const dimensions = [x, y].flatMap((found) => (isLever(found) && found.dimension !== undefined ? [found.dimension] : []))
  const changes = dimensions.length === 0 ? [] : [`Moving it changes ${listed([...new Set(dimensions)])} and all that uses it.`]
  const bounds = [...(isLever(x) ? [] : [boundWords('x', x)]), ...(isLever(y) ? [] : [boundWords('y', y)])]
  return [...changes, ...bounds].join(' ')
}

/** `x cannot be dragged: it is “a + b”. Change a or b.` */
export function boundWords(name: string, { expression, dimensions }: Bound): string {
  const way = dimensions.length === 0 ? 'Type another value in its row.' : `Change ${dimensions.join(' or ')}.`
  return `${name} cannot be dragged: it is “${expression}”. ${way}`
}
