/**
 * Test support: the example finger by school geometry, apart from the engine: every pin by meeting circles, one after the other.
 *
 * mount at the origin; MCP turned by −mcp; PIP, then B of link 1, then the middle phalanx; DIP, then B of link 2, then the distal.
 */
type Pair = readonly [number, number]

const DEG = Math.PI / 180

export interface FingerByHand {
  readonly topA: Pair
  readonly topB: Pair
  readonly dip: Pair
  readonly pip: Pair
  readonly tip: Pair
  /** Turns of the middle and the distal phalanx, rad. */
  readonly middle: number
  readonly distal: number
}

const LENGTH1 = spanOf([6.47, 3.43], carried([44, 0], -4 * DEG, [4, -5.2]))
const DIP_DRAWN = carried([44, 0], -4 * DEG, [26, 0])
const LENGTH2 = spanOf([45.13, 4.33], carried(DIP_DRAWN, -8 * DEG, [-2.27, -5.41]))

/** @param mcp flexion, rad, short of dead centre; undefined where the links do not reach */
export function fingerByHand(mcp: number): FingerByHand | undefined {
  const origin = [0, 0] as const
  const pip = carried(origin, -mcp, [44, 0])
  const topA = carried(origin, -mcp, [45.13, 4.33])
  const baseB = meeting([6.47, 3.43], LENGTH1, pip, Math.hypot(4, 5.2))
  if (!baseB) return undefined
  const middle = bearing(pip, baseB) - Math.atan2(-5.2, 4)
  const dip = carried(pip, middle, [26, 0])
  const topB = meeting(topA, LENGTH2, dip, Math.hypot(2.27, 5.41))
  if (!topB) return undefined
  const distal = bearing(dip, topB) - Math.atan2(-5.41, -2.27)
  return { topA, topB, dip, pip, tip: carried(dip, distal, [22, 0]), middle, distal }
}

/** How much farther apart topA and dip stand than link 2 and its arm reach: zero at dead centre, mm. */
export function pastDeadCentre(mcp: number): number {
  const pip = carried([0, 0], -mcp, [44, 0])
  const baseB = meeting([6.47, 3.43], LENGTH1, pip, Math.hypot(4, 5.2))
  if (!baseB) throw new Error('link 1 does not reach')
  const middle = bearing(pip, baseB) - Math.atan2(-5.2, 4)
  return spanOf(carried([0, 0], -mcp, [45.13, 4.33]), carried(pip, middle, [26, 0])) - LENGTH2 - Math.hypot(2.27, 5.41)
}

/** By halving alone, to the last digit. @param value falling or rising through zero between the two */
export function halved(value: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high]
  const rising = value(b) > 0
  while (Math.abs(b - a) > 1e-14) {
    const middle = (a + b) / 2
    if (value(middle) > 0 === rising) b = middle
    else a = middle
    if (middle === a && middle === b) break
  }
  return (a + b) / 2
}

/** Meeting point of two circles to the right of the way from the first centre to the second. */
function meeting(p: Pair, r: number, q: Pair, s: number): Pair | undefined {
  const d = spanOf(p, q)
  const along = (d * d + r * r - s * s) / (2 * d)
  const across2 = r * r - along * along
  if (across2 < 0) return undefined
  const across = -Math.sqrt(across2)
  const [ux, uy] = [(q[0] - p[0]) / d, (q[1] - p[1]) / d]
  return [p[0] + along * ux - across * uy, p[1] + along * uy + across * ux]
}

function bearing(from: Pair, to: Pair): number {
  return Math.atan2(to[1] - from[1], to[0] - from[0])
}

function carried([x, y]: Pair, turn: number, [px, py]: Pair): Pair {
  return [x + Math.cos(turn) * px - Math.sin(turn) * py, y + Math.sin(turn) * px + Math.cos(turn) * py]
}

function spanOf(from: Pair, to: Pair): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1])
}
