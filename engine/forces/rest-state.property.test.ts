import { describe, expect, it } from 'vitest'
import { derivativeOf, type PathNode } from '../motion/path.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, atMargin, coupleOn, framesOf, type Scene, scene } from '../sketches/force-scene.ts'
import { PIN_KINDS, randomForces, randomLoad, randomPart } from '../sketches/random-forces.ts'
import { seeded } from '../sketches/seeded.ts'
import { toggleOf } from '../sketches/toggle-of.ts'
import { amplitudeIn, prepare } from './balance.ts'
import { worstRest } from './rest-state.ts'
import { dragPort } from './return-reserve.ts'

interface Compared {
  readonly found: number
  /** Worst of all corners that have an equilibrium. */
  readonly worst: number
  readonly corners: number
  /** Corners without an equilibrium. */
  readonly missing: number
}

interface Asked {
  readonly node: PathNode
  readonly port: Float64Array
  readonly load: Float64Array
  readonly levers: Float64Array
  readonly towards: 1 | -1
}

/** The search against every one of the 2^n corners. */
function compare(here: Scene, { node, port, load, levers, towards }: Asked): Compared | undefined {
  const { opening } = framesOf(here, node)
  const prepared = prepare(opening, { port, load })
  if (!prepared) return undefined
  const found = worstRest({ prepared, levers, towards })!.amplitude
  const again = prepare(opening, { port, load })!
  let worst = -towards * Number.POSITIVE_INFINITY
  let missing = 0
  const corners = 2 ** levers.length
  for (let corner = 0; corner < corners; corner++) {
    const amplitude = amplitudeIn(again, (_, out) => {
      for (let joint = 0; joint < out.length; joint++) out[joint] = (corner >> joint) & 1 ? levers[joint] : -levers[joint]
    })
    if (amplitude === undefined) missing++
    else worst = towards * Math.max(towards * worst, towards * amplitude)
  }
  return { found, worst, corners, missing }
}

const difference = ({ found, worst }: Compared): number => Math.abs(found - worst) / Math.abs(worst)

describe('the worst state of rest', () => {
  it('is the worst of all corners, for random linkages of pins, loads and ports', () => {
    // SOURCE other-method: full enumeration of all 2^n sides of friction, up to seven joints
    let compared = 0
    for (const kind of PIN_KINDS) {
      for (let seed = 1; seed <= 8; seed++) {
        const { scene: here, node, load, dice } = randomForces(kind, seed)!
        const { mechanism, bench, drive } = here
        const levers = bench.leversOf('rest', 'most')
        const ports = [
          dragPort(framesOf(here, node).opening),
          derivativeOf(mechanism, node.posture, drive),
          coupleOn(mechanism, randomPart(mechanism.parts_count, dice), -1),
        ]
        for (const port of ports) {
          for (const towards of [1, -1] as const) {
            const both = compare(here, { node, port, load, levers, towards })
            // Where a corner has no equilibrium the amplitude has a pole, and nothing is the worst.
            if (!both || both.missing > 0) continue
            expect(difference(both)).toBeLessThan(1e-8)
            compared++
          }
        }
      }
    }
    // SOURCE property: at least 300 of the 336 questions have all their corners
    expect(compared).toBeGreaterThan(300)
  })

  /** Fingers and toggles about dead centre, on both sides of the jam and past it, each with springs alone and loaded. */
  function* nearJam(): Generator<{ readonly here: Scene; readonly asked: Omit<Asked, 'towards'> }> {
    for (let seed = 1; seed <= 12; seed++) {
      const dice = seeded(77 * seed)
      const bent = scene(finger({ friction: 0.1 }))
      const sizes = { first_mm: dice.between(15, 60), arm_mm: dice.between(8, 40), rocker_mm: dice.between(35, 80) }
      const one = { a: 1, b: 1, c: 1, g: 1 }
      const lean_mm = dice.between(-8, 8)
      const toggle = scene(toggleOf({ ...sizes, radii_mm: one, friction: 0.1, margin_rad: 25 * DEG, lean_mm, spring_Nmm: 0 }))
      for (const here of [bent, toggle]) {
        const near = here === bent ? atDrive(here, 75 * DEG).posture : here.drawn
        const spring = here === bent ? coupleOn(here.mechanism, 1, 1000) : coupleOn(here.mechanism, 3, -1000)
        for (const margin_deg of [dice.between(-5, 0), dice.between(0, 4), dice.between(2, 8), dice.between(5, 20)]) {
          const node = atMargin(here, margin_deg * DEG, near)
          const levers = Float64Array.from(here.mechanism.joints, () => dice.between(0.02, 0.25))
          for (const load of [spring, randomLoad(here, node, dice)]) {
            yield { here, asked: { node, load, levers, port: dragPort(framesOf(here, node).opening) } }
          }
        }
      }
    }
  }

  it('is found on both sides of the jam and past dead centre', () => {
    // SOURCE other-method: full enumeration of all 2^n sides of friction
    let whole = 0
    for (const { here, asked } of nearJam()) {
      for (const towards of [1, -1] as const) {
        const both = compare(here, { ...asked, towards })!
        if (both.missing > 0) continue
        expect(difference(both)).toBeLessThan(1e-6)
        whole++
      }
    }
    // SOURCE property: nearly all of the 384 questions have all their corners
    expect(whole).toBeGreaterThan(350)
  })

  it('never says that springs let go where some corner stays', () => {
    // SOURCE other-method: full enumeration; also where corners deep in the jam have no equilibrium, with strong friction
    for (const { here, asked } of nearJam()) {
      const strong = { ...asked, levers: asked.levers.map((lever) => 1.4 * lever) }
      const { found, worst } = compare(here, { ...strong, towards: -1 })!
      expect(found > 0).toBe(worst > 0)
    }
  })
})
