/** Pins, and the lengths of links: a pin is moved by the hole of the part that carries it, a link by its far hole along the link. */
import { type Part, pulled } from '../../engine/index.ts'
import { inMount } from '../drawing/view.ts'
import { type Grip, type GripScene, isLever } from './grip.ts'
import { coordinatesOf, type PointPlaces, pointGrip, pointHand } from './point-grip.ts'

/** A link's grip stands this far beyond the hole, so that the pin in it can be taken hold of too. */
const BEYOND_PX = 26

/** One grip a pin. */
export function pinGrips(scene: GripScene): readonly Grip[] {
  const { design } = scene
  return design.pins.map((pin, index) => {
    const rows = [
      { id: `pins.${pin.id}`, words: 'the pin' },
      ...pin.joins.map(({ part, hole }) => {
        const { id, holes } = design.parts[part]
        return { id: `parts.${id}.holes.${holes[hole].id}`, words: `hole ${id}.${holes[hole].id}` }
      }),
    ]
    const chosen = movingHole(scene, index)
    const says = `Pin ${pin.id}`
    if (chosen === undefined) {
      const note = 'It sits at the origin of its parts and in links only: move the other holes instead.'
      return { id: `pin ${pin.id}`, says, at: scene.posture.pinsAt[index], rows, note }
    }
    return pointGrip(scene, { ...chosen, id: `pin ${pin.id}`, says: `${says}, hole ${chosen.id}`, rows })
  })
}

/**
 * The hole that moves when a pin is dragged: of the parts that the pin joins, no link, and not the origin of its own frame, the one with most
 * coordinates that can be moved.
 */
function movingHole(scene: GripScene, pin: number): Omit<PointPlaces, 'rows'> | undefined {
  const { design } = scene
  const candidates = design.pins[pin].joins
    .filter(({ part, hole }) => design.parts[part].role !== 'link' && !isOrigin(design.parts[part], hole))
    .map(({ part, hole }) => holePlaces(scene, { part, hole }))
  const freedom = (point: Omit<PointPlaces, 'rows'>): number => {
    const { x, y } = coordinatesOf(scene, point)
    return Number(isLever(x)) + Number(isLever(y))
  }
  return candidates.toSorted((one, other) => freedom(other) - freedom(one))[0]
}

function holePlaces({ design }: GripScene, { part, hole }: { readonly part: number; readonly hole: number }) {
  const { id, holes } = design.parts[part]
  const place = ['parts', id, 'holes', holes[hole].id]
  const name = `${id}.${holes[hole].id}`
  return { id: name, says: name, part, own: holes[hole].at, x: [...place, 'x'], y: [...place, 'y'] }
}

function isOrigin({ holes }: Part, hole: number): boolean {
  return holes[hole].at.x_mm === 0 && holes[hole].at.y_mm === 0
}

/** One grip a link whose near hole is its origin and whose far hole lies on its x axis. */
export function linkGrips(scene: GripScene): readonly Grip[] {
  return scene.design.parts.flatMap((part, index) => {
    const far = part.holes.findIndex((hole) => hole.at.x_mm !== 0 && hole.at.y_mm === 0)
    const isLink = part.role === 'link' && part.holes.length === 2 && far >= 0 && isOrigin(part, 1 - far)
    return isLink ? [linkGrip(scene, { part: index, far })] : []
  })
}

function linkGrip(scene: GripScene, { part, far }: { readonly part: number; readonly far: number }): Grip {
  const { id, name, holes } = scene.design.parts[part]
  const { own, x } = holePlaces(scene, { part, hole: far })
  const lever = scene.lever({ place: x, kind: 'length' })
  const turn_rad = scene.posture.poses[3 * part + 2]
  const grip = {
    id: `link ${id}`,
    says: `Length of ${name}`,
    at: inMount(scene.posture, part, own),
    beside: { px: BEYOND_PX, direction_rad: own.x_mm > 0 ? turn_rad : turn_rad + Math.PI },
  }
  const rows = [{ id: `parts.${id}.holes.${holes[far].id}`, words: `hole ${id}.${holes[far].id}` }]
  if (!isLever(lever)) {
    const dimensions = lever.dimensions.map((dimension) => ({ id: `dimensions.${dimension}`, words: dimension }))
    return { ...grip, rows: [...rows, ...dimensions], note: `Its length cannot be dragged: it is “${lever.expression}”.` }
  }
  const { dimension } = lever
  return {
    ...grip,
    rows: dimension === undefined ? rows : [...rows, { id: `dimensions.${dimension}`, words: dimension }],
    ...(dimension === undefined ? {} : { note: `Moving it changes ${dimension} and all that uses it.` }),
    hand: pointHand(scene, { part, pull: ({ x_mm }) => (x_mm === 0 ? [] : [pulled(lever, x_mm)]) }),
  }
}
