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
  readonly loadCase: string
  readonly swing: Swing
  /** State with its largest stress; where it is only pressed, that with its least. */
  readonly state: Pressed
}

/**
 * Of each fibre its swings load case by load case, without those that do not touch it, and without fibres that the opposite one spares.
 *
 * @param bent the joints of the pin. Where there are several their stresses are added with whatever sign is worse, since they need not bend
 *             the pin at the same place: the safe side
 */
export function fibreSwings({ mechanism, states }: SwungPin, bent: readonly Bending[]): readonly (readonly PinSwing[])[] {
  const seen = { states, bent, turns: turnsOf(states, mechanism.joints[bent[0].joint].a) }
  const cases = [...statesByCase(states)].map(([loadCase, ofCase]) => ({ loadCase, reached: reachedIn(seen, ofCase) }))
  return ENDS.filter((end) => !isSpared(cases, end)).map((end) =>
    cases.flatMap(({ loadCase, reached }) => swingOf(states, { loadCase, reached, end }) ?? []),
  )
}

/** The two ends of a line swing as far; one that is pulled less than the other in every load case has the lesser mean and is spared. */
function isSpared(cases: readonly { readonly reached: Reached }[], end: number): boolean {
  const other = oppositeOf(end)
  return cases.every(({ reached: { most } }) => most[end] < most[other])
}

function oppositeOf(end: number): number {
  return (end + LINES) % (2 * LINES)
}

/** Where a pin is swung. */
export interface SwungPin {
  readonly mechanism: Mechanism
  readonly states: readonly Pressed[]
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

const ENDS = Array.from({ length: 2 * LINES }, (_, end) => end)

function reachedIn(seen: Seen, ofCase: Int32Array): Reached {
  const reached = { most: new Float64Array(2 * LINES), at: new Int32Array(2 * LINES).fill(NOWHERE) }
  const note = seen.bent.length === 1 ? noteAlone : noteTogether
  for (const index of ofCase) note(reached, seen, index)
  return reached
}

/** One state of a pin with a single joint: along each line one of its two ends is pulled. */
function noteAlone({ most, at }: Reached, { states, bent, turns }: Seen, index: number): void {
  const { x, y } = stressIn(states[index].forces, bent[0], { cos: turns[2 * index], sin: turns[2 * index + 1] })
  for (let line = 0; line < LINES; line++) {
    const along = ALONG_x[line] * x + ALONG_y[line] * y
    const end = along >= 0 ? line : line + LINES
    const size = Math.abs(along)
    if (size <= most[end]) continue
    most[end] = size
    at[end] = index
  }
}

/** One state of a pin with several joints: what the others add may pull either end. */
function noteTogether({ most, at }: Reached, { states, bent, turns }: Seen, index: number): void {
  const { forces } = states[index]
  const cos = turns[2 * index]
  const sin = turns[2 * index + 1]
  const { x, y } = stressIn(forces, bent[0], { cos, sin })
  for (let line = 0; line < LINES; line++) {
    const along = ALONG_x[line] * x + ALONG_y[line] * y
    const others = sizesAlong(forces, bent, { line, cos, sin })
    const size = Math.abs(along) + others
    const towards = along >= 0 ? line : line + LINES
    const away = along >= 0 ? line + LINES : line
    for (const end of others > 0 ? [towards, away] : [towards]) {
      if (size <= most[end]) continue
      most[end] = size
      at[end] = index
    }
  }
}

/** Stress by one joint in the frame of the part that the pin is fixed in, MPa. */
function stressIn(
  forces: Float64Array,
  { joint, perN_MPa }: Bending,
  { cos, sin }: { readonly cos: number; readonly sin: number },
): { readonly x: number; readonly y: number } {
  const x = forces[2 * joint]
  const y = forces[2 * joint + 1]
  return { x: perN_MPa * (cos * x + sin * y), y: perN_MPa * (cos * y - sin * x) }
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

interface FibreUnder {
  readonly loadCase: string
  readonly reached: Reached
  readonly end: number
}

/** Undefined where a load case neither pulls nor presses a fibre. */
function swingOf(states: readonly Pressed[], { loadCase, reached, end }: FibreUnder): PinSwing | undefined {
  const { most, at } = reached
  const other = oppositeOf(end)
  const index = at[end] === NOWHERE ? at[other] : at[end]
  if (index === NOWHERE) return undefined
  const swing = { most_MPa: BETWEEN_ratio * most[end], least_MPa: -BETWEEN_ratio * most[other] }
  return { loadCase, swing, state: states[index] }
}
