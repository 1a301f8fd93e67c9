import { describe, expect, it } from 'vitest'
import { derivativeOf } from '../motion/path.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, atMargin, coupleOn, framesOf, scene, stepsOn } from '../sketches/force-scene.ts'
import { laidOut } from '../sketches/laid-out.ts'
import { mirrored, rotated } from '../sketches/moved-layout.ts'
import { FORCE_KINDS, randomForces, randomLoad, randomPart, rubbing } from '../sketches/random-forces.ts'
import { KINDS, randomLayout } from '../sketches/random-mechanism.ts'
import { seeded } from '../sketches/seeded.ts'
import { againstMotion, balanceIn, prepare } from './balance.ts'
import { effortToClose, effortToHold } from './effort.ts'
import { returnReserve } from './return-reserve.ts'

describe('hold and close', () => {
  it('lie on the two sides of the frictionless effort, for every kind of linkage, posture, load and port', () => {
    // SOURCE property: hold ≤ frictionless ≤ close, in the sense in which the port resists opening
    let looked = 0
    for (const kind of FORCE_KINDS) {
      for (let seed = 1; seed <= 20; seed++) {
        const made = randomForces(kind, seed)
        if (!made) continue
        const { scene: here, node, load, dice } = made
        const { mechanism, bench, drive } = here
        const levers = againstMotion(bench.leversOf('moving', 'likely'))
        for (const port of [
          derivativeOf(mechanism, node.posture, drive),
          coupleOn(mechanism, randomPart(mechanism.parts_count, dice), -1),
        ]) {
          const { opening, closing } = framesOf(here, node)
          const asked = prepare(opening, { port, load })
          // A couple does no work on a part that only slides.
          if (!asked) continue
          const resists = asked.portPower < 0 ? 1 : -1
          const free = asked.freeAmplitude
          const hold = balanceIn(asked, levers)?.amplitude
          const close = balanceIn(prepare(closing, { port, load })!, levers)?.amplitude
          const rounding = 1e-9 * Math.abs(free)
          if (hold !== undefined) expect(resists * (free - hold)).toBeGreaterThanOrEqual(-rounding)
          if (close !== undefined) expect(resists * (close - free)).toBeGreaterThanOrEqual(-rounding)
          looked++
        }
      }
    }
    // SOURCE property: nearly all of the 600 questions were asked
    expect(looked).toBeGreaterThan(500)
  })

  it('are the same for the linkage in a mirror and turned in its place', () => {
    // SOURCE property: the laws do not know left from right, nor up from down
    for (const kind of KINDS) {
      for (let seed = 1; seed <= 3; seed++) {
        const layout = rubbing(randomLayout(kind, seed), seeded(seed), 0.25)
        const efforts = [layout, mirrored(layout), rotated(layout, 0.9)].map((one, which) => {
          const here = scene(laidOut(one))
          // The drive's own sense turns round in the mirror, and with it the sense of closing.
          const node = stepsOn(here, which === 1 ? -2 : 2)
          if (!node) return undefined
          const { opening, closing } = framesOf(here, node)
          const port = derivativeOf(here.mechanism, node.posture, here.drive)
          const last = here.mechanism.parts_count - 1
          const load = coupleOn(here.mechanism, last, which === 1 ? -300 : 300)
          const moving = againstMotion(here.bench.leversOf('moving', 'likely'))
          const [one_way, other_way] = which === 1 ? [closing, opening] : [opening, closing]
          const sign = which === 1 ? -1 : 1
          return [one_way, other_way].map((frame) => {
            const amplitude = balanceIn(prepare(frame, { port, load })!, moving)?.amplitude
            return amplitude === undefined ? undefined : sign * amplitude
          })
        })
        const [plain, mirror, turned] = efforts
        for (const other of [mirror, turned]) {
          plain?.forEach((effort, index) => {
            if (effort === undefined) expect(other?.[index]).toBeUndefined()
            else expect(Math.abs(other![index]! / effort - 1)).toBeLessThan(1e-7)
          })
        }
      }
    }
  })

  it('of a path followed the other way are those of the path itself', () => {
    // SOURCE property: a posture has its forces whichever way it was reached
    for (const kind of ['four-bar', 'Watt six-bar', 'slider-crank'] as const) {
      const { scene: here } = randomForces(kind, 2)!
      const node = stepsOn(here, 3)!
      const back = { ...node, tangent: node.tangent.map((value) => -value) }
      const asked = { port: derivativeOf(here.mechanism, node.posture, here.drive), addLoads: () => {} }
      const load = (row: { out: Float64Array }) => {
        row.out[2] += 5
      }
      const there = effortToHold(here.bench, framesOf(here, node).opening, { ...asked, addLoads: load })!
      const again = effortToHold(here.bench, framesOf(here, back).closing, { ...asked, addLoads: load })!
      expect(again.balance!.amplitude).toBeCloseTo(there.balance!.amplitude, 9)
    }
  })
})

describe('effortToHold and effortToClose', () => {
  it('take a joint that hardly turns on its worse side', () => {
    // SOURCE other-method: both sides of every slow joint tried
    // The first pin of the finger's toggle turns back at a margin of about 2.5°, so it is slow there.
    const here = scene(finger({ friction: 0.03 }))
    const { bench, mechanism, drive } = here
    const near = atDrive(here, 75 * DEG).posture
    const dice = seeded(5)
    for (const margin_deg of [1.9, 2.2, 2.5, 2.8]) {
      const node = atMargin(here, margin_deg * DEG, near)
      const load = randomLoad(here, node, dice)
      const { opening, closing } = framesOf(here, node)
      const addLoads = (row: { out: Float64Array }): void => {
        for (let column = 0; column < load.length; column++) row.out[column] += load[column]
      }
      const port = derivativeOf(mechanism, node.posture, drive)
      const slow = [...bench.room.slow.entries()].flatMap(([joint, is]) => (is === 1 ? [joint] : []))
      expect(slow.length).toBeGreaterThan(0)
      for (const [frame, effort] of [
        [opening, effortToHold(bench, opening, { port, addLoads })!],
        [closing, effortToClose(bench, closing, { port, addLoads })!],
      ] as const) {
        const prepared = prepare(frame, { port, load })!
        const levers = bench.leversOf('moving', 'likely')
        const tried = Array.from({ length: 2 ** slow.length }, (_, corner) => {
          const balance = balanceIn(prepared, (rates, out) => {
            againstMotion(levers)(rates, out)
            for (const [bit, joint] of slow.entries()) out[joint] = (corner >> bit) & 1 ? levers[joint] : -levers[joint]
          })
          return balance?.amplitude ?? Number.NEGATIVE_INFINITY
        })
        expect(effort.balance!.amplitude).toBeCloseTo(Math.max(...tried), 6)
      }
    }
  })
})

describe('the return reserve', () => {
  it('is least from rest, more when moving, and most without friction', () => {
    // SOURCE property: moving is one of the states of rest, and every state of friction against the motion takes away
    let looked = 0
    for (const kind of FORCE_KINDS) {
      for (let seed = 1; seed <= 6; seed++) {
        const { scene: plain, node } = randomForces(kind, seed) ?? {}
        if (!plain || !node) continue
        const spring = { id: 's', kind: 'torsion', pin: 0, rate_Nmm_rad: 0, preload_Nmm: 500, ownFriction_ratio: 0 } as const
        const [a, b] = plain.mechanism.design.pins[0].joins.map((join) => join.part)
        // Turned so that it opens: against the closing sense of the drive.
        const here = scene({ ...plain.mechanism.design, springs: [{ ...spring, on: b, against: a }] })
        const reserve = returnReserve(here.bench, framesOf(here, node).opening)!
        if (!(reserve.free_Nmm > 0)) continue
        const rounding = 1e-9 * reserve.free_Nmm
        if (reserve.moving) expect(reserve.moving.amplitude).toBeLessThanOrEqual(reserve.free_Nmm + rounding)
        if (reserve.moving) expect(reserve.fromRest!.amplitude).toBeLessThanOrEqual(reserve.moving.amplitude + rounding)
        looked++
      }
    }
    // SOURCE property: most of the 90 were looked at; in the others the spring closes
    expect(looked).toBeGreaterThan(40)
  })
})
