/** Test support: questions for the forces put at random, and how far two answers to one are apart. */
import { againstMotion, type Balance, type FillLevers, type PortAndLoad } from '../forces/balance.ts'
import type { ForceFrame } from '../forces/force-frame.ts'
import { coupleOn, forceOn, framesOf } from './force-scene.ts'
import { type ForceKind, randomForces, randomPart } from './random-forces.ts'

export interface Asked extends PortAndLoad {
  readonly frame: ForceFrame
  readonly fill: FillLevers
}

/** A question whose port is a couple or a force, moving or at rest, with forces on two parts. */
export function randomQuestion(kind: ForceKind, seed: number): Asked | undefined {
  const made = randomForces(kind, seed)
  if (!made) return undefined
  const { scene: here, node, dice } = made
  const { mechanism, bench } = here
  const force = (size_N: number) => {
    const part = randomPart(mechanism.parts_count, dice)
    const at = [dice.between(-20, 20), dice.between(-20, 20)] as const
    return forceOn(mechanism, node.posture, {
      part,
      at,
      force: [dice.between(-size_N, size_N), dice.between(-size_N, size_N)],
    })
  }
  const frames = framesOf(here, node)
  const frame = dice.between(0, 1) < 0.5 ? frames.opening : frames.closing
  const other = force(100)
  const load = force(100).map((value, column) => value + other[column])
  const port = dice.between(0, 1) < 0.5 ? coupleOn(mechanism, randomPart(mechanism.parts_count, dice), 1) : force(1)
  const most = bench.leversOf('moving', 'likely')
  const shares = mechanism.joints.map(() => dice.between(-1, 1))
  const resting: FillLevers = (_, out) => {
    for (let joint = 0; joint < out.length; joint++) out[joint] = shares[joint] * most[joint]
  }
  return { frame, port, load, fill: dice.between(0, 1) < 0.5 ? againstMotion(most) : resting }
}

/** Largest difference of any force, as a share of the largest, or of the amplitudes as a share of theirs. */
export function difference(one: Balance, other: Balance): number {
  const largest = Math.max(...other.magnitudes)
  const apart = (first: Float64Array, second: Float64Array) => Math.max(...first.map((value, i) => Math.abs(value - second[i])))
  return Math.max(
    apart(one.forces, other.forces) / largest,
    apart(one.magnitudes, other.magnitudes) / largest,
    apart(one.levers, other.levers),
    apart(one.rates, other.rates),
    Math.abs(one.amplitude - other.amplitude) / Math.max(Math.abs(other.amplitude), Number.MIN_VALUE),
  )
}
