import { type DesignSpread, type SurfaceShare, type SurfaceYield, surfaceWorking } from '../../engine/index.ts'
import { type OpenedLine, plainLine } from './opened-line.ts'
import { intervalText, shareText } from './spread-rows.ts'

/** `95.90 % of sets meet every requirement (95.81 to 95.99 %)`, as surfaces say. */
export function surfaceWords({ all }: SurfaceYield): string {
  return `${shareText(all.value, all)} of sets meet every requirement (${intervalText(all)})`
}

/** What surfaces through judged sets say of the yield, and what they take for granted; nothing where none were made. */
export function surfaceLines(told: DesignSpread): readonly OpenedLine[] {
  const { surfaces } = told
  if (!surfaces) return []
  if ('why' in surfaces) return [plainLine(`Surfaces do not serve here: ${surfaces.why}. The count stands by itself.`)]
  const { judged_count, near } = surfaces
  const bounds = near.map(({ behind }) => behind.words).join('; ')
  return [
    opening(
      surfaces,
      surfaces.all,
      `${surfaceWords(surfaces)}: ${judged_count} sets were judged, and surfaces through them say what the others come to.`,
    ),
    ...shortLines(told, surfaces),
    plainLine(near.length === 0 ? 'No number comes near its bound.' : `Near its bound: ${bounds}.`),
    ...clearLine(surfaces),
    plainLine(
      'Taken for granted is that no number jumps between the sets that were judged; the count takes nothing for granted.',
    ),
  ]
}

function opening(surfaces: SurfaceYield, share: SurfaceShare, words: string): OpenedLine {
  return { words, workings: () => [surfaceWorking(surfaces, share)] }
}

function shortLines({ requirements, figures }: DesignSpread, surfaces: SurfaceYield): readonly OpenedLine[] {
  return surfaces.requirements.flatMap((share, index) => {
    if (share.value === 1) return []
    const { figure } = requirements[index]
    const title = figures.find(({ id }) => id === figure)?.title ?? figure
    return [opening(surfaces, share, `${title}: ${shareText(share.value, share)} (${intervalText(share)})`)]
  })
}

function clearLine(surfaces: SurfaceYield): readonly OpenedLine[] {
  const { all, clear } = surfaces
  const [first] = clear
  if (!first) return []
  const others = clear.length === 1 ? 'One other number stays' : `The other ${clear.length} numbers stay`
  const by = Number.isFinite(first.misses)
    ? `, ${first.behind.words} by the least: ${Math.floor(first.misses)} times what its surface misses by`
    : ''
  return [opening(surfaces, all, `${others} clear of their bounds${by}.`)]
}
