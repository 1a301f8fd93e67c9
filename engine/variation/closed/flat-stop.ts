/** Gaps of the stops of flat fingers, and how fast they open. */

import { ofStop } from './flat-numbers.ts'
import { placeOf } from './flat-posture.ts'
import type { FlatRoom } from './flat-room.ts'
import type { FlatFinger } from './flat-tables.ts'

type FlatStop = FlatFinger['stops'][number]

/** Gap of a stop at the postures that stand in the room, mm; stands in `contact` with the contact itself afterwards. */
export function gapFlat(room: FlatRoom, { round, against, at }: FlatStop): void {
  const { numbers, contact, ends } = room
  placeOf(room, { part: round, at }, contact.at)
  placeOf(room, { part: against, at: at + ofStop.from }, ends.from)
  placeOf(room, { part: against, at: at + ofStop.to }, ends.to)
  const [radius, apart] = [numbers[at + ofStop.radius], numbers[at + ofStop.gap]]
  const { x: fromX, y: fromY } = ends.from
  const { x: toX, y: toY } = ends.to
  const { x: atX, y: atY } = contact.at
  const { x: normalX, y: normalY } = contact.normal
  const { gap } = contact
  for (let set = 0; set < gap.length; set++) {
    const px = atX[set] - fromX[set]
    const py = atY[set] - fromY[set]
    const dx = toX[set] - fromX[set]
    const dy = toY[set] - fromY[set]
    const length = Math.sqrt(dx * dx + dy * dy)
    const along = (px * dx + py * dy) / length
    // Beyond its ends an edge goes on as a corner.
    const isBeside = along <= 0 || along >= length
    const pastX = along <= 0 ? px : px - dx
    const pastY = along <= 0 ? py : py - dy
    const distance = isBeside ? Math.sqrt(pastX * pastX + pastY * pastY) : (py * dx - px * dy) / length
    normalX[set] = isBeside ? pastX / distance : -dy / length
    normalY[set] = isBeside ? pastY / distance : dx / length
    gap[set] = distance - radius[set] + apart[set]
  }
}

/** How fast the gap that was looked at last opens with the lead's turn, mm a rad. */
export function gapRateFlat({ motion, contact, finger }: FlatRoom, { round, against }: FlatStop, out: Float64Array): void {
  const lead = motion[finger.lead.part].turn
  const i = motion[round]
  const j = motion[against]
  for (let set = 0; set < out.length; set++) {
    const turn = i.turn[set] - j.turn[set]
    const alongX = i.x[set] - j.x[set] - turn * contact.at.y[set]
    const alongY = i.y[set] - j.y[set] + turn * contact.at.x[set]
    out[set] = (contact.normal.x[set] * alongX + contact.normal.y[set] * alongY) / lead[set]
  }
}
