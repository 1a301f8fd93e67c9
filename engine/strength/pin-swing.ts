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
import { statesByCase, turnsOf } from './states-by-case.ts'

/** Lines through the middle of a pin along which its stress is followed. */
const LINES = 8
const LINE_rad = Math.PI / LINES
/** What may be missed between two lines. */
const BETWEEN_ratio = 1 / Math.cos(LINE_rad / 2)
const ALONG_x = Float64Array.from({ length: LINES }, (_, line) => Math.cos(line * LINE_rad))
const ALONG_y = Float64Array.from({ length: LINES }, (_, line) => Math.sin(line * LINE_rad))

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

/**
 * The swings of a pin's fibres, load case by load case.
 *
 * @param bent the joints of the pin. Where there are several their stresses are added with whatever sign is worse, since they need not bend
 *             the pin at the same place: the safe side
 */
export function pinSwings(mechanism: Mechanism, states: readonly Pressed[], bent: readonly Bending[]): readonly PinSwing[] {
  const { a } = mechanism.joints[bent[0].joint]
  const seen = { states, bent, turns: turnsOf(states, a) }
  return [...statesByCase(states).values()].flatMap((ofCase) => swingsOf(states, reachedIn(seen, ofCase)))
}

/** What a pin is bent by, with the turns of the part that it is fixed in. */
interface Seen {
  readonly states: readonly Pressed[]
  readonly bent: readonly Bending[]
  readonly turns: Float64Array
}

/** Of one load case: the largest stress of each fibre, and the place of the state that it stands in. */
interface Reached {
  readonly most: Float64Array
  readonly at: Int32Array
}

const NOWHERE = -1

function reachedIn(seen: Seen, ofCase: Int32Array): Reached {
  const reached = { most: new Float64Array(2 * LINES), at: new Int32Array(2 * LINES).fill(NOWHERE) }
  for (const index of ofCase) noteState(reached, seen, index)
  return reached
}

function noteState({ most, at }: Reached, { states, bent, turns }: Seen, index: number): void {
  const { forces } = states[index]
  const [{ joint, perN_MPa }] = bent
  const cos = turns[2 * index]
  const sin = turns[2 * index + 1]
  const x = perN_MPa * (cos * forces[2 * joint] + sin * forces[2 * joint + 1])
  const y = perN_MPa * (cos * forces[2 * joint + 1] - sin * forces[2 * joint])
  for (let line = 0; line < LINES; line++) {
    const along = ALONG_x[line] * x + ALONG_y[line] * y
    const others = bent.length === 1 ? 0 : sizesAlong(forces, bent, { line, cos, sin })
    const size = Math.abs(along) + others
    const towards = along >= 0
    const end = towards ? line : line + LINES
    if (size > most[end]) {
      most[end] = size
      at[end] = index
    }
    const other = towards ? line + LINES : line
    if (others > 0 && size > most[other]) {
      most[other] = size
      at[other] = index
    }
  }
}

/** Stress by all joints but the first along a line, without its sign. */
function sizesAlong(
  forces: Float64Array,
  bent: readonly Bending[],
  { line, cos, sin }: { readonly line: number; readonly cos: number; readonly sin: number },
): number {
  let sum = 0
  for (const { joint, perN_MPa } of bent.slice(1)) {
    const x = cos * forces[2 * joint] + sin * forces[2 * joint + 1]
    const y = cos * forces[2 * joint + 1] - sin * forces[2 * joint]
    sum += perN_MPa * Math.abs(ALONG_x[line] * x + ALONG_y[line] * y)
  }
  return sum
}

function swingsOf(states: readonly Pressed[], { most, at }: Reached): PinSwing[] {
  const swings: PinSwing[] = []
  for (let end = 0; end < at.length; end++) {
    if (at[end] === NOWHERE) continue
    const other = (end + LINES) % (2 * LINES)
    const swing = { most_MPa: BETWEEN_ratio * most[end], least_MPa: -BETWEEN_ratio * most[other] }
    swings.push({ swing, state: states[at[end]] })
  }
  return swings
}
