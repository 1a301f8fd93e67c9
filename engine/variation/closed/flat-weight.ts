/** The weight of flat fingers in its worst attitude. */
import { worstAttitude } from '../../forces/worst-attitude.ts'
import { ofWeight } from './flat-numbers.ts'
import type { FlatRoom } from './flat-room.ts'
import type { RestRoom } from './rest-room.ts'

/** Adds weights to the load. @param helps 1 in the attitude that opens most, −1 in the one that closes most, within the range */
export function addWeight(room: FlatRoom, rest: RestRoom, helps: 1 | -1): void {
  const { finger, acting } = room
  if (!finger.weight || finger.weights.length === 0) return
  const { x, y } = acting.vector
  for (let set = 0; set < x.length; set++) {
    x[set] = 0
    y[set] = 0
  }
  for (let index = 0; index < finger.weights.length; index++) addPower(room, index)
  pointPull(room, helps)
  for (let index = 0; index < finger.weights.length; index++) addPull(room, rest, index)
}

/** Places a weight, and adds its power when it pulls along x, and along y. */
function addPower({ finger, numbers, motion, bases, arms, shares, acting }: FlatRoom, index: number): void {
  const { part, at } = finger.weights[index]
  const weight = numbers[at]
  const { x: shareX, y: shareY } = shares[at + ofWeight.place]
  const { x: baseX, y: baseY } = bases[part]
  const { x: armX, y: armY } = arms[part]
  const { x: placeX, y: placeY } = acting.places[index]
  const { turn, x, y } = motion[part]
  const { x: forward, y: upward } = acting.vector
  for (let set = 0; set < forward.length; set++) {
    const atX = baseX[set] + armX[set] * shareX[set] - armY[set] * shareY[set]
    const atY = baseY[set] + armY[set] * shareX[set] + armX[set] * shareY[set]
    placeX[set] = atX
    placeY[set] = atY
    forward[set] += weight[set] * (x[set] - turn[set] * atY)
    upward[set] += weight[set] * (y[set] + turn[set] * atX)
  }
}

/** From the power of the pull along x and along y to the direction in which it is worst. */
function pointPull({ finger, motion, acting }: FlatRoom, helps: 1 | -1): void {
  const { weight } = finger
  if (!weight) return
  const { part, opens } = finger.lead
  const { turn: lead } = motion[part]
  const { x, y } = acting.vector
  const isAllRound = weight.to_rad - weight.from_rad >= 2 * Math.PI
  for (let set = 0; set < x.length; set++) {
    const sign = opens * lead[set] < 0 ? -helps : helps
    const along = sign * x[set]
    const across = sign * y[set]
    // All the way round the worst pull is along the power itself, and needs no angle.
    const power = Math.sqrt(along * along + across * across)
    const towards_rad = isAllRound ? 0 : worstAttitude(weight, { along, across })
    x[set] = isAllRound ? along / power : Math.cos(towards_rad)
    y[set] = isAllRound ? across / power : Math.sin(towards_rad)
  }
}

function addPull({ finger, numbers, acting }: FlatRoom, { load }: RestRoom, index: number): void {
  const { part, at } = finger.weights[index]
  const weight = numbers[at]
  const { x: placeX, y: placeY } = acting.places[index]
  const { x: pullX, y: pullY } = acting.vector
  const { x, y, moment } = load[part]
  for (let set = 0; set < x.length; set++) {
    const forceX = weight[set] * pullX[set]
    const forceY = weight[set] * pullY[set]
    x[set] += forceX
    y[set] += forceY
    moment[set] += placeX[set] * forceY - placeY[set] * forceX
  }
}
