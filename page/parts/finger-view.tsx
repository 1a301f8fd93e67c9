import { useMemo, useRef } from 'react'
import { type Evaluation, type ForcePicture, postureAt, type Question } from '../../engine/index.ts'
import { drawMarked, drawPosture, drawProposed, gripsOf, layoutSheet, type Told } from '../../report/index.ts'
import { useAttention } from '../state/attention.ts'
import type { Grasp } from '../state/grasp.ts'
import { useProposal } from '../state/proposal.ts'
import { useGripDrag } from '../state/use-grip-drag.ts'
import { useWidth } from '../state/use-width.ts'
import styles from './finger-view.module.css'
import { GripHandle } from './grip-handle.tsx'

/** What the view of the finger needs. */
export interface FingerViewProps {
  readonly evaluation: Told
  /** The design's text of now: it may be newer than the evaluation. */
  readonly text: string
  /** Changes only with the design that is opened, so that the drawing keeps its scale while it is edited. */
  readonly sheetKey: string
  readonly arc_ratio: number
  readonly forces?: ForcePicture
  /** What the forces were asked for. */
  readonly asked?: Question
  readonly grasp: Grasp
}

/** The finger at a posture. Its things can be looked at, and moved by hand or by arrow keys. */
export function FingerView({ evaluation, text, sheetKey, arc_ratio, forces, asked, grasp }: FingerViewProps) {
  const [place, width] = useWidth<HTMLDivElement>()
  const posture = useMemo(() => postureAt(evaluation, arc_ratio), [evaluation, arc_ratio])
  const sheet = useSheet(evaluation, { key: sheetKey, width })
  const { marked } = useAttention()
  const { design, travel, units = 'metric' } = evaluation
  const given = useMemo(
    () => ({ ...(forces === undefined ? {} : { forces }), ...(asked === undefined ? {} : { question: asked }) }),
    [forces, asked],
  )
  const drawing = useMemo(() => {
    if (travel === undefined || sheet === undefined) return undefined
    const title = `${design.title} at ${Math.round(arc_ratio * 100)} % of its travel`
    return drawPosture({ design, travel, posture, units, ...given }, { sheet, idPrefix: 'finger-', title })
  }, [design, travel, posture, units, given, sheet, arc_ratio])
  const grips = useMemo(() => gripsOf({ design, text, posture, ...given }), [design, text, posture, given])
  const marks = useMemo(() => {
    if (sheet === undefined || marked === undefined) return ''
    return drawMarked({ design, posture, sheet, row: marked.split('.') })
  }, [design, posture, sheet, marked])
  const proposed = useProposal()
  const more = useMemo(
    () => (sheet === undefined || proposed === undefined ? '' : drawProposed({ design, posture, sheet, proposed })),
    [design, posture, sheet, proposed],
  )
  const { near, handlers } = useGripDrag({ sheet, grips, design, grasp })
  return (
    <div ref={place} className={`${styles.view} ${near?.hand === undefined ? '' : styles.reaching}`} {...handlers}>
      {drawing === undefined || sheet === undefined ? null : (
        <>
          <div className={styles.drawing} dangerouslySetInnerHTML={{ __html: drawing.svg }} />
          <div className={styles.marks} dangerouslySetInnerHTML={{ __html: marks + more }} />
          {grips.map((grip) => (
            <GripHandle key={grip.id} {...{ grip, grasp, view: sheet.view }} isNear={near?.id === grip.id} />
          ))}
        </>
      )}
    </div>
  )
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
