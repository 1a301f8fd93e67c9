import { useMemo, useRef } from 'react'
import type { Evaluation } from '../../engine/index.ts'
import { drawMarked, drawPosture, drawProposed, gripsOf, layoutSheet, type Told } from '../../report/index.ts'
import { useAttention } from '../state/attention.ts'
import type { Grasp } from '../state/grasp.ts'
import type { Picture } from '../state/picture.ts'
import { useProposal } from '../state/proposal.ts'
import { useGripDrag } from '../state/use-grip-drag.ts'
import { useWidth } from '../state/use-width.ts'
import { Drawn } from './drawn.tsx'
import styles from './finger-view.module.css'
import { GripHandle } from './grip-handle.tsx'

/** What the view of the finger needs. */
export interface FingerViewProps {
  readonly evaluation: Told
  /** The design's text of now: it may be newer than the evaluation. */
  readonly text: string
  /** Changes only with the design that is opened, so that the drawing keeps its scale while it is edited. */
  readonly sheetKey: string
  readonly picture: Picture
  readonly grasp: Grasp
}

/** The finger at a posture. Its things can be looked at, and moved by hand or by arrow keys. */
export function FingerView({ evaluation, text, sheetKey, picture, grasp }: FingerViewProps) {
  const [place, width] = useWidth<HTMLDivElement>()
  const sheet = useSheet(evaluation, { key: sheetKey, width })
  const { marked } = useAttention()
  const { design, travel, units = 'metric' } = evaluation
  const { posture } = picture
  const drawing = useMemo(() => {
    if (travel === undefined || sheet === undefined) return undefined
    const title = `${design.title} at ${Math.round(picture.posture.arc_ratio * 100)} % of its travel`
    return drawPosture({ design, travel, units, ...pictured(picture) }, { sheet, idPrefix: 'finger-', title })
  }, [design, travel, units, picture, sheet])
  const grips = useMemo(() => gripsOf({ design, text, ...pictured(picture) }), [design, text, picture])
  const marks = useMemo(() => {
    if (sheet === undefined || marked === undefined) return undefined
    return drawMarked({ design, posture, sheet, row: marked.split('.') })
  }, [design, posture, sheet, marked])
  const proposed = useProposal()?.design
  const more = useMemo(
    () => (sheet === undefined || proposed === undefined ? undefined : drawProposed({ design, posture, sheet, proposed })),
    [design, posture, sheet, proposed],
  )
  const { near, handlers } = useGripDrag({ sheet, grips, design, grasp })
  return (
    <div ref={place} className={`${styles.view} ${near?.hand === undefined ? '' : styles.reaching}`} {...handlers}>
      {drawing === undefined || sheet === undefined ? null : (
        <>
          <Drawn className={styles.drawing} shape={drawing.svg} />
          <Drawn className={styles.marks} shape={marks} />
          <Drawn className={styles.marks} shape={more} />
          {grips.map((grip) => (
            <GripHandle key={grip.id} {...{ grip, grasp, view: sheet.view }} isNear={near?.id === grip.id} />
          ))}
        </>
      )}
    </div>
  )
}

/** A picture as drawings want it. */
function pictured({ posture, forces, asked: { question } }: Picture) {
  return { posture, ...(forces && { forces }), ...(question && { question }) }
}

/** The sheet is laid out once a design and width, from the first evaluation that could be moved. */
function useSheet(evaluation: Evaluation, about: { readonly key: string; readonly width: number }) {
  const laid = useRef<{ readonly key: string; readonly sheet: ReturnType<typeof layoutSheet> }>(undefined)
  const key = `${about.width} ${about.key}`
  if (evaluation.travel !== undefined && about.width > 0 && laid.current?.key !== key) {
    laid.current = { key, sheet: layoutSheet({ design: evaluation.design, travel: evaluation.travel, width_px: about.width }) }
  }
  return laid.current?.sheet
}
