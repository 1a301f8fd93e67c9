import { rootBetween } from '../../numbers/root.ts'
import { type HoldRoom, standAt } from './hold-room.ts'

/** Two turns of the lead, rad. */
export interface Stretch {
  readonly from: number
  readonly to: number
  /** To what either end of it is found. */
  readonly width: number
}

/** Turns of the lead within a stretch, rad, at which a pin turns round in a set that stands alone: its drag jumps there. */
export function turningPlaces(hold: HoldRoom, { from, to, width }: Stretch): readonly number[] {
  const turnsAt = (turn_rad: number): Float64Array => {
    standAt(hold, turn_rad)
    const { finger, motion } = hold.room
    const turnOf = (part: number): number => motion[part].turn[0]
    return Float64Array.from(finger.a, (a, joint) => (turnOf(finger.b[joint]) - turnOf(a)) / turnOf(finger.lead.part))
  }
  const [first, last] = [turnsAt(from), turnsAt(to)]
  return [...first.keys()].flatMap((joint) => {
    const bracket = { low: from, high: to, atLow: first[joint], atHigh: last[joint] }
    const place = rootBetween((turn_rad) => turnsAt(turn_rad)[joint], bracket, width)
    return place === undefined ? [] : [place]
  })
}
