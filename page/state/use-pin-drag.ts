/** Dragging a pin: which one is near the pointer, and where its hole goes, in its part's own frame, rounded to the shop's step. */
import { type PointerEvent, useRef, useState } from 'react'
import type { Point, Posture } from '../../engine/index.ts'
import type { FingerDrawing } from '../../report/index.ts'
import { type MovableHole, stepped } from './design-text.ts'

/** A pin within this distance of a touch is taken: half a touch target and a little. */
const REACH_PX = 26

interface Drag {
  readonly hole: MovableHole
  readonly turn_rad: number
  readonly from: Place
}

interface Place {
  readonly x: number
  readonly y: number
}

/** What a drag happens on. */
export interface PinGround {
  readonly drawing: FingerDrawing | undefined
  readonly posture: Posture
  readonly movable: readonly MovableHole[]
  readonly move: (hole: MovableHole, at: Point) => void
}

/** Handlers for the element that holds the drawing, and the pin that would be or is taken. */
export function usePinDrag(ground: PinGround) {
  const drag = useRef<Drag>(undefined)
  const [near, setNear] = useState<number>()
  const take = (event: PointerEvent<HTMLElement>): void => {
    const from = placeOf(event)
    const hole = holeNear(from, ground)
    if (hole === undefined) return
    event.preventDefault()
    event.currentTarget.setPointerCapture(event.pointerId)
    drag.current = { hole, from, turn_rad: ground.posture.poses[3 * hole.part + 2] }
    setNear(hole.pin)
  }
  const follow = (event: PointerEvent<HTMLElement>): void => {
    const at = placeOf(event)
    if (drag.current === undefined || ground.drawing === undefined) {
      setNear(holeNear(at, ground)?.pin)
      return
    }
    const { hole, from, turn_rad } = drag.current
    const scale = ground.drawing.scale_px_mm
    ground.move(hole, stepped(shifted(hole.at, { x_mm: (at.x - from.x) / scale, y_mm: (from.y - at.y) / scale }, turn_rad)))
  }
  const release = (): void => {
    drag.current = undefined
  }
  const leave = (): void => {
    if (drag.current === undefined) setNear(undefined)
  }
  return {
    near,
    handlers: {
      onPointerDown: take,
      onPointerMove: follow,
      onPointerUp: release,
      onPointerCancel: release,
      onPointerLeave: leave,
    },
  }
}

/** A hole in its part's frame after a movement that was seen in the mount frame. */
export function shifted(at: Point, moved: Point, turn_rad: number): Point {
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)]
  return { x_mm: at.x_mm + moved.x_mm * cos + moved.y_mm * sin, y_mm: at.y_mm - moved.x_mm * sin + moved.y_mm * cos }
}

function placeOf(event: PointerEvent<HTMLElement>): Place {
  const box = event.currentTarget.getBoundingClientRect()
  return { x: event.clientX - box.left, y: event.clientY - box.top }
}

function holeNear(at: Place, { drawing, movable }: PinGround): MovableHole | undefined {
  if (drawing === undefined) return undefined
  const reached = movable.map((hole) => ({
    hole,
    distance: Math.hypot(drawing.pins[hole.pin].x - at.x, drawing.pins[hole.pin].y - at.y),
  }))
  return reached.filter(({ distance }) => distance < REACH_PX).sort((one, other) => one.distance - other.distance)[0]?.hole
}
