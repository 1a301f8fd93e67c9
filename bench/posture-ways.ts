/**
 * Postures of many sets of the example: the toggle's margin at 61 places of the drive, by the tables that serve any finger of dyads, beside a
 * row written by hand for this finger alone. This file looks behind the engine's door, because what is timed is one piece of it.
 */
import { readFileSync } from 'node:fs'
import { readVariation, type Variation, valuesAt } from '../engine/index.ts'
import { bendFlat, placeFlat, takeArms, turnLeadsAlike } from '../engine/variation/closed/flat-posture.ts'
import { type FlatRoom, flatRoom } from '../engine/variation/closed/flat-room.ts'
import type { FlatFinger } from '../engine/variation/closed/flat-tables.ts'
import { standingHold } from '../engine/variation/closed/standing-hold.ts'
import { cloudOf } from '../engine/variation/spread/cloud.ts'
import type { Way } from './compare.ts'

const SETS = 512
/** Sets that go through the tables together. */
const BLOCK = 128
const POSTURES = 61
/** From straight to where the example closes, rad. */
const CLOSED_rad = 1.3
/** Angles of the two ways may differ by rounding only, rad. */
const AGREES_rad = 1e-9

/** Both ways as work to be timed, the one by hand first. Throws when they do not agree. */
export function postureWays(): readonly Way[] {
  const { value: variation } = readVariation(readFileSync(new URL('../designs/heron.json', import.meta.url), 'utf8'), 'heron')
  const standing = variation && standingHold(variation)
  if (!variation || !standing || 'why' in standing) throw new Error('the short way does not serve the example')
  const numbers = Array.from(standing.lines.drawn, (value) => new Float64Array(SETS).fill(value))
  standing.lines.write(drawnSets(variation), numbers)
  const { finger, sides, nearest } = standing.hold.room
  const room = flatRoom({ finger, drawn: standing.lines.drawn, sides, nearest, sets_count: BLOCK })
  const turns = Float64Array.from({ length: POSTURES }, (_, index) => (-CLOSED_rad * index) / (POSTURES - 1))
  const columns = columnsOf(finger, sides, numbers)
  const byTables = (): Float64Array => throughTables(room, numbers, turns)
  const byHand = (): Float64Array => handWritten(columns, turns)
  const one = byTables()
  const transposed = (index: number): number => (index % POSTURES) * SETS + Math.floor(index / POSTURES)
  const apart = byHand().reduce((most, value, index) => Math.max(most, Math.abs(value - one[transposed(index)])), 0)
  if (!(apart < AGREES_rad)) throw new Error(`the two ways to the postures are ${apart} rad apart`)
  const name = `${SETS} sets at ${POSTURES} postures`
  return [
    { name: `${name}, by hand`, run: byHand },
    { name: `${name}, by tables`, run: byTables },
  ]
}

/** Values of the sets, a column a source. */
function drawnSets({ sources }: Variation): readonly Float64Array[] {
  const { fill } = cloudOf({ dimensions: sources.length, seed: 1 })
  const values = sources.map(() => new Float64Array(SETS))
  const normals = new Float64Array(sources.length)
  for (let sample = 0; sample < SETS; sample++) {
    fill(sample, normals)
    for (const [source, value] of valuesAt(sources, normals).entries()) values[source][sample] = value
  }
  return values
}

/** Margins posture by posture, because sets stand side by side. */
function throughTables(room: FlatRoom, numbers: readonly Float64Array[], turns: Float64Array): Float64Array {
  const out = new Float64Array(SETS * POSTURES)
  for (let from = 0; from < SETS; from += BLOCK) {
    for (const [index, column] of room.numbers.entries()) column.set(numbers[index].subarray(from, from + BLOCK))
    takeArms(room)
    for (let index = 0; index < POSTURES; index++) {
      turnLeadsAlike(room, turns[index])
      placeFlat(room)
      bendFlat(room, room.finger.toggles[0], out.subarray(index * SETS + from, index * SETS + from + BLOCK))
    }
  }
  return out
}

/** What the row by hand reads, one entry a set: the numbers of both loops in the order in which it takes them. */
function columnsOf({ lead, dyads }: FlatFinger, sides: Float64Array, numbers: readonly Float64Array[]): readonly Float64Array[] {
  const pairs = [lead.onMount, lead.onLead]
  for (const { pBeyond, pOnFirst, qOnFirst, qOnSecond, sOnSecond, sBeyond } of dyads)
    pairs.push(pBeyond, pOnFirst, qOnFirst, qOnSecond, sOnSecond, sBeyond)
  return [...pairs.flatMap((at) => [numbers[at], numbers[at + 1]]), sides]
}

/** Both loops of this finger, written out; the margin's angle comes from the triangle's area and dot product alone. */
function handWritten(c: readonly Float64Array[], turns: Float64Array): Float64Array {
  const [mx, my, lx, ly, pipX, pipY, mpX, mpY, mbX, mbY, farX, farY, nearX, nearY, baseX, baseY] = c
  const [dipX, dipY, ddX, ddY, dtX, dtY, tfX, tfY, tnX, tnY, topX, topY, sides] = c.slice(16)
  const cosines = turns.map(Math.cos)
  const sines = turns.map(Math.sin)
  const out = new Float64Array(mx.length * turns.length)
  for (let i = 0; i < mx.length; i++) {
    const [gx, gy, hx, hy] = [pipX[i] - lx[i], pipY[i] - ly[i], topX[i] - lx[i], topY[i] - ly[i]]
    const [ax, ay] = [mbX[i] - mpX[i], mbY[i] - mpY[i]]
    const [ex, ey] = [dipX[i] - mpX[i], dipY[i] - mpY[i]]
    const a2 = ax * ax + ay * ay
    const b2 = (farX[i] - nearX[i]) ** 2 + (farY[i] - nearY[i]) ** 2
    const k2 = (dtX[i] - ddX[i]) ** 2 + (dtY[i] - ddY[i]) ** 2
    const l2 = (tfX[i] - tnX[i]) ** 2 + (tfY[i] - tnY[i]) ** 2
    // The DIP from the vector PIP to base pin.
    const fx = (ex * ax + ey * ay) / a2
    const fy = (ey * ax - ex * ay) / a2
    for (let k = 0; k < turns.length; k++) {
      const px = mx[i] + cosines[k] * gx - sines[k] * gy
      const py = my[i] + sines[k] * gx + cosines[k] * gy
      let ux = baseX[i] - px
      let uy = baseY[i] - py
      let q = ux * ux + uy * uy
      let t = q + a2 - b2
      const root = sides[0] * Math.sqrt(4 * a2 * q - t * t)
      const half = 0.5 / q
      const vx = (t * ux - root * uy) * half
      const vy = (t * uy + root * ux) * half
      ux = mx[i] + cosines[k] * hx - sines[k] * hy - px - vx * fx + vy * fy
      uy = my[i] + sines[k] * hx + cosines[k] * hy - py - vx * fy - vy * fx
      q = ux * ux + uy * uy
      t = q + k2 - l2
      out[i * turns.length + k] = Math.atan2(sides[1] * Math.sqrt(4 * k2 * q - t * t), t - 2 * k2)
    }
  }
  return out
}
