import { type PointerEvent, useMemo, useRef, useState } from 'react'
import { type Evaluation, type ForcePicture, type Point, type Posture, postureAt } from '../../engine/index.ts'
import { drawPosture, layoutSheet } from '../../report/index.ts'
import { type MovableHole, STEP_MM, stepped } from '../work/design-text.ts'
import { useWidth } from '../work/use-width.ts'
import styles from './finger-view.module.css'

/** A pin within this distance of a finger's touch is taken. */
const REACH_PX = 26

/** The finger at a posture; pins whose place is plain millimetres can be moved by hand or by arrow keys. */
export interface FingerViewProps {
  readonly evaluation: Evaluation
  /** Changes only with the file, so that the drawing keeps its scale while a pin is dragged. */
  readonly sheetKey: string
  readonly arc_ratio: number
  readonly forces?: ForcePicture
  readonly movable: readonly MovableHole[]
  readonly move: (hole: MovableHole, at: Point) => void
}

interface Drag {
  readonly hole: MovableHole
  readonly turn_rad: number
  readonly from: { readonly x: number; readonly y: number }
}

export function FingerView(props: FingerViewProps) {
  const { evaluation, arc_ratio, forces, movable, move } = props
  const [place, width] = useWidth<HTMLDivElement>()
  const posture = useMemo(() => postureAt(evaluation, arc_ratio), [evaluation, arc_ratio])
  const sheet = useSheet(evaluation, { key: props.sheetKey, width })
  const drag = useRef<Drag>(undefined)
  const [near, setNear] = useState<number>()
  if (evaluation.travel === undefined || sheet === undefined) return <div ref={place} className={styles.view} />
  const drawing = drawPosture(
    { design: evaluation.design, travel: evaluation.travel, posture, ...(forces === undefined ? {} : { forces }) },
    { sheet, idPrefix: 'finger-', title: `${evaluation.design.title} at ${Math.round(arc_ratio * 100)} % of its travel` },
  )
  const placeOf = (event: PointerEvent): { x: number; y: number } => {
    const box = event.currentTarget.getBoundingClientRect()
    return { x: event.clientX - box.left, y: event.clientY - box.top }
  }
  const holeNear = (at: { x: number; y: number }): MovableHole | undefined => {
    const reached = movable.map((hole) => ({
      hole,
      distance: Math.hypot(drawing.pins[hole.pin].x - at.x, drawing.pins[hole.pin].y - at.y),
    }))
    return reached.filter(({ distance }) => distance < REACH_PX).sort((one, other) => one.distance - other.distance)[0]?.hole
  }
  const take = (event: PointerEvent<HTMLDivElement>): void => {
    const from = placeOf(event)
    const hole = holeNear(from)
    if (hole === undefined) return
    event.preventDefault()
    event.currentTarget.setPointerCapture(event.pointerId)
    drag.current = { hole, from, turn_rad: posture.poses[3 * hole.part + 2] }
    setNear(hole.pin)
  }
  const follow = (event: PointerEvent<HTMLDivElement>): void => {
    const at = placeOf(event)
    if (drag.current === undefined) {
      setNear(holeNear(at)?.pin)
      return
    }
    const { hole, from, turn_rad } = drag.current
    const moved = { x_mm: (at.x - from.x) / drawing.scale_px_mm, y_mm: (from.y - at.y) / drawing.scale_px_mm }
    move(hole, stepped(shifted(hole.at, moved, turn_rad)))
  }
  const release = (): void => {
    drag.current = undefined
  }
  return (
    <div
      ref={place}
      className={`${styles.view} ${near === undefined ? '' : styles.reaching}`}
      onPointerDown={take}
      onPointerMove={follow}
      onPointerUp={release}
      onPointerCancel={release}
      onPointerLeave={() => drag.current === undefined && setNear(undefined)}
    >
      <div className={styles.drawing} dangerouslySetInnerHTML={{ __html: drawing.svg }} />
      {movable.map((hole) => (
        <PinHandle
          key={hole.pin}
          {...{ hole, evaluation, posture, move }}
          at={drawing.pins[hole.pin]}
          isNear={near === hole.pin}
        />
      ))}
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

interface PinHandleProps {
  readonly hole: MovableHole
  readonly evaluation: Evaluation
  readonly posture: Posture
  readonly at: { readonly x: number; readonly y: number }
  readonly isNear: boolean
  readonly move: (hole: MovableHole, at: Point) => void
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

/** A ring about a pin that the keyboard reaches; arrow keys move its hole by the shop's step along the drawing's own directions. */
function PinHandle({ hole, evaluation, posture, at, isNear, move }: PinHandleProps) {
  const pin = evaluation.design.pins[hole.pin]
  const part = evaluation.design.parts[hole.part]
  return (
    <button
      type="button"
      className={`${styles.handle} ${isNear ? styles.near : ''}`}
      style={{ left: at.x, top: at.y }}
      data-pin={pin.id}
      aria-label={`Pin ${pin.id}: hole ${hole.holeId} of ${part.name} at ${hole.at.x_mm.toFixed(2)}, ${hole.at.y_mm.toFixed(2)} mm. Arrow keys move it by ${STEP_MM} mm.`}
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

/** A hole in its part's frame after a movement that was seen in the mount frame. */
function shifted(at: Point, moved: Point, turn_rad: number): Point {
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  return { x_mm: at.x_mm + moved.x_mm * cos + moved.y_mm * sin, y_mm: at.y_mm - moved.x_mm * sin + moved.y_mm * cos }
}
