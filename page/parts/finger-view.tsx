import { useMemo, useRef } from 'react'
import { type Evaluation, type ForcePicture, type Point, postureAt, type Question } from '../../engine/index.ts'
import { drawPosture, layoutSheet } from '../../report/index.ts'
import type { MovableHole } from '../state/design-text.ts'
import { usePinDrag } from '../state/use-pin-drag.ts'
import { useWidth } from '../state/use-width.ts'
import styles from './finger-view.module.css'
import { PinHandle } from './pin-handle.tsx'

/** What the view of the finger needs. */
export interface FingerViewProps {
  readonly evaluation: Evaluation
  /** Changes only with the file, so that the drawing keeps its scale while a pin is dragged. */
  readonly sheetKey: string
  readonly arc_ratio: number
  readonly forces?: ForcePicture
  /** What the forces were asked for. */
  readonly asked?: Question
  readonly movable: readonly MovableHole[]
  readonly move: (hole: MovableHole, at: Point) => void
}

/** The finger at a posture; pins whose place is plain millimetres can be moved by hand or by arrow keys. */
export function FingerView({ evaluation, sheetKey, arc_ratio, forces, asked, movable, move }: FingerViewProps) {
  const [place, width] = useWidth<HTMLDivElement>()
  const posture = useMemo(() => postureAt(evaluation, arc_ratio), [evaluation, arc_ratio])
  const sheet = useSheet(evaluation, { key: sheetKey, width })
  const { design, travel } = evaluation
  const drawing = useMemo(() => {
    if (travel === undefined || sheet === undefined) return undefined
    const title = `${design.title} at ${Math.round(arc_ratio * 100)} % of its travel`
    const picture = {
      design,
      travel,
      posture,
      ...(forces === undefined ? {} : { forces }),
      ...(asked === undefined ? {} : { question: asked }),
    }
    return drawPosture(picture, { sheet, idPrefix: 'finger-', title })
  }, [design, travel, posture, forces, asked, sheet, arc_ratio])
  const { near, handlers } = usePinDrag({ drawing, posture, movable, move })
  return (
    <div ref={place} className={`${styles.view} ${near === undefined ? '' : styles.reaching}`} {...handlers}>
      {drawing === undefined ? null : (
        <>
          <div className={styles.drawing} dangerouslySetInnerHTML={{ __html: drawing.svg }} />
          {movable.map((hole) => (
            <PinHandle
              key={hole.pin}
              {...{ hole, evaluation, posture, move }}
              at={drawing.pins[hole.pin]}
              isNear={near === hole.pin}
            />
          ))}
        </>
      )}
    </div>
  )
}

/** The sheet is laid out once a file and width, from the first evaluation that could be moved. */
function useSheet(evaluation: Evaluation, about: { readonly key: string; readonly width: number }) {
  const laid = useRef<{ readonly key: string; readonly sheet: ReturnType<typeof layoutSheet> }>(undefined)
  const key = `${about.width} ${about.key}`
  if (evaluation.travel !== undefined && about.width > 0 && laid.current?.key !== key) {
    laid.current = { key, sheet: layoutSheet({ design: evaluation.design, travel: evaluation.travel, width_px: about.width }) }
  }
  return laid.current?.sheet
}
