import { useMemo } from 'react'
import type { DesignSpread } from '../../engine/index.ts'
import { drawFigureSets } from '../../report/index.ts'
import { Drawn } from '../parts/drawn.tsx'
import { useUnits } from '../state/units.ts'
import { useWidth } from '../state/use-width.ts'

/** Wider than this a silhouette of forty steps says no more. */
const WIDTH_px = 640

/** Where the sets stand in one figure. */
export function FigureSets({ told, id }: { readonly told: DesignSpread; readonly id: string }) {
  const units = useUnits()
  const [place, width] = useWidth<HTMLDivElement>()
  const shape = useMemo(
    () => (width === 0 ? undefined : drawFigureSets(told, { id, width_px: Math.min(width, WIDTH_px), units })),
    [told, id, width, units],
  )
  return (
    <div ref={place}>
      <Drawn shape={shape} />
    </div>
  )
}
