/** Parts that run into each other on the travel: which, where, and by how much. */
import { readTravel } from '../plots/travel-scale.ts'
import type { Told } from './told.ts'
import { setValue, type ValueText } from './value-text.ts'

/** A pair of parts that run into each other. */
export interface OverlapRow {
  readonly id: string
  /** `Mount block and Link from mount to middle phalanx`. */
  readonly parts: string
  /** Where they first meet and where they reach deepest into each other: share of the travel, and the drive in words. */
  readonly first: OverlapPlace
  readonly deepest: OverlapPlace
  readonly depth: ValueText
}

/** A place of the travel where something happens between two parts. */
export interface OverlapPlace {
  readonly arc_ratio: number
  readonly words: string
}

/** The deepest first; none where nothing collides or the finger cannot be moved. */
export function overlapRows(evaluation: Told): readonly OverlapRow[] {
  const { design, travel, units } = evaluation
  if (travel === undefined) return []
  const place = (arc_ratio: number): OverlapPlace => ({ arc_ratio, words: readTravel(travel, arc_ratio) })
  return travel.overlaps.map((overlap) => {
    const [one, other] = overlap.parts.map((part) => design.parts[part])
    return {
      id: `${one.id} ${other.id}`,
      parts: `${one.name} and ${other.name}`,
      first: place(overlap.first_ratio),
      deepest: place(overlap.deepest_ratio),
      depth: setValue(overlap.depth_mm, 'mm', units),
    }
  })
}
