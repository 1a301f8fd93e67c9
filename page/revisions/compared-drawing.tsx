import { type ReactNode, useCallback, useMemo, useState } from 'react'
import { type ComparedFingers, drawCompared, layoutCompared, readTravel, toldIn, travelEnd } from '../../report/index.ts'
import { Drawn } from '../parts/drawn.tsx'
import { driveName, TravelPointer } from '../parts/travel-pointer.tsx'
import { useUnits } from '../state/units.ts'
import { useWidth } from '../state/use-width.ts'
import styles from './revisions.module.css'

/** Both fingers over each other at the same share of their travel, and under them what else is said; the scale at the foot moves both. */
export function ComparedDrawing({ before, after, children }: ComparedFingers & { readonly children: ReactNode }) {
  const units = useUnits()
  const [place, width] = useWidth<HTMLDivElement>()
  const [arc_ratio, setPointed] = useState(1)
  const point = useCallback((ratio: number) => setPointed(ratio), [])
  const standing = useMemo(
    () =>
      [before, after].flatMap(({ words, evaluation }) => {
        const { design, travel } = toldIn(units, evaluation)
        return travel === undefined ? [] : [{ words, design, travel }]
      }),
    [before, after, units],
  )
  const sheet = useMemo(() => {
    return width === 0 || standing.length === 0 ? undefined : layoutCompared(standing, width)
  }, [standing, width])
  const svg = useMemo(() => {
    return sheet && drawCompared({ before, after }, { sheet, arc_ratio })
  }, [before, after, sheet, arc_ratio])
  const led = standing.at(-1)
  if (led === undefined)
    return (
      <>
        <p className="aside">Neither of the two can be moved, so that there is nothing to draw.</p>
        {children}
      </>
    )
  return (
    <>
      <p className={styles.posture}>
        {standing
          .map(({ words, design, travel }) => {
            return `${words} at ${driveName(design)} ${readTravel(travel, Math.min(arc_ratio, travelEnd(travel)))}`
          })
          .join('; ')}
        {standing.length === 1 ? '; the other cannot be moved' : ''}.
      </p>
      <div ref={place}>
        <Drawn className={styles.drawing} shape={svg} />
      </div>
      {children}
      <TravelPointer design={led.design} travel={led.travel} {...{ arc_ratio, point }} />
    </>
  )
}
