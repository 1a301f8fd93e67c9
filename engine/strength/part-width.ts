import type { Part } from '../design/design.ts'

/** What of a part's width is material: its slices together, or its thickness where no slices are stated. mm, undefined where neither is. */
export function partWidth({ across, thickness_mm }: Pick<Part, 'across' | 'thickness_mm'>): number | undefined {
  if (!across || across.length === 0) return thickness_mm
  return across.reduce((sum, { from_mm, to_mm }) => sum + to_mm - from_mm, 0)
}
