/**
 * The motion of flat fingers, dyad by dyad: that of the lead's unit turn. With points of their own in place of the pins' centres it is the
 * motion of a finger whose pins stand there (flat-rest.ts).
 *
 *     a ω₁⊥ − b ω₂⊥ = − e        e: velocity that p and s part with, a = q − p, b = q − s
 *     ω₁ = − e·b / (a × b)       ω₂ = − e·a / (a × b)
 *
 * The dyad nearest to its dead centre moves without end there while the lead stands; so all is multiplied by its a × b, which then is the
 * lead's turn.
 */
import type { Column, Pair, PartMotion } from './columns.ts'
import type { FlatRoom } from './flat-room.ts'

/** Moves every part. @param points of each joint, mm */
export function moveFlat(room: FlatRoom, points: readonly Pair[]): void {
  const { finger, motion } = room
  const { part, joint } = finger.lead
  const { turn, x, y } = motion[part]
  const { x: atX, y: atY } = points[joint]
  for (let set = 0; set < turn.length; set++) {
    turn[set] = 1
    x[set] = atY[set]
    y[set] = -atX[set]
  }
  for (let index = 0; index < finger.dyads.length; index++) moveDyad(room, points, index)
}

function moveDyad(room: FlatRoom, points: readonly Pair[], index: number): void {
  const { motion, finger, nearest, across } = room
  const { first, second, beyondFirst, beyondSecond, p, q, s } = finger.dyads[index]
  const isNearest = index === nearest
  const { x: xs, y: ys } = points[p]
  const { x: xq, y: yq } = points[q]
  const { x: xt, y: yt } = points[s]
  const { turn: iTurn, x: iX, y: iY } = motion[beyondFirst]
  const { turn: jTurn, x: jX, y: jY } = motion[beyondSecond]
  const { turn: turnA, x: xA, y: yA } = motion[first]
  const { turn: turnB, x: xB, y: yB } = motion[second]
  for (let set = 0; set < xs.length; set++) {
    const px = xs[set]
    const py = ys[set]
    const sx = xt[set]
    const sy = yt[set]
    const ax = xq[set] - px
    const ay = yq[set] - py
    const bx = xq[set] - sx
    const by = yq[set] - sy
    const i = iTurn[set]
    const j = jTurn[set]
    const ex = iX[set] - i * py - jX[set] + j * sy
    const ey = iY[set] + i * px - jY[set] - j * sx
    const cross = ax * by - ay * bx
    const slow = isNearest ? cross : 1
    const share = isNearest ? -1 : -1 / cross
    const a = share * (ex * bx + ey * by)
    const b = share * (ex * ax + ey * ay)
    turnA[set] = a
    xA[set] = slow * iX[set] + (a - slow * i) * py
    yA[set] = slow * iY[set] - (a - slow * i) * px
    turnB[set] = b
    xB[set] = slow * jX[set] + (b - slow * j) * sy
    yB[set] = slow * jY[set] - (b - slow * j) * sx
    if (isNearest) across[set] = cross
  }
  if (isNearest) slowDown(room)
}

/** Multiplies the motion of all that is placed before the nearest dyad by its a × b. */
function slowDown({ finger, motion, nearest, across }: FlatRoom): void {
  scale(motion[finger.lead.part], across)
  for (let index = 0; index < nearest; index++) {
    scale(motion[finger.dyads[index].first], across)
    scale(motion[finger.dyads[index].second], across)
  }
}

function scale({ turn, x, y }: PartMotion, share: Column): void {
  for (let set = 0; set < share.length; set++) {
    turn[set] *= share[set]
    x[set] *= share[set]
    y[set] *= share[set]
  }
}
