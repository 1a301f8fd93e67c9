/** True position of holes, and the places of edges within their profile. */
import type { Design, Edge, Hole, Part, Tolerance } from '../../design/design.ts'
import type { Document } from '../../design/document.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { edgeShift } from './edge-shift.ts'
import { lawWithin } from './law-of.ts'
import type { Law, Source } from './source.ts'
import { addShift, type Varying } from './varying.ts'

/** At a capability of 1 the radius of the zone is three standard deviations. */
const deviationsOfRadius = 3

/** Two sources for every hole with a zone, in shares of its radius. */
export function positionSources(design: Design, document: Document): readonly Varying[] {
  return design.parts.flatMap((part) => {
    const hasDatum = part.holes.some(({ isDatum }) => isDatum)
    return part.holes
      .filter(({ positionZone_mm: zone, hasPositionBonus }) => (zone ?? 0) > 0 || hasPositionBonus)
      .map((hole) => positionOf({ design, document, part, hole, hasDatum }))
  })
}

interface Positioned {
  readonly design: Design
  readonly document: Document
  readonly part: Part
  readonly hole: Hole
  readonly hasDatum: boolean
}

function positionOf({ design, document, part, hole, hasDatum }: Positioned): Varying {
  const steps = ['parts', part.id, 'holes', hole.id]
  const place = steps.join('.')
  const word = (design.variation ?? variationUnstated).positions
  const source = (axis: 'x' | 'y'): Source => ({
    id: `${place}.position.${axis}`,
    words: `${placeWords(steps)}: position, ${axis}`,
    unit: '1',
    nominal: 0,
    law: lawOfAxis(axis, word),
    least: -1,
    most: 1,
    of: 'sets',
    ...(!hasDatum && { needsDatum: true }),
  })
  const leastSize_mm = hole.hasPositionBonus && leastSize(design, document, { part, hole })
  return {
    sources: [source('x'), source('y')],
    put: ([x, y], { zones }) => zones.set(place, { x, y, ...(leastSize_mm !== undefined && { leastSize_mm }) }),
  }
}

const lawOfAxis = (axis: 'x' | 'y', word: 'uniform' | 'normal'): Law =>
  word === 'uniform' ? { kind: 'disc', axis } : { kind: 'disc', axis, deviation: 1 / deviationsOfRadius }

/** The hole at maximum material: its least size by its own tolerance, or by that of the dimension that is its diameter. */
function leastSize(
  { dimensions }: Design,
  document: Document,
  { part, hole }: { readonly part: Part; readonly hole: Hole },
): number {
  const typed = document.parts?.[part.id]?.holes?.[hole.id]?.diameter.trim()
  const tolerance: Tolerance | undefined = hole.tolerance ?? dimensions.find(({ name }) => name === typed)?.tolerance
  return hole.diameter_mm + (tolerance?.lower ?? 0)
}

/** One source for every edge and round end with a profile: it lies that far outside of where it is drawn, along its normal. */
export function profileSources(design: Design): readonly Varying[] {
  const ofStops = design.stops.flatMap((stop) => {
    const half_mm = (stop.profileZone_mm ?? 0) / 2
    const place = `stops.${stop.id}`
    const put: Varying['put'] = ([outwards_mm], sizes) => addShift(sizes, `${place}.gap`, -outwards_mm)
    return half_mm > 0 ? [{ sources: [outwardsSource(['stops', stop.id], half_mm, design)], put }] : []
  })
  const ofEdges = design.parts.flatMap((part) =>
    part.edges.flatMap((edge) => {
      const half_mm = (edge.profileZone_mm ?? 0) / 2
      return half_mm > 0 ? [edgeVarying({ part: part.id, edge, half_mm }, design)] : []
    }),
  )
  return [...ofEdges, ...ofStops]
}

/** An edge that may lie `half_mm` off, either way. */
export function edgeVarying(
  { part, edge, half_mm }: { readonly part: string; readonly edge: Edge; readonly half_mm: number },
  design: Design,
): Varying {
  const steps = ['parts', part, 'edges', edge.id]
  return {
    sources: [outwardsSource(steps, half_mm, design)],
    put: ([outwards_mm], sizes) => edgeShift(sizes, { place: steps.join('.'), edge, outwards_mm }),
  }
}

function outwardsSource(steps: readonly string[], half_mm: number, { variation = variationUnstated }: Design): Source {
  const range = { least: -half_mm, most: half_mm }
  const { sizes } = variation
  const law = lawWithin(range, sizes)
  const id = `${steps.join('.')}.profile`
  return { id, words: `${placeWords(steps)}: outwards`, unit: 'mm', nominal: 0, law, ...range, of: 'sets' }
}
