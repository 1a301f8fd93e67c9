import { type CSSProperties, memo, type PointerEvent, type ReactNode, useMemo } from 'react'
import { drawPlot, type PlotGroup, plotGroups, type QuestionName, type Told } from '../../report/index.ts'
import { useSeen } from '../state/use-seen.ts'
import { useSettled } from '../state/use-settled.ts'
import { useWidth } from '../state/use-width.ts'
import { Drawn } from './drawn.tsx'
import styles from './plots.module.css'

const HEIGHT_PX = 236
const TWO_FROM_PX = 720
const GAP_PX = 28

/**
 * The plots of a question over the travel; the pointer stands at the posture and may be set on any of them. They follow what is dragged while
 * somebody can see them, and else once it has come to rest.
 */
export function Plots(about: {
  readonly evaluation: Told
  readonly question: QuestionName
  readonly arc_ratio: number
  readonly point: (arc_ratio: number) => void
  /** Stands in the last cell, in print. */
  readonly children: ReactNode
}) {
  const { question, arc_ratio, point, children } = about
  const [place, width] = useWidth<HTMLDivElement>()
  const settled = useSettled(about.evaluation)
  const evaluation = useSeen(place) ? about.evaluation : settled
  const groups = useMemo(() => plotGroups(evaluation).filter((group) => group.question === question), [evaluation, question])
  const each = width >= TWO_FROM_PX ? Math.floor((width - GAP_PX) / 2) : width
  return (
    <div ref={place} className={styles.plots}>
      {width === 0
        ? null
        : groups.map((group) => <PlotView key={group.id} {...{ evaluation, group, arc_ratio, point }} width={each} />)}
      {children}
    </div>
  )
}

const PlotView = memo(function PlotView(about: {
  readonly evaluation: Told
  readonly group: PlotGroup
  readonly width: number
  readonly arc_ratio: number
  readonly point: (arc_ratio: number) => void
}) {
  const { evaluation, group, width, arc_ratio, point } = about
  const { travel } = evaluation
  const plot = useMemo(
    () => (travel === undefined ? undefined : drawPlot({ group, travel }, { width_px: width, height_px: HEIGHT_PX })),
    [group, travel, width],
  )
  if (plot === undefined) return null
  const [from, to] = plot.range
  const x = plot.left + ((arc_ratio - from) / (to - from)) * (plot.right - plot.left)
  const set = (event: PointerEvent<HTMLDivElement>): void => {
    if (event.buttons === 0) return
    const at = event.clientX - event.currentTarget.getBoundingClientRect().left
    const share = Math.min(1, Math.max(0, (at - plot.left) / (plot.right - plot.left)))
    point(from + share * (to - from))
  }
  return (
    <div
      className={styles.plot}
      style={{ '--plot-width': `${width}px`, '--plot-height': `${HEIGHT_PX}px` } as CSSProperties}
      onPointerDown={set}
      onPointerMove={set}
    >
      <Drawn shape={plot.svg} />
      <span className={styles.pointer} style={{ left: `${(100 * x) / plot.width}%` }} />
    </div>
  )
})
