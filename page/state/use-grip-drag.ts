/** Hands on the drawing: which grip is near the pointer, what is touched, and where a grip is pulled. */
import { type PointerEvent, useRef, useState } from 'react'
import type { Design } from '../../engine/index.ts'
import { type FingerSheet, fromSheet, type Grip } from '../../report/index.ts'
import type { Grasp } from './grasp.ts'
import { gripPlace } from './grip-place.ts'

/** A grip within this distance of a touch is taken: half a touch target and a little. */
const REACH_PX = 26
/** A pointer that moved less has touched and not dragged. */
const STILL_PX = 3

interface Hold {
  readonly grip: Grip
  readonly from: Place
  /** Where the pointer was in the window: what stands above the drawing may grow while something is dragged. */
  readonly pointer: Place
  readonly gesture: object
  isDragged: boolean
}

interface Place {
  readonly x: number
  readonly y: number
}

/** What a drag happens on. */
export interface DragGround {
  readonly sheet: FingerSheet | undefined
  readonly grips: readonly Grip[]
  readonly design: Design
  readonly grasp: Grasp
}

/** Handlers for the element that holds the drawing, and the grip that would be or is taken. */
export function useGripDrag(ground: DragGround) {
  const hold = useRef<Hold>(undefined)
  const [near, setNear] = useState<Grip>()
  const take = (event: PointerEvent<HTMLElement>): void => {
    const from = placeOf(event)
    const grip = gripNear(from, ground)
    if (grip === undefined) {
      touchPart(event, ground)
      return
    }
    event.preventDefault()
    event.currentTarget.setPointerCapture(event.pointerId)
    hold.current = { grip, from, pointer: pointerOf(event), gesture: {}, isDragged: false }
    setNear(grip)
    ground.grasp.touch(grip)
  }
  const follow = (event: PointerEvent<HTMLElement>): void => {
    if (hold.current === undefined) setNear(gripNear(placeOf(event), ground))
    else drag(hold.current, event, ground)
  }
  const release = (): void => {
    hold.current = undefined
  }
  const leave = (): void => {
    if (hold.current === undefined) setNear(undefined)
  }
  const ends = { onPointerUp: release, onPointerCancel: release, onPointerLeave: leave }
  return { near, handlers: { onPointerDown: take, onPointerMove: follow, ...ends } }
}

function drag(hold: Hold, event: PointerEvent<HTMLElement>, { sheet, grasp }: DragGround): void {
  const { grip, from, pointer, gesture } = hold
  const at = pointerOf(event)
  const moved = { x: at.x - pointer.x, y: at.y - pointer.y }
  hold.isDragged ||= Math.hypot(moved.x, moved.y) > STILL_PX
  if (!hold.isDragged || sheet === undefined || grip.hand === undefined) return
  const way = { from: fromSheet(sheet.view, from), to: fromSheet(sheet.view, { x: from.x + moved.x, y: from.y + moved.y }) }
  grasp.move({ grip, changes: grip.hand.drag(way, event.shiftKey ? 'fine' : 'step'), gesture })
}

function pointerOf({ clientX: x, clientY: y }: PointerEvent<HTMLElement>): Place {
  return { x, y }
}

/** The outline under the pointer says which part was touched. */
function touchPart({ target }: PointerEvent<HTMLElement>, { design, grasp }: DragGround): void {
  const outline = target instanceof SVGElement ? target.dataset.part : undefined
  const part = outline === undefined ? undefined : design.parts[Number(outline)]
  if (part !== undefined) grasp.touch({ says: part.name, rows: [{ id: `parts.${part.id}`, words: 'the part itself' }] })
}

function placeOf(event: PointerEvent<HTMLElement>): Place {
  const box = event.currentTarget.getBoundingClientRect()
  return { x: event.clientX - box.left, y: event.clientY - box.top }
}

/** The nearest one; of two in one place the first, because pins come before what sits on them. */
function gripNear(at: Place, { sheet, grips }: DragGround): Grip | undefined {
  if (sheet === undefined) return undefined
  const reached = grips.map((grip) => {
    const { x, y } = gripPlace(sheet.view, grip)
    return { grip, distance: Math.hypot(x - at.x, y - at.y) }
  })
  return reached.filter(({ distance }) => distance < REACH_PX).toSorted((one, other) => one.distance - other.distance)[0]?.grip
}
