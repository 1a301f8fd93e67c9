/**
 * Sizes without a tolerance of their own: places of holes without a zone, diameters, edges, round stops and directions of slots. The class that the document names
 * gives them one; without a class, and below 0.5 mm, they have none and are told. What is computed from a dimension with a tolerance follows
 * that, and a coordinate of 0 is where the others are measured from.
 */
import type { Design } from '../../design/design.ts'
import type { Document } from '../../design/document.ts'
import { placeWords } from '../../design/edit/field-words.ts'
import { generalDeviation_mm, generalDeviation_rad } from '../../design/fits/general-tolerance.ts'
import { variationUnstated } from '../../design/read-variation-rules.ts'
import { readExpression } from '../../numbers/expression.ts'
import { namesIn } from '../../numbers/measure.ts'
import { lawWithin, limitsOfSize } from './law-of.ts'
import { edgeVarying } from './place-sources.ts'
import { addShift, type Varying } from './varying.ts'

/** What the general tolerance gives, and the places for which it has nothing. */
export interface GeneralSources {
  readonly varying: readonly Varying[]
  readonly untolerated: readonly string[]
}

interface PlainSize {
  readonly steps: readonly string[]
  readonly key: string
  readonly value_mm: number
}

/** The direction of a slot, whose shorter side is its own length. */
interface PlainDirection {
  readonly place: string
  readonly words: string
  readonly value_rad: number
  readonly side_mm: number
}

/** Sources of sizes without a tolerance. */
export function generalSources(design: Design, document: Document): GeneralSources {
  const follows = followers(document)
  const sizes = plainSizes(design, document, follows)
  const edges = plainEdges(design, document, follows)
  const directions = plainDirections(design, document, follows)
  const deviation = (size_mm: number) => design.generalTolerance && generalDeviation_mm(design.generalTolerance, size_mm)
  const varying = [
    ...sizes.flatMap((size) => sizeVarying(size, deviation(Math.abs(size.value_mm)), design)),
    ...edges.flatMap((one) => {
      const half_mm = deviation(one.size_mm)
      return half_mm === undefined ? [] : [edgeVarying({ ...one, half_mm }, design)]
    }),
    ...directions.flatMap((one) => directionVarying(one, design)),
  ]
  const without = [
    ...sizes
      .filter(({ value_mm }) => deviation(Math.abs(value_mm)) === undefined)
      .map(({ steps, key }) => `${steps.join('.')}.${key}`),
    ...edges.filter(({ size_mm }) => deviation(size_mm) === undefined).map(({ part, edge }) => `parts.${part}.edges.${edge.id}`),
    ...directions.filter((one) => directionVarying(one, design).length === 0).map(({ place }) => place),
  ]
  return { varying, untolerated: without }
}

function sizeVarying({ steps, key, value_mm }: PlainSize, half_mm: number | undefined, design: Design): readonly Varying[] {
  if (half_mm === undefined) return []
  const place = `${steps.join('.')}.${key}`
  const range = limitsOfSize(value_mm, { lower: -half_mm, upper: half_mm })
  const law = lawWithin(range, (design.variation ?? variationUnstated).sizes)
  const words = `${placeWords(steps)}: ${key}, by ISO 2768-${design.generalTolerance}`
  const source = { id: place, words, unit: 'mm', nominal: value_mm, law, ...range, of: 'sets' } as const
  return [{ sources: [source], put: ([value], sizes) => addShift(sizes, place, value - value_mm) }]
}

function directionVarying({ place, words, value_rad, side_mm }: PlainDirection, design: Design): readonly Varying[] {
  const half_rad = design.generalTolerance && generalDeviation_rad(design.generalTolerance, side_mm)
  if (half_rad === undefined) return []
  const range = limitsOfSize(value_rad, { lower: -half_rad, upper: half_rad })
  const law = lawWithin(range, (design.variation ?? variationUnstated).sizes)
  const source = { id: place, words, unit: 'rad', nominal: value_rad, law, ...range, of: 'sets' } as const
  return [{ sources: [source], put: ([value], sizes) => addShift(sizes, place, value - value_rad) }]
}

function plainDirections({ parts, generalTolerance }: Design, document: Document, follows: Follows): readonly PlainDirection[] {
  return parts.flatMap((part) =>
    part.holes.flatMap(({ id, slot }): PlainDirection[] => {
      const typed = document.parts?.[part.id]?.holes?.[id]?.slot
      if (!slot || follows(typed?.along)) return []
      const steps = ['parts', part.id, 'holes', id]
      const words = `${placeWords(steps)}: direction of the slot, by ISO 2768-${generalTolerance}`
      return [{ place: `${steps.join('.')}.slot.along`, words, value_rad: slot.along_rad, side_mm: slot.length_mm }]
    }),
  )
}

type Follows = (typed: string | undefined) => boolean

/** Whether a typed quantity is computed from a dimension that has a tolerance. */
function followers({ dimensions = {} }: Document): Follows {
  const known = new Map<string, boolean>()
  const varies = (name: string): boolean => {
    const found = known.get(name)
    if (found !== undefined) return found
    const typed = dimensions[name]
    const isVaried =
      typeof typed === 'object' ? typed.tolerance !== undefined || follows(String(typed.value)) : follows(String(typed))
    known.set(name, isVaried)
    return isVaried
  }
  const follows: Follows = (typed) => {
    const expression = typed === undefined ? undefined : readExpression(typed).value
    return expression !== undefined && namesIn(expression).some((name) => Object.hasOwn(dimensions, name) && varies(name))
  }
  return follows
}

function plainSizes({ parts, pins, stops }: Design, document: Document, follows: Follows): readonly PlainSize[] {
  const size = (steps: readonly string[], [key, value_mm, typed]: readonly [string, number, string | undefined]) =>
    value_mm === 0 || follows(typed) ? [] : [{ steps, key, value_mm }]
  const ofHoles = parts.flatMap((part) =>
    part.holes.flatMap((hole) => {
      const steps = ['parts', part.id, 'holes', hole.id]
      const typed = document.parts?.[part.id]?.holes?.[hole.id]
      const isPlaced = hole.positionZone_mm !== undefined || hole.isDatum
      return [
        ...(isPlaced ? [] : [...size(steps, ['x', hole.at.x_mm, typed?.x]), ...size(steps, ['y', hole.at.y_mm, typed?.y])]),
        ...(hole.tolerance ? [] : size(steps, ['diameter', hole.diameter_mm, typed?.diameter])),
      ]
    }),
  )
  const ofPins = pins.flatMap((pin) =>
    pin.tolerance ? [] : size(['pins', pin.id], ['diameter', pin.diameter_mm, document.pins?.[pin.id]?.diameter]),
  )
  const ofStops = stops.flatMap((stop) => {
    const typed = document.stops?.[stop.id]?.round
    if (stop.profileZone_mm !== undefined || !typed) return []
    const { radius_mm, at } = stop.round
    const ofRound = (key: string, value_mm: number, text: string) => size(['stops', stop.id, 'round'], [key, value_mm, text])
    const ofPlace = 'x' in typed ? [...ofRound('x', at.x_mm, typed.x), ...ofRound('y', at.y_mm, typed.y)] : []
    return [...ofRound('radius', radius_mm, typed.radius), ...ofPlace]
  })
  return [...ofHoles, ...ofPins, ...ofStops]
}

function plainEdges({ parts, stops }: Design, document: Document, follows: Follows) {
  const touched = new Set(stops.map(({ against }) => `${against.part}.${against.edge}`))
  return parts.flatMap((part, partIndex) =>
    part.edges.flatMap((edge, index) => {
      const typed = document.parts?.[part.id]?.edges?.[edge.id]
      const texts = typed ? Object.values(typed).flat().map(String) : []
      const isStated = edge.profileZone_mm !== undefined || texts.some((text) => follows(text))
      if (isStated || !touched.has(`${partIndex}.${index}`)) return []
      const { from, to } = edge.kind === 'straight' ? edge : { from: edge.centre, to: edge.centre }
      const radius_mm = edge.kind === 'arc' ? edge.radius_mm : 0
      const size_mm = Math.max(radius_mm, ...[from, to].flatMap(({ x_mm, y_mm }) => [Math.abs(x_mm), Math.abs(y_mm)]))
      return [{ part: part.id, edge, size_mm }]
    }),
  )
}
