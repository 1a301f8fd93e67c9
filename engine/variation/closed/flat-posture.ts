/**
 * Postures of flat fingers from the turns of the parts that are driven, dyad by dyad.
 *
 *              q               d = s − p, t = |d|² + |a|² − |b|², v = q − p:
 *         a ╱     ╲ b
 *        p ●─────────● s       v = (t d ± √(4 |a|² |d|² − t²) d⊥) / 2 |d|²        root and division do not wait for each other
 *
 * No part's turn is worked out. A part is known by the place where it hangs and by its arm from there: v for the first of a dyad, v − d for the
 * second. Whatever else stands on it lies at a fixed share of the arm, taken as a complex number (arm times share turns and stretches):
 *
 *     place = base + arm · share        share = (place − base) / (tip − base), in the part's own frame, once a set
 *
 * A set that cannot close, or stands too near to the dead centre of a dyad, has no number from there on.
 */
import type { Column, Pair } from './columns.ts'
import type { FlatRoom } from './flat-room.ts'
import type { FlatFinger, FlatLimb, FlatPlace } from './flat-tables.ts'

/** Least sine of the angle between the arms of a dyad at which its posture has all its digits. */
const sineLeast = 0.01

/** Works out what postures have in common, once the numbers of the sets are written: arms, their squares, and shares of them. */
export function takeArms(room: FlatRoom): void {
  const { finger, squares, ownArms } = room
  const { dyads, places } = finger
  for (const limb of finger.limbs) takeArm(room, limb)
  for (const place of places) if (place.part > 0) takeShare(room, place)
  for (const [index, { first, second }] of dyads.entries()) {
    squareOf(ownArms[first], squares[index].first)
    squareOf(ownArms[second], squares[index].second)
  }
}

/** The arm of a part in its own frame; that of the lead is the unit along x. */
function takeArm({ numbers, ownArms }: FlatRoom, { part, base, tip }: FlatLimb): void {
  const { x, y } = ownArms[part]
  if (tip === undefined) {
    x.fill(1)
    y.fill(0)
    return
  }
  const [baseX, baseY, tipX, tipY] = [numbers[base], numbers[base + 1], numbers[tip], numbers[tip + 1]]
  for (let set = 0; set < x.length; set++) {
    x[set] = tipX[set] - baseX[set]
    y[set] = tipY[set] - baseY[set]
  }
}

function takeShare({ finger, numbers, ownArms, shares }: FlatRoom, { part, at, is }: FlatPlace): void {
  const limb = finger.limbs.find((one) => one.part === part)
  if (!limb) return
  const { x, y } = shares[at]
  const { x: armX, y: armY } = ownArms[part]
  const [ownX, ownY, baseX, baseY] = [numbers[at], numbers[at + 1], numbers[limb.base], numbers[limb.base + 1]]
  // A vector is counted from nowhere.
  const fromBase = is === 'place' ? 1 : 0
  for (let set = 0; set < x.length; set++) {
    const overX = ownX[set] - fromBase * baseX[set]
    const overY = ownY[set] - fromBase * baseY[set]
    const inverse = 1 / (armX[set] * armX[set] + armY[set] * armY[set])
    x[set] = (overX * armX[set] + overY * armY[set]) * inverse
    y[set] = (overY * armX[set] - overX * armY[set]) * inverse
  }
}

function squareOf({ x, y }: Pair, out: Column): void {
  for (let set = 0; set < out.length; set++) out[set] = x[set] * x[set] + y[set] * y[set]
}

/** Turns the lead of every set to where `turn` says, counter-clockwise. */
export function turnLeads({ finger, turn, arms }: FlatRoom): void {
  const { x, y } = arms[finger.lead.part]
  for (let set = 0; set < turn.length; set++) {
    x[set] = Math.cos(turn[set])
    y[set] = Math.sin(turn[set])
  }
}

/** Turns the leads of all sets alike. */
export function turnLeadsAlike({ finger, turn, arms }: FlatRoom, turn_rad: number): void {
  turn.fill(turn_rad)
  arms[finger.lead.part].x.fill(Math.cos(turn_rad))
  arms[finger.lead.part].y.fill(Math.sin(turn_rad))
}

/** Places every part, once the leads are turned. */
export function placeFlat(room: FlatRoom): void {
  const { finger, bases } = room
  for (let index = 0; index < finger.dyads.length; index++) {
    const { first, second, beyondFirst, beyondSecond, pBeyond, sBeyond } = finger.dyads[index]
    // What hangs on the mount stands already.
    if (beyondFirst > 0) placeOf(room, { part: beyondFirst, at: pBeyond }, bases[first])
    if (beyondSecond > 0) placeOf(room, { part: beyondSecond, at: sBeyond }, bases[second])
    meet(room, index)
  }
}

/** A place on a part, in the mount frame. */
export function placeOf({ arms, bases, shares }: FlatRoom, { part, at }: Pick<FlatPlace, 'part' | 'at'>, out: Pair): void {
  const { x, y } = arms[part]
  const { x: baseX, y: baseY } = bases[part]
  const { x: shareX, y: shareY } = shares[at]
  const { x: outX, y: outY } = out
  for (let set = 0; set < outX.length; set++) {
    outX[set] = baseX[set] + x[set] * shareX[set] - y[set] * shareY[set]
    outY[set] = baseY[set] + y[set] * shareX[set] + x[set] * shareY[set]
  }
}

/** A vector that turns with a part, in the mount frame. */
export function turned({ arms, shares }: FlatRoom, { part, at }: Pick<FlatPlace, 'part' | 'at'>, out: Pair): void {
  const { x, y } = arms[part]
  const { x: shareX, y: shareY } = shares[at]
  const { x: outX, y: outY } = out
  for (let set = 0; set < outX.length; set++) {
    outX[set] = x[set] * shareX[set] - y[set] * shareY[set]
    outY[set] = y[set] * shareX[set] + x[set] * shareY[set]
  }
}

/** Puts pin q of a dyad, and with it the arms of its parts. */
function meet({ finger, bases, arms, squares, centres, sides }: FlatRoom, index: number): void {
  const { first, second, q } = finger.dyads[index]
  const { x: px, y: py } = bases[first]
  const { x: sx, y: sy } = bases[second]
  const { x: vx, y: vy } = arms[first]
  const { x: wx, y: wy } = arms[second]
  const { x: qx, y: qy } = centres[q]
  const { first: squareA, second: squareB } = squares[index]
  const side = sides[index]
  for (let set = 0; set < qx.length; set++) {
    const dx = sx[set] - px[set]
    const dy = sy[set] - py[set]
    const d2 = dx * dx + dy * dy
    const a2 = squareA[set]
    const t = d2 + a2 - squareB[set]
    const square = 4 * a2 * d2 - t * t
    // The square is (2 |a| |b| sin)², so that this asks for the sine as well as whether there is a root.
    const isClosed = square > sineLeast * sineLeast * 4 * a2 * squareB[set]
    const root = isClosed ? side * Math.sqrt(square) : Number.NaN
    const half = 0.5 / d2
    const x = (t * dx - root * dy) * half
    const y = (t * dy + root * dx) * half
    vx[set] = x
    vy[set] = y
    wx[set] = x - dx
    wy[set] = y - dy
    qx[set] = px[set] + x
    qy[set] = py[set] + y
  }
}

/** Angle between A-B and B-C of a toggle at the postures that stand in the room, rad, −π to π. */
export function bendFlat({ centres }: FlatRoom, [a, b, c]: FlatFinger['toggles'][number], out: Column): void {
  const { x: ax, y: ay } = centres[a]
  const { x: bx, y: by } = centres[b]
  const { x: cx, y: cy } = centres[c]
  for (let set = 0; set < out.length; set++) {
    const ux = bx[set] - ax[set]
    const uy = by[set] - ay[set]
    const wx = cx[set] - bx[set]
    const wy = cy[set] - by[set]
    out[set] = Math.atan2(ux * wy - uy * wx, ux * wx + uy * wy)
  }
}
