/** Where the things of a design stand at a posture, by the place that they have in the document: what is marked when a row is looked at. */
import type { Design, Part, PartPoint, Point, Posture } from '../../engine/index.ts'
import { inMount } from './view.ts'

/** Points in the mount frame, mm, and whole parts by index. */
export interface StandingPlaces {
  readonly points: readonly Point[]
  readonly parts: readonly number[]
}

const NOWHERE: StandingPlaces = { points: [], parts: [] }

interface Scene {
  readonly design: Design
  readonly posture: Posture
}

/** @param row place in the document, such as `['parts', 'middle', 'holes', 'dip']`; what stands nowhere in the drawing has no places */
export function standingPlaces(scene: Scene, row: readonly string[]): StandingPlaces {
  const [section, id, ...more] = row
  switch (section) {
    case 'parts':
      return ofPart(scene, id, more)
    case 'pins':
      return { points: pinsAt(scene, [id]), parts: [] }
    case 'toggles':
      return { points: ofToggle(scene, id), parts: [] }
    case 'stops':
      return { points: ofStop(scene, id), parts: [] }
    case 'springs':
      return { points: ofSpring(scene, id), parts: [] }
    case 'loadCases':
      return { points: ofLoad(scene, id, more[0] === 'forces' ? Number(more[1]) : undefined), parts: [] }
    case 'drive':
      return { points: ofDrive(scene), parts: [] }
    case 'tip':
      return { points: scene.design.tip === undefined ? [] : [padAt(scene, scene.design.tip)], parts: [] }
    default:
      return NOWHERE
  }
}

function ofPart(scene: Scene, id: string, [kind, thing]: readonly string[]): StandingPlaces {
  const index = scene.design.parts.findIndex((part) => part.id === id)
  if (index < 0) return NOWHERE
  const points = thing === undefined ? [] : pointsOfThing(scene.design.parts[index], { kind, thing })
  if (points.length === 0) return { points: [], parts: [index] }
  return { points: points.map((at) => inMount(scene.posture, index, at)), parts: [] }
}

function pointsOfThing(part: Part, { kind, thing }: { readonly kind: string; readonly thing: string }): readonly Point[] {
  if (kind === 'outline') return part.outline.slice(Number(thing), Number(thing) + 1)
  const named = kind === 'holes' ? part.holes : kind === 'pads' ? part.pads : []
  const edge = kind === 'edges' ? part.edges.find(({ id }) => id === thing) : undefined
  if (edge !== undefined) return edge.kind === 'straight' ? [edge.from, edge.to] : [edge.centre]
  return named.filter(({ id }) => id === thing).map(({ at }) => at)
}

function pinsAt({ design, posture }: Scene, ids: readonly string[]): readonly Point[] {
  return design.pins.flatMap((pin, index) => (ids.includes(pin.id) ? [posture.pinsAt[index]] : []))
}

function ofToggle({ design, posture }: Scene, id: string): readonly Point[] {
  const toggle = design.toggles.find((one) => one.id === id)
  return toggle === undefined ? [] : [toggle.a, toggle.b, toggle.c].map((pin) => posture.pinsAt[pin])
}

function ofStop(scene: Scene, id: string): readonly Point[] {
  const stop = scene.design.stops.find((one) => one.id === id)
  return stop === undefined ? [] : [pointAt(scene, stop.round)]
}

function ofSpring(scene: Scene, id: string): readonly Point[] {
  const spring = scene.design.springs.find((one) => one.id === id)
  if (spring === undefined) return []
  if (spring.kind === 'torsion') return [scene.posture.pinsAt[spring.pin]]
  return [pointAt(scene, spring.from), pointAt(scene, spring.to)]
}

function ofLoad(scene: Scene, id: string, force: number | undefined): readonly Point[] {
  const forces = scene.design.loadCases.find((one) => one.id === id)?.forces ?? []
  return forces.filter((_, index) => force === undefined || index === force).map((one) => padAt(scene, one))
}

function ofDrive(scene: Scene): readonly Point[] {
  const { drive } = scene.design
  if (drive.kind === 'turn') return [scene.posture.pinsAt[drive.pin]]
  return [pointAt(scene, drive.kind === 'pull' ? drive.on : drive.roller), pointAt(scene, drive.towards)]
}

function padAt({ design, posture }: Scene, { part, pad }: { readonly part: number; readonly pad: number }): Point {
  return inMount(posture, part, design.parts[part].pads[pad].at)
}

function pointAt({ posture }: Scene, { part, at }: PartPoint): Point {
  return inMount(posture, part, at)
}
