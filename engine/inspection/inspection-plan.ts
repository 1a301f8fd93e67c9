/** What is measured of a finger: every size and place that the drawing limits, numbered. */
import type { Source, Variation } from '../variation/sources/source.ts'

/** One thing to measure. */
export interface Characteristic {
  /** From 1, in the order of the plan: the balloon on the drawing. */
  readonly number: number
  /** Place in the document, without the axis of a position. */
  readonly id: string
  readonly words: string
  readonly kind: 'size' | 'position' | 'profile'
  readonly unit: Source['unit']
  /** What the drawing allows; of a position the distance from the true place, at most half of the zone. */
  readonly nominal: number
  readonly least: number
  readonly most: number
  /** Of a position: where the true place lies in the part's frame, and the diameter of the zone. */
  readonly place?: { readonly x_mm: number; readonly y_mm: number; readonly zone_mm: number }
  /** Places of its sources in the variation: two of a position, x first, else one. */
  readonly sources: readonly number[]
}

/** What is typed and drawn, but varies from bench to bench and is measured otherwise: springs, friction, films, wearers. */
const MEASURED_OTHERWISE = /^(springs|friction|coatings|drive|release)\./

/** The plan of a design, in the order of its sources. */
export function inspectionPlan({ design, sources }: Variation): readonly Characteristic[] {
  const found = sources.flatMap((source, index): readonly Omit<Characteristic, 'number'>[] => {
    if (source.of === 'wearers' || MEASURED_OTHERWISE.test(source.id)) return []
    if (source.law.kind === 'disc') return source.law.axis === 'x' ? positionOf(source, index, design.parts) : []
    const { id, words, unit, nominal, least, most } = source
    return [{ id, words, kind: id.endsWith('.profile') ? 'profile' : 'size', unit, nominal, least, most, sources: [index] }]
  })
  return found.map((characteristic, index) => ({ number: index + 1, ...characteristic }))
}

function positionOf(
  { id, words }: Source,
  index: number,
  parts: Variation['design']['parts'],
): readonly Omit<Characteristic, 'number'>[] {
  const [, partId, , holeId] = id.split('.')
  const hole = parts.find((part) => part.id === partId)?.holes.find((one) => one.id === holeId)
  if (hole?.positionZone_mm === undefined) return []
  const zone_mm = hole.positionZone_mm
  return [
    {
      id: id.replace(/\.x$/, ''),
      words: words.replace(/, x$/, ''),
      kind: 'position',
      unit: 'mm',
      nominal: 0,
      least: 0,
      most: zone_mm / 2,
      place: { ...hole.at, zone_mm },
      sources: [index, index + 1],
    },
  ]
}
