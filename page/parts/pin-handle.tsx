import type { Evaluation, Point, Posture } from '../../engine/index.ts'
import { type MovableHole, STEP_MM } from '../state/design-text.ts'
import { shifted } from '../state/use-pin-drag.ts'
import styles from './finger-view.module.css'

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

/** A ring about a pin that the keyboard reaches; arrow keys move its hole by the shop's step along the drawing's own directions. */
export function PinHandle(about: {
  readonly hole: MovableHole
  readonly evaluation: Evaluation
  readonly posture: Posture
  readonly at: { readonly x: number; readonly y: number }
  readonly isNear: boolean
  readonly move: (hole: MovableHole, at: Point) => void
}) {
  const { hole, evaluation, posture, at, isNear, move } = about
  const pin = evaluation.design.pins[hole.pin]
  const part = evaluation.design.parts[hole.part]
  const place = `${hole.at.x_mm.toFixed(2)}, ${hole.at.y_mm.toFixed(2)} mm`
  return (
    <button
      type="button"
      className={`${styles.handle} ${isNear ? styles.near : ''}`}
      style={{ left: at.x, top: at.y }}
      data-pin={pin.id}
      aria-label={`Pin ${pin.id}: hole ${hole.holeId} of ${part.name} at ${place}. Arrow keys move it by ${STEP_MM} mm.`}
      onKeyDown={(event) => {
        const arrow = ARROWS[event.key]
        if (arrow === undefined) return
        event.preventDefault()
        const moved = { x_mm: arrow[0] * STEP_MM, y_mm: arrow[1] * STEP_MM }
        move(hole, shifted(hole.at, moved, posture.poses[3 * hole.part + 2]))
      }}
    />
  )
}
