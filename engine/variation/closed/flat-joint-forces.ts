/**
 * Joint forces of flat fingers at points of their own, dyad by dyad from the outermost, without a matrix.
 *
 * Of the dyad nearest to its dead centre the force along its first arm is left open, f, and found where the lead is in balance:
 *
 *     F = − M a⊥ / |a|² + f a        M: moment about p of what the first part carries
 *
 * so that nothing is divided by what goes to zero in a jam. Of the others, F = − (M₂ a + M₁ b) / (a × b).
 */
import type { Pair, PartForce } from './columns.ts'
import type { FlatRoom } from './flat-room.ts'
import type { FlatDyad, FlatFinger } from './flat-tables.ts'
import type { RestRoom } from './rest-room.ts'

/** Moment about the lead's pin of a force of one arm's length below which the lead does not tell it. */
const openLeast_mm2 = 1e-6

/** What parts carry in one way, and the joint forces that follow. */
interface Carrying {
  readonly carried: readonly PartForce[]
  readonly forces: readonly Pair[]
}

/**
 * Takes the fingers apart at the points, and takes over the directions of their forces. How far these change stands in `change` afterwards; no
 * number where the forces are not found.
 */
export function turnDirections({ finger, nearest }: FlatRoom, rest: RestRoom): void {
  const whole: Carrying = rest
  const open: Carrying = { carried: rest.opened, forces: rest.open }
  takeUp(rest)
  for (let index = finger.dyads.length - 1; index >= 0; index--) {
    const dyad = finger.dyads[index]
    if (index === nearest) {
      turnFirst(rest, dyad)
      passOn(rest, dyad, whole)
      pullFirst(rest, dyad)
      passOn(rest, dyad, open)
      continue
    }
    turnBoth(rest, dyad, whole)
    passOn(rest, dyad, whole)
    // The open force comes up with the nearest dyad; those outside it carry nothing of it.
    if (index > nearest) continue
    turnBoth(rest, dyad, open)
    passOn(rest, dyad, open)
  }
  leadForces(finger, rest)
  takeDirections(rest)
}

/** Every part carries the load, and the port as often as the amplitude says; nothing of the open force. */
function takeUp({ load, port, carried, opened, amplitude }: RestRoom): void {
  for (let part = 1; part < load.length; part++) {
    const { x: loadX, y: loadY, moment: loadMoment } = load[part]
    const { x: portX, y: portY, moment: portMoment } = port[part]
    const { x, y, moment } = carried[part]
    const { x: openX, y: openY, moment: openMoment } = opened[part]
    for (let set = 0; set < amplitude.length; set++) {
      x[set] = loadX[set] + amplitude[set] * portX[set]
      y[set] = loadY[set] + amplitude[set] * portY[set]
      moment[set] = loadMoment[set] + amplitude[set] * portMoment[set]
      openX[set] = 0
      openY[set] = 0
      openMoment[set] = 0
    }
  }
}

/** The force at q on the first part of the nearest dyad that keeps it from turning about p, across its arm. */
function turnFirst({ carried, points, atQ }: RestRoom, { first, p, q }: FlatDyad): void {
  const { x, y, moment } = carried[first]
  const { x: xs, y: ys } = points[p]
  const { x: xq, y: yq } = points[q]
  const { x: outX, y: outY } = atQ
  for (let set = 0; set < moment.length; set++) {
    const px = xs[set]
    const py = ys[set]
    const ax = xq[set] - px
    const ay = yq[set] - py
    const share = (moment[set] - px * y[set] + py * x[set]) / (ax * ax + ay * ay)
    outX[set] = share * ay
    outY[set] = -share * ax
  }
}

/** The force that is left open: along the first arm, as long as it. */
function pullFirst({ points, atQ }: RestRoom, { p, q }: FlatDyad): void {
  const { x: xs, y: ys } = points[p]
  const { x: xq, y: yq } = points[q]
  const { x: outX, y: outY } = atQ
  for (let set = 0; set < outX.length; set++) {
    outX[set] = xq[set] - xs[set]
    outY[set] = yq[set] - ys[set]
  }
}

/** The force at q on the first part that keeps both parts of a dyad from turning. */
function turnBoth({ points, atQ }: RestRoom, { first, second, p, q, s }: FlatDyad, { carried }: Carrying): void {
  const { x: x1, y: y1, moment: m1 } = carried[first]
  const { x: x2, y: y2, moment: m2 } = carried[second]
  const { x: xs, y: ys } = points[p]
  const { x: xq, y: yq } = points[q]
  const { x: xt, y: yt } = points[s]
  const { x: outX, y: outY } = atQ
  for (let set = 0; set < m1.length; set++) {
    const px = xs[set]
    const py = ys[set]
    const sx = xt[set]
    const sy = yt[set]
    const ax = xq[set] - px
    const ay = yq[set] - py
    const bx = xq[set] - sx
    const by = yq[set] - sy
    const inverse = -1 / (ax * by - ay * bx)
    const aboutP = inverse * (m1[set] - px * y1[set] + py * x1[set])
    const aboutS = inverse * (m2[set] - sx * y2[set] + sy * x2[set])
    outX[set] = aboutS * ax + aboutP * bx
    outY[set] = aboutS * ay + aboutP * by
  }
}

/** Keeps the forces of a dyad as those of its joints, with the one at q, and puts the reactions on the parts that stay. */
function passOn(rest: RestRoom, { p, q, s, pSide, qSide, sSide, ...parts }: FlatDyad, carrying: Carrying): void {
  const { x, y } = rest.atQ
  const { x: qx, y: qy } = carrying.forces[q]
  for (let set = 0; set < x.length; set++) {
    qx[set] = qSide * x[set]
    qy[set] = qSide * y[set]
  }
  passOver(rest, carrying, { part: parts.first, beyond: parts.beyondFirst, joint: p, side: -pSide, sense: 1 })
  passOver(rest, carrying, { part: parts.second, beyond: parts.beyondSecond, joint: s, side: -sSide, sense: -1 })
}

interface Passing {
  readonly part: number
  readonly beyond: number
  readonly joint: number
  /** Of the part at the joint. */
  readonly side: number
  /** Of the force at q on the part. */
  readonly sense: number
}

/** What a part carries, with the force at q, goes over its joint to the part beyond it. */
function passOver({ points, atQ }: RestRoom, { carried, forces }: Carrying, passing: Passing): void {
  const { part, beyond, joint, side, sense } = passing
  const { x: partX, y: partY } = carried[part]
  const { x: beyondX, y: beyondY, moment } = carried[beyond]
  const { x: outX, y: outY } = forces[joint]
  const { x: atX, y: atY } = points[joint]
  const { x: qx, y: qy } = atQ
  for (let set = 0; set < qx.length; set++) {
    const x = partX[set] + sense * qx[set]
    const y = partY[set] + sense * qy[set]
    outX[set] = side * x
    outY[set] = side * y
    beyondX[set] += x
    beyondY[set] += y
    moment[set] += atX[set] * y - atY[set] * x
  }
}

/** The force at the lead's pin, and how many of the open force there are: the lead is in balance. */
function leadForces({ lead, b }: FlatFinger, { carried, opened, points, forces, open, openCount }: RestRoom): void {
  const { part, joint } = lead
  const side = b[joint] === part ? -1 : 1
  const { x, y, moment } = carried[part]
  const { x: openX, y: openY, moment: openMoment } = opened[part]
  const { x: atX, y: atY } = points[joint]
  const { x: outX, y: outY } = forces[joint]
  const { x: outOpenX, y: outOpenY } = open[joint]
  for (let set = 0; set < openCount.length; set++) {
    outX[set] = side * x[set]
    outY[set] = side * y[set]
    outOpenX[set] = side * openX[set]
    outOpenY[set] = side * openY[set]
    const perOpen = openMoment[set] - atX[set] * openY[set] + atY[set] * openX[set]
    const about = moment[set] - atX[set] * y[set] + atY[set] * x[set]
    openCount[set] = Math.abs(perOpen) > openLeast_mm2 ? -about / perOpen : Number.NaN
  }
}

function takeDirections({ forces, open, openCount, directions, change, largest }: RestRoom): void {
  change.fill(0)
  largest.fill(0)
  for (let joint = 0; joint < forces.length; joint++) {
    const { x: forceX, y: forceY } = forces[joint]
    const { x: openX, y: openY } = open[joint]
    const { x: directionX, y: directionY } = directions[joint]
    for (let set = 0; set < change.length; set++) {
      const x = forceX[set] + openCount[set] * openX[set]
      const y = forceY[set] + openCount[set] * openY[set]
      const size = Math.sqrt(x * x + y * y)
      // A force of nothing keeps its direction.
      const inverse = 1 / size
      const nx = size > 0 ? x * inverse : directionX[set]
      const ny = size > 0 ? y * inverse : directionY[set]
      const dx = nx - directionX[set]
      const dy = ny - directionY[set]
      const turned = size * (dx * dx + dy * dy)
      if (size > largest[set]) largest[set] = size
      if (turned > change[set]) change[set] = turned
      directionX[set] = nx
      directionY[set] = ny
    }
  }
  for (let set = 0; set < change.length; set++) change[set] /= largest[set]
}
