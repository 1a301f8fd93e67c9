/** What a material bears over the stated life, and how many of its closings each load case has. */
import { closingsOver } from '../design/closings.ts'
import type { Design, Material, Use } from '../design/design.ts'
import { type Cycled, lifeLine, type MaterialLine, strengthAfter } from './endurance.ts'
import type { Borne } from './fatigue.ts'

/** What a material bears for all closings of the stated life. */
export interface Life extends Borne {
  readonly line: MaterialLine
  readonly material: Pick<Material, 'name' | 'source'>
  /** Of each load case by its id; absent where the document states no shares, and each closing counts for the worst load case. */
  readonly shares?: ReadonlyMap<string, ShareOfLife>
}

/** The closings of one load case. */
export interface ShareOfLife {
  /** Of all closings; 0 for a load case that the document gives none. */
  readonly share_ratio: number
  /** Amplitude that is borne for that many alone, MPa. */
  readonly strength_MPa: number
}

/** What a material bears over the life that the document states, or what is missing. */
export function life({ use, loadCases }: Design, material: Material, cycled: Cycled): Life | { readonly missing: string } {
  const line = lifeLine(material, cycled)
  if ('missing' in line) return line
  if (!use) return { missing: 'the document does not say how often the finger is closed (use)' }
  const strength_MPa = strengthAfter(line, closingsOver(use))
  if (strength_MPa === undefined) {
    const known = `the fatigue strength of ${material.name} is known for ${line.long_cycles} cycles`
    return { missing: `${known}, and the stated life has more closings` }
  }
  const { ultimate_MPa } = line
  return { line, material, strength_MPa, ultimate_MPa, ...(use.shares && { shares: sharesOf({ use, loadCases }, line) }) }
}

function sharesOf({ use, loadCases }: { readonly use: Use } & Pick<Design, 'loadCases'>, line: MaterialLine) {
  return new Map(
    loadCases.map(({ id }, index): [string, ShareOfLife] => {
      const share_ratio = use.shares?.find(({ loadCase }) => loadCase === index)?.share_ratio ?? 0
      const strength_MPa = strengthAfter(line, share_ratio * closingsOver(use)) ?? line.long_MPa
      return [id, { share_ratio, strength_MPa }]
    }),
  )
}
