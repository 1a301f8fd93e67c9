/**
 * What is measured of a finger: every size and place that the drawing limits, numbered, piece by piece.
 *
 * A dimension that several pins and holes share gives one characteristic for each of them. Coatings come last: of them a lot is measured, on the
 * coater's coupon. Springs, friction and wearers are measured otherwise.
 */

import type { TolerancedDiameter } from '../variation/sources/diameter.ts'
import type { Source, Variation } from '../variation/sources/source.ts'
import { type Piece, pieceOfSource, piecesOf } from './piece.ts'

/** One thing to measure. */
export interface Characteristic {
  /** From 1, in the order of the plan: the balloon on the drawing. */
  readonly number: number
  /** Place in the document, without the axis of a position. */
  readonly id: string
  readonly words: string
  readonly kind: 'size' | 'position' | 'profile' | 'film'
  readonly unit: Source['unit']
  /** What is held in the hand to measure it. */
  readonly piece: Piece
  /** What the drawing allows; of a coated size with its coating on; of a position the distance from the true place, at most half of the zone. */
  readonly nominal: number
  readonly least: number
  readonly most: number
  /** Of a coated diameter: what the shop works to, before the coating. */
  readonly before?: { readonly least: number; readonly most: number }
  /** Of a position: where the true place lies from the datum hole, along the axes of the part, and the diameter of the zone. */
  readonly place?: {
    readonly x_mm: number
    readonly y_mm: number
    readonly zone_mm: number
    /** Id of the datum hole; absent where the part has none, and the place lies from the part's origin. */
    readonly datum?: string
  }
  /** Of a diameter: the place of its pin or hole, whose measured size stands for itself. */
  readonly diameter?: string
  /** Places of its sources in the variation: two of a position, x first, else one, or none. A diameter may share its own with others. */
  readonly sources: readonly number[]
}

type Unnumbered = Omit<Characteristic, 'number'>

/** What is typed and drawn, but varies from bench to bench and is measured otherwise: springs, friction, wearers. */
const MEASURED_OTHERWISE = /^(springs|friction|drive|release)\./

/** The plan of a design: part by part, then pin by pin, then what belongs to several, then coatings. */
export function inspectionPlan(variation: Variation): readonly Characteristic[] {
  const { sources, diameters } = variation
  const ofDiameters = new Set(diameters.map(({ source }) => source))
  const found = [
    ...diameters.map((diameter) => diameterOf(diameter, variation)),
    ...sources.flatMap((source, index): readonly Unnumbered[] => {
      if (source.of === 'wearers' || MEASURED_OTHERWISE.test(source.id) || ofDiameters.has(source.id)) return []
      if (source.law.kind === 'disc') return source.law.axis === 'x' ? positionOf(source, index, variation) : []
      return [sizeOf(source, index, variation)]
    }),
  ]
  const order = piecesOf(variation.design).map(({ id, kind }) => `${kind} ${id}`)
  const placeOf = ({ piece }: Unnumbered): number => {
    const place = order.indexOf(`${piece.kind} ${piece.id}`)
    return place < 0 ? order.length : place
  }
  return found
    .toSorted((one, other) => placeOf(one) - placeOf(other))
    .map((characteristic, index) => ({ number: index + 1, ...characteristic }))
}

function diameterOf(
  { place, words, source, nominal_mm, finished, coated }: TolerancedDiameter,
  { sources, design }: Variation,
): Unnumbered {
  const index = sources.findIndex(({ id }) => id === source)
  const size = { id: `${place}.diameter`, words, kind: 'size', unit: 'mm', nominal: nominal_mm, ...finished } as const
  const piece = pieceOfPlace(place, design)
  return { ...size, piece, ...(coated && { before: coated.before }), diameter: place, sources: index < 0 ? [] : [index] }
}

function pieceOfPlace(place: string, design: Variation['design']): Piece {
  const [section, id] = place.split('.')
  const piece = piecesOf(design).find((one) => one.id === id && `${one.kind}s` === section)
  if (!piece) throw new Error(`no piece at ${place}`)
  return piece
}

function sizeOf(source: Source, index: number, variation: Variation): Unnumbered {
  const { id, words, unit, nominal, least, most } = source
  const kind = id.startsWith('coatings.') ? 'film' : id.endsWith('.profile') ? 'profile' : 'size'
  return { id, words, kind, unit, piece: pieceOfSource(variation, index), nominal, least, most, sources: [index] }
}

function positionOf({ id, words }: Source, index: number, { design }: Variation): readonly Unnumbered[] {
  const [, partId, , holeId] = id.split('.')
  const holes = design.parts.find((part) => part.id === partId)?.holes ?? []
  const hole = holes.find((one) => one.id === holeId)
  if (hole?.positionZone_mm === undefined) return []
  const datum = holes.find(({ isDatum }) => isDatum)
  const from = datum?.at ?? { x_mm: 0, y_mm: 0 }
  const zone_mm = hole.positionZone_mm
  return [
    {
      id: id.replace(/\.x$/, ''),
      words: words.replace(/, x$/, ''),
      kind: 'position',
      unit: 'mm',
      piece: pieceOfPlace(`parts.${partId}`, design),
      nominal: 0,
      least: 0,
      most: zone_mm / 2,
      place: {
        ...{ x_mm: hole.at.x_mm - from.x_mm, y_mm: hole.at.y_mm - from.y_mm, zone_mm },
        ...(datum && { datum: datum.id }),
      },
      sources: [index, index + 1],
    },
  ]
}
