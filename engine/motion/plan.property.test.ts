import { describe, expect, it } from 'vitest'
import { KINDS, type Kind, randomMechanism } from '../sketches/random-mechanism.ts'
import { seeded } from '../sketches/seeded.ts'
import { assemble } from './assemble.ts'
import { driveCoordinate } from './condition.ts'
import { mechanismOf } from './mechanism.ts'
import { derivativeOf, makePathBench, tangentAt } from './path.ts'
import { placeParts } from './place-parts.ts'
import { makePlan } from './plan.ts'
import { planPosture } from './plan-posture.ts'
import { ratesOf } from './plan-rates.ts'
import { makePlanRoom } from './plan-room.ts'
import { sideOf } from './plan-side.ts'
import { makeBench, settle } from './settle.ts'

const SEEDS = Array.from({ length: 24 }, (_, seed) => seed + 1)

/** Kinds that are not placed part by part: Newton has to do the rest. */
const LEFTOVER: readonly Kind[] = ['Stephenson six-bar driven in its five-bar loop', 'scotch yoke']

function widest(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, value, index) => Math.max(most, Math.abs(value - b[index])), 0)
}

/** Newton's postures for a drive that leaves the drawn one by 0.25° a step, as far as it goes. */
function newtonSweep(kind: Kind, seed: number, way: 1 | -1) {
  const mechanism = mechanismOf(randomMechanism(kind, seed))
  const drawn = assemble(mechanism).posture!
  const bench = makeBench(mechanism)
  const start = driveCoordinate(mechanism, drawn).value(drawn)
  const postures = [drawn]
  for (let step = 1; step <= 240; step++) {
    const aim = start + (way * step * Math.PI) / 720
    const next = settle(bench, postures[postures.length - 1], driveCoordinate(mechanism, drawn, aim))
    if (!next || next.rounds > 5) break
    postures.push(next.posture)
  }
  return { mechanism, postures }
}

describe('the plan', () => {
  for (const kind of KINDS) {
    it(`places a random ${kind} where Newton does, over its travel`, () => {
      // SOURCE other-method (dense Newton on the closure equations, followed in steps of a quarter of a degree)
      let compared = 0
      for (const seed of SEEDS) {
        for (const way of [1, -1] as const) {
          const { mechanism, postures } = newtonSweep(kind, seed, way)
          const plan = makePlan(mechanism)
          const room = makePlanRoom(plan)
          for (const posture of postures.filter((_, index) => index % 12 === 0)) {
            const near = posture.map((value, index) => value + (index > 2 ? 1e-4 * Math.sin(index * seed) : 0))
            const placed = near.slice()
            placeParts(room, placed, posture[3 * plan.lead!.part + 2])
            if (room.conditioning < 0.05) continue
            const found = plan.leftover.length > 0 ? planPosture(plan, near, -posture[3 * plan.lead!.part + 2]) : placed
            expect(found).toBeInstanceOf(Float64Array)
            expect(widest(found as Float64Array, posture)).toBeLessThan(1e-9)
            compared++
          }
        }
      }
      // SOURCE property: at the least ten postures of each of the 24 mechanisms were compared
      expect(compared).toBeGreaterThan(240)
    })

    it(`${LEFTOVER.includes(kind) ? 'leaves parts over of' : 'places every part of'} a ${kind}`, () => {
      const plan = makePlan(mechanismOf(randomMechanism(kind, 1)))
      expect(plan.lead).toBeDefined()
      expect(plan.leftover.length > 0).toBe(LEFTOVER.includes(kind))
    })
  }

  it('gives the rates that the closure equations give', () => {
    // SOURCE other-method (null vector of the closure derivative)
    for (const kind of KINDS.filter((name) => !LEFTOVER.includes(name))) {
      for (const seed of SEEDS) {
        const mechanism = mechanismOf(randomMechanism(kind, seed))
        const plan = makePlan(mechanism)
        const posture = assemble(mechanism).posture!
        const room = makePlanRoom(plan)
        const lead = 3 * plan.lead!.part + 2
        placeParts(room, posture, posture[lead])
        if (room.conditioning < 0.05) continue
        const rates = new Float64Array(posture.length)
        ratesOf(room, posture, rates)
        const along = derivativeOf(mechanism, posture, driveCoordinate(mechanism, posture)).map((value) => -value)
        const tangent = tangentAt(makePathBench(mechanism), posture, along)!
        const scaled = rates.slice(3).map((rate, column) => (column % 3 === 2 ? rate * mechanism.scale_mm : rate))
        const size = Math.sqrt(scaled.reduce((sum, rate) => sum + rate * rate, 0))
        expect(
          widest(
            scaled.map((rate) => rate / size),
            tangent,
          ),
        ).toBeLessThan(1e-10)
      }
    }
  })

  it('keeps the sides of the near posture, however far the drive is moved, from 10,000 starts', () => {
    const dice = seeded(9)
    const kinds = ['four-bar', 'Watt six-bar', 'slotted lever', 'slider-crank', 'two four-bars in series'] as const
    let closed = 0
    let changed = 0
    for (let which = 0; which < 100; which++) {
      const mechanism = mechanismOf(randomMechanism(kinds[which % kinds.length], 1 + which))
      const plan = makePlan(mechanism)
      const posture = assemble(mechanism).posture!
      for (let trial = 0; trial < 100; trial++) {
        const start = planPosture(plan, posture, dice.between(-3, 3))
        if (!(start instanceof Float64Array)) continue
        const found = planPosture(plan, start, dice.between(-3, 3))
        if (!(found instanceof Float64Array)) continue
        closed++
        // SOURCE property: a signed sine keeps its sign, whatever its size
        if (plan.steps.some((step) => sideOf(step, start) * sideOf(step, found) < 0)) changed++
      }
    }
    expect(changed).toBe(0)
    expect(closed).toBeGreaterThan(2000)
  })
})
