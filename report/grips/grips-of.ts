/** Everything of a drawing that can be taken hold of. */
import { type Design, leversOf, type PartPoint, type Posture, type Question } from '../../engine/index.ts'
import type { Grip, GripRow, GripScene } from './grip.ts'
import { linkGrips, pinGrips } from './pin-grips.ts'
import { pointGrip } from './point-grip.ts'
import { turnGrip } from './turn-grip.ts'

/** A design at a posture with the text that it was read from, and the load that is shown. */
export interface GripPicture {
  readonly design: Design
  readonly text: string
  readonly posture: Posture
  readonly question?: Question
}

/** Pins first, then links, ends of stops, pads, anchors of springs, and the directions of the forces that are shown. */
export function gripsOf({ design, text, posture, question }: GripPicture): readonly Grip[] {
  const scene: GripScene = { design, posture, lever: leversOf(text) }
  return [
    ...pinGrips(scene),
    ...linkGrips(scene),
    ...edgeGrips(scene),
    ...padGrips(scene),
    ...anchorGrips(scene),
    ...(question === undefined || question.kind === 'return' ? [] : directionGrips(scene, question)),
  ]
}

function edgeGrips(scene: GripScene): readonly Grip[] {
  return scene.design.parts.flatMap(({ id: partId, edges }, part) =>
    edges.flatMap((edge) => {
      const place = ['parts', partId, 'edges', edge.id]
      const rows = [{ id: place.join('.'), words: `edge ${partId}.${edge.id}` }, ...stopRows(scene, { part, edge: edge.id })]
      const ends =
        edge.kind === 'straight' ? [['from', edge.from] as const, ['to', edge.to] as const] : [['centre', edge.centre] as const]
      return ends.map(([end, own]) => {
        const coordinates = { x: [...place, end, 0], y: [...place, end, 1] }
        return pointGrip(scene, {
          id: `edge ${partId}.${edge.id} ${end}`,
          says: `Edge ${partId}.${edge.id}, ${end}`,
          part,
          own,
          rows,
          ...coordinates,
        })
      })
    }),
  )
}

function stopRows({ design }: GripScene, about: { readonly part: number; readonly edge: string }): readonly GripRow[] {
  const edge = design.parts[about.part].edges.findIndex(({ id }) => id === about.edge)
  const stops = design.stops.filter(({ against }) => against.part === about.part && against.edge === edge)
  return stops.map(({ id }) => ({ id: `stops.${id}`, words: `stop ${id}` }))
}

function padGrips(scene: GripScene): readonly Grip[] {
  return scene.design.parts.flatMap(({ id: partId, pads }, part) =>
    pads.map(({ id, at }) => {
      const place = ['parts', partId, 'pads', id]
      const rows = [{ id: place.join('.'), words: `pad ${partId}.${id}` }]
      return pointGrip(scene, {
        id: `pad ${partId}.${id}`,
        says: `Pad ${partId}.${id}`,
        part,
        own: at,
        x: [...place, 0],
        y: [...place, 1],
        rows,
      })
    }),
  )
}

/** Ends of springs that stand at a place of their own; those at holes and pads are moved with these. */
function anchorGrips(scene: GripScene): readonly Grip[] {
  return scene.design.springs.flatMap((spring) => {
    if (spring.kind === 'torsion') return []
    const rows = [{ id: `springs.${spring.id}`, words: `spring ${spring.id}` }]
    return (['from', 'to'] as const).flatMap((end) => {
      const { part, at }: PartPoint = spring[end]
      if (isNamed(scene, spring[end])) return []
      const place = ['springs', spring.id, end]
      const id = `spring ${spring.id} ${end}`
      return [
        pointGrip(scene, {
          id,
          says: `Spring ${spring.id}, ${end}`,
          part,
          own: at,
          x: [...place, 'x'],
          y: [...place, 'y'],
          rows,
        }),
      ]
    })
  })
}

function isNamed({ design }: GripScene, { part, at }: PartPoint): boolean {
  const { holes, pads } = design.parts[part]
  return [...holes, ...pads].some((thing) => thing.at.x_mm === at.x_mm && thing.at.y_mm === at.y_mm)
}

function directionGrips(scene: GripScene, question: Exclude<Question, { kind: 'return' }>): readonly Grip[] {
  const loadCase = scene.design.loadCases.find(({ id }) => id === question.loadCase)
  if (loadCase === undefined) return []
  const forces = loadCase.forces.map((force, index) => {
    const place = ['loadCases', loadCase.id, 'forces', index]
    const rows = [{ id: place.join('.'), words: `force ${index + 1} of ${loadCase.name}` }]
    const id = `force ${loadCase.id} ${index}`
    return turnGrip(scene, {
      id,
      says: `Direction of force ${index + 1}, ${loadCase.name}`,
      force,
      place: [...place, 'direction'],
      rows,
    })
  })
  const port = loadCase.keeper?.port
  if (question.kind !== 'hold' || port?.kind !== 'force') return forces
  const place = ['loadCases', loadCase.id, 'keeper', 'port', 'direction']
  const rows = [{ id: `loadCases.${loadCase.id}`, words: loadCase.name }]
  return [
    ...forces,
    turnGrip(scene, { id: `keeper ${loadCase.id}`, says: `Direction of the keeper, ${loadCase.name}`, force: port, place, rows }),
  ]
}
