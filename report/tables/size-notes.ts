import type { DesignSpread } from '../../engine/index.ts'
import { figureName } from '../sentences/figure-name.ts'

/** Figures that are named beside a size, and the share of variance below which none is. */
const NAMED_most = 3
const shareLeast = 0.01

/**
 * What each thing of a design contributes to the variance of figures, for the row in which it stands: its sources together.
 *
 * @param rows places of things, such as `dimensions.topLinkLength`; of two that hold a source it belongs to the inner one
 * @returns words by place; nothing for what contributes nowhere a hundredth
 */
export function sizeNotes(told: DesignSpread, rows: readonly string[]): ReadonlyMap<string, string> {
  const ofRow = new Map<string, number[]>()
  for (const [source, { id }] of told.sources.entries()) {
    const row = rows
      .filter((place) => id === place || id.startsWith(`${place}.`))
      .reduce<string | undefined>((inner, place) => (place.length > (inner?.length ?? 0) ? place : inner), undefined)
    if (row !== undefined) ofRow.set(row, [...(ofRow.get(row) ?? []), source])
  }
  const notes = [...ofRow].map(([row, sources]) => [row, noteOf(told, sources)] as const)
  return new Map(notes.filter(([, words]) => words !== ''))
}

function noteOf({ spread, figures }: DesignSpread, sources: readonly number[]): string {
  const named = spread.figures
    .map(({ contributions }, index) => {
      const share = contributions ? sources.reduce((sum, source) => sum + contributions.shares[source], 0) : 0
      return { share, name: figureName(figures[index]) }
    })
    .filter(({ share }) => share >= shareLeast)
    .sort((one, other) => other.share - one.share)
    .slice(0, NAMED_most)
  if (named.length === 0) return ''
  return `Of the variance over the sets: ${named.map(({ share, name }) => `${Math.round(100 * share)}\u00a0% of ${name}`).join('; ')}`
}
