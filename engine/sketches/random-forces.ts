/** Test support: random fingers, toggles and linkages with friction of their own at every pin, loaded at random. */
import type { Design } from '../design/design.ts'
import type { PathNode } from '../motion/path.ts'
import { DEG, finger } from './finger.ts'
import { coupleOn, forceOn, type Scene, scene, stepsOn } from './force-scene.ts'
import { type LaidOut, laidOut } from './laid-out.ts'
import { KINDS, randomLayout } from './random-mechanism.ts'
import { type Seeded, seeded } from './seeded.ts'
import { toggleOf } from './toggle-of.ts'

/** Every kind of linkage, the example finger and the plain toggle. */
export const FORCE_KINDS = [...KINDS, 'finger', 'toggle'] as const
export type ForceKind = (typeof FORCE_KINDS)[number]

/** Kinds without a slot. */
export const PIN_KINDS: readonly ForceKind[] = [
  'four-bar',
  'two four-bars in series',
  'Watt six-bar',
  'Stephenson six-bar',
  'three parts on one pin',
  'finger',
  'toggle',
]

export interface RandomForces {
  readonly scene: Scene
  readonly node: PathNode
  /** Forces and a couple on two moving parts. */
  readonly load: Float64Array
  readonly dice: Seeded
}

/** The same kind and seed give the same finger, posture and load; undefined where the drawn posture has no way on. */
export function randomForces(kind: ForceKind, seed: number, friction_most = 0.25): RandomForces | undefined {
  const dice = seeded(1000 * seed + 17)
  const here = scene(randomDesign(kind, seed, dice, friction_most))
  const node = stepsOn(here, dice.between(-5, 5))
  return node && { scene: here, node, load: randomLoad(here, node, dice), dice }
}

function randomDesign(kind: ForceKind, seed: number, dice: Seeded, friction_most: number): Design {
  const radius = (): number => dice.between(0.8, 3)
  if (kind === 'finger') {
    const radius_mm = radius()
    const design = finger({ friction: dice.between(0.02, friction_most), radius_mm })
    return { ...design, pins: design.pins.map((pin) => ({ ...pin, diameter_mm: 2 * radius_mm * dice.between(0.7, 1.2) })) }
  }
  if (kind === 'toggle') {
    return toggleOf({
      first_mm: dice.between(15, 60),
      arm_mm: dice.between(8, 40),
      radii_mm: { a: radius(), b: radius(), c: radius(), g: radius() },
      friction: dice.between(0.02, friction_most),
      margin_rad: dice.between(5, 60) * DEG,
      rocker_mm: dice.between(35, 80),
      lean_mm: dice.between(-8, 8),
      spring_Nmm: 0,
    })
  }
  return laidOut(rubbing(randomLayout(kind, seed), dice, friction_most))
}

/** The same layout with a radius and a friction of its own at every pin. */
export function rubbing(layout: LaidOut, dice: Seeded, friction_most: number): LaidOut {
  const pins = layout.pins.map((pin) => ({
    ...pin,
    radius_mm: dice.between(0.8, 3),
    friction: dice.between(0.02, friction_most),
  }))
  return { ...layout, pins }
}

/** A force and a couple each on two parts taken at random. */
export function randomLoad({ mechanism }: Scene, { posture }: Pick<PathNode, 'posture'>, dice: Seeded): Float64Array {
  const total = new Float64Array(mechanism.columns_count)
  for (let count = 0; count < 2; count++) {
    const part = randomPart(mechanism.parts_count, dice)
    const at = [dice.between(-20, 20), dice.between(-20, 20)] as const
    const force = [dice.between(-100, 100), dice.between(-100, 100)] as const
    const pushed = forceOn(mechanism, posture, { part, at, force })
    const turned = coupleOn(mechanism, randomPart(mechanism.parts_count, dice), dice.between(-500, 500))
    for (let column = 0; column < total.length; column++) total[column] += pushed[column] + turned[column]
  }
  return total
}

/** A moving part taken at random. */
export function randomPart(parts_count: number, dice: Seeded): number {
  return Math.min(parts_count - 1, 1 + Math.floor(dice.between(0, parts_count - 1)))
}
