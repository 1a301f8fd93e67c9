/**
 * How far the stress in a pin swings while the finger closes under a load and opens without it.
 *
 * A pin stands still in the part that it is fixed in, while the force on it turns and changes. A fibre of its skin in the direction u feels
 * the largest and the least of the force along u, over all states of one load case and nothing at all: the open finger, unloaded.
 *
 *         F(closing) ↗        u: eight lines through the pin's middle, each with its two ends
 *              ●──────── u    the largest between two lines is larger by at most 1/cos 11.25°, which is counted
 *         F(open) = 0
 */
import type { Mechanism } from '../motion/mechanism.ts'
import type { Swing } from './fatigue.ts'
import type { Pressed } from './pressed.ts'

/** Lines through the middle of a pin along which its stress is followed. */
const LINES = 8
const LINE_rad = Math.PI / LINES
/** What may be missed between two lines. */
const BETWEEN_ratio = 1 / Math.cos(LINE_rad / 2)
const ALONG = Array.from({ length: LINES }, (_, line) => ({ x: Math.cos(line * LINE_rad), y: Math.sin(line * LINE_rad) }))

/** A joint of a pin, and the stress in the pin's skin for each newton of its force. */
export interface Bending {
  readonly joint: number
  readonly perN_MPa: number
}

/** The swing of one fibre under one load case. */
export interface PinSwing {
  readonly swing: Swing
  /** State with its largest stress. */
  readonly state: Pressed
}

/** Of one load case: the largest stress of each fibre, and the state that it stands in. */
interface Reached {
  readonly most: Float64Array
  readonly states: (Pressed | undefined)[]
}

/**
 * The swings of a pin's fibres, load case by load case.
 *
 * @param bent the joints of the pin. Where there are several their stresses are added with whatever sign is worse, since they need not bend
 *             the pin at the same place: the safe side
 */
export function pinSwings(mechanism: Mechanism, states: readonly Pressed[], bent: readonly Bending[]): readonly PinSwing[] {
  const reached = new Map<string, Reached>()
  const { a } = mechanism.joints[bent[0].joint]
  let turned: Float64Array | undefined
  let cos = 1
  let sin = 0
  for (const state of states) {
    if (a !== 0 && state.posture !== turned) {
      turned = state.posture
      cos = Math.cos(turned[3 * a + 2])
      sin = Math.sin(turned[3 * a + 2])
    }
    noteState(ofCase(reached, state), state, { bent, cos, sin })
  }
  return [...reached.values()].flatMap(swingsOf)
}

function ofCase(reached: Map<string, Reached>, { loadCase }: Pressed): Reached {
  const known = reached.get(loadCase)
  if (known) return known
  const fresh = { most: new Float64Array(2 * LINES), states: new Array<Pressed | undefined>(2 * LINES).fill(undefined) }
  reached.set(loadCase, fresh)
  return fresh
}

interface Turned {
  readonly bent: readonly Bending[]
  /** Of the part that the pin is fixed in. */
  readonly cos: number
  readonly sin: number
}

function noteState(reached: Reached, state: Pressed, { bent, cos, sin }: Turned): void {
  for (let line = 0; line < LINES; line++) {
    const x = cos * ALONG[line].x - sin * ALONG[line].y
    const y = sin * ALONG[line].x + cos * ALONG[line].y
    let sum = 0
    for (const { joint, perN_MPa } of bent) {
      const along = perN_MPa * (x * state.forces[2 * joint] + y * state.forces[2 * joint + 1])
      sum += bent.length === 1 ? along : Math.abs(along)
    }
    note(reached, state, { end: sum >= 0 ? line : line + LINES, size: Math.abs(sum) })
    if (bent.length > 1) note(reached, state, { end: line + LINES, size: sum })
  }
}

function note({ most, states }: Reached, state: Pressed, { end, size }: { readonly end: number; readonly size: number }): void {
  if (size <= most[end]) return
  most[end] = size
  states[end] = state
}

function swingsOf({ most, states }: Reached): PinSwing[] {
  return states.flatMap((state, end): PinSwing[] => {
    if (!state) return []
    const other = (end + LINES) % (2 * LINES)
    return [{ swing: { most_MPa: BETWEEN_ratio * most[end], least_MPa: -BETWEEN_ratio * most[other] }, state }]
  })
}
