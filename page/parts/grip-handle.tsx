import { type KeyboardEvent, useRef } from 'react'
import { type Arrow, type Grip, steps, type View } from '../../report/index.ts'
import type { Grasp } from '../state/grasp.ts'
import { gripPlace } from '../state/grip-place.ts'
import styles from './finger-view.module.css'

const ARROWS: Readonly<Record<string, Arrow>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

/** Radius in px, and the length that its line is counted on: a whole number of dots with as much paper between. */
const RINGS = { pin: { r: 10.5, pathLength: 66 }, other: { r: 6, pathLength: 38 } } as const

/**
 * A ring, and for the keyboard a button in its middle; hands take hold of the drawing itself, which knows what is near. Arrow keys move what it stands for by the shop's step along the drawing's own directions, or turn it:
 * left and up counter-clockwise. Held with Shift they go by a tenth of the step.
 */
export function GripHandle(about: { readonly grip: Grip; readonly view: View; readonly isNear: boolean; readonly grasp: Grasp }) {
  const { grip, view, isNear, grasp } = about
  const gesture = useRef<object>({})
  const at = gripPlace(view, grip)
  const kind = grip.hand === undefined ? styles.bound : isNear ? styles.near : ''
  const ring = grip.id.startsWith('pin ') ? RINGS.pin : RINGS.other
  const press = (event: KeyboardEvent): void => {
    const arrow = ARROWS[event.key]
    if (arrow === undefined) return
    event.preventDefault()
    if (!event.repeat) gesture.current = {}
    const changes = grip.hand?.nudge(arrow, event.shiftKey ? 'fine' : 'step') ?? []
    if (changes.length > 0) grasp.move({ grip, changes, gesture: gesture.current })
  }
  return (
    <div className={styles.grip} style={{ left: at.x, top: at.y }}>
      <button
        type="button"
        className={`visually-hidden ${styles.handle}`}
        data-grip={grip.id}
        aria-label={labelOf(grip)}
        onFocus={() => grasp.touch(grip)}
        onClick={() => grasp.touch(grip)}
        onKeyDown={press}
      />
      <svg className={`${styles.ring} ${kind}`} viewBox="-11 -11 22 22" aria-hidden="true">
        <circle {...ring} />
      </svg>
    </div>
  )
}

function labelOf({ says, note, hand }: Grip): string {
  const way =
    hand === undefined ? '' : ` Arrow keys move it by ${steps.step.length_mm} mm, with Shift by ${steps.fine.length_mm} mm.`
  return `${says}.${note === undefined ? '' : ` ${note}`}${way}`
}
