import { describe, expect, it } from 'vitest'
import { derivativeOf } from '../motion/path.ts'
import { eccentric, pulley, wedge } from '../sketches/book-friction.ts'
import { coupleOn, forceOn, framesOf, jointNamed, partNamed, type Scene, scene, stepsOn } from '../sketches/force-scene.ts'
import { againstMotion, balanceIn, type FillLevers, prepare } from './balance.ts'
import type { ForceFrame } from './force-frame.ts'

const DEG = Math.PI / 180

function amplitude(
  here: Scene,
  frame: ForceFrame,
  asked: { port: Float64Array; load: Float64Array },
  levers?: FillLevers,
): number {
  return balanceIn(prepare(frame, asked)!, levers ?? againstMotion(here.bench.leversOf('moving', 'likely')))!.amplitude
}

describe('an eccentric with friction circles at shaft, sheave and crosshead', () => {
  // SOURCE book (Bevan, The Theory of Machines, ch. 6 Ex. 7 p.198, via open textbook-companion notebooks, READ): piston pull
  // 6 tons, crank 8 in at 60°, rod 80 in, friction 0.05 at bearings of 7, 15 and 4.4 in radius: turning moment 3.64 ton ft without friction,
  // 3.06 with friction, efficiency 84.17 %. Recomputed with circles 0.35, 0.75 and 0.22 in: 3.6380, 3.0620, 84.169 %; with the
  // tangent on the other side 3.1097.
  const here = scene(eccentric())
  const node = stepsOn(here, 0)!
  const { mechanism } = here
  const piston_ton = 6
  const pulled = forceOn(mechanism, node.posture, {
    part: partNamed(mechanism, 'crosshead'),
    at: [0, 0],
    force: [-piston_ton, 0],
  })
  const crank = coupleOn(mechanism, partNamed(mechanism, 'crank'), 1)
  const frames = framesOf(here, node)
  // The piston's pull turns the crank: the sense in which the pull gives power.
  const frame =
    pulled.reduce((power, value, column) => power + value * node.tangent[column], 0) > 0 ? frames.closing : frames.opening
  const ton_ft = (levers?: FillLevers) => Math.abs(amplitude(here, frame, { port: crank, load: pulled }, levers)) / 12

  it('turns with the published moment, with friction and without', () => {
    const free = ton_ft((_, out) => out.fill(0))
    const rubbing = ton_ft()
    expect(Math.abs(free / 3.638 - 1)).toBeLessThan(1e-3)
    expect(Math.abs(free / 3.64 - 1)).toBeLessThan(1e-3)
    expect(Math.abs(rubbing / 3.062 - 1)).toBeLessThan(1e-3)
    expect(Math.abs(rubbing / 3.06 - 1)).toBeLessThan(1e-3)
    expect(rubbing / free).toBeCloseTo(0.8417, 3)
  })

  it('has its line of thrust on the right side of the rod’s circles', () => {
    // SOURCE hand: 6 / cos β · (8 sin(60° + β) − 0.75 − 0.35) / 12 with β the rod's 4.9682° less or more the tilt of the
    // thrust, asin((0.75 + 0.22) / 80) = 0.6947°: 3.062 and 3.110
    const moment = (tilt_deg: number) => {
      const thrust = (4.9682 + tilt_deg) * DEG
      return ((piston_ton / Math.cos(thrust)) * (8 * Math.sin(60 * DEG + thrust) - 1.1)) / 12
    }
    expect(moment(0.6947)).toBeCloseTo(3.1097, 3)
    expect(Math.abs(ton_ft() / moment(-0.6947) - 1)).toBeLessThan(5e-4)
    expect(Math.abs(ton_ft() / moment(0.6947) - 1)).toBeGreaterThan(0.01)
  })

  it('would gain from friction if the sheave’s circle were touched on the other side', () => {
    // SOURCE property: friction at the sheave helping instead of hindering gives more moment than none at all
    const other: FillLevers = (rates, out) => {
      againstMotion(here.bench.leversOf('moving', 'likely'))(rates, out)
      out[jointNamed(mechanism, 'sheave')] *= -1
    }
    expect(ton_ft(other)).toBeGreaterThan(ton_ft((_, out) => out.fill(0)))
  })
})

describe('a pulley with friction at its shaft', () => {
  // SOURCE book (Beer & Johnston, Vector Mechanics: Statics, Sample Prob. 8.6 p.423, via open textbook-companion notebooks, READ):
  // 500 lb on a 2 in arm, shaft of 1 in radius, friction circle taken as 0.20 in: raise 611 lb, hold 409 lb, raise with a
  // horizontal pull 577 lb. Recomputed: 611.11, 409.09, 576.3 (angles rounded in print).
  const asked = (friction: number, at: [number, number], force: [number, number]) => {
    const here = scene(pulley(friction))
    const node = stepsOn(here, 0)!
    const load = forceOn(here.mechanism, node.posture, { part: 1, at: [-2, 0], force: [0, -500] })
    const port = forceOn(here.mechanism, node.posture, { part: 1, at, force })
    const { closing, opening } = framesOf(here, node)
    return { raise: amplitude(here, closing, { port, load }), hold: amplitude(here, opening, { port, load }) }
  }
  const circleOf0_2 = Math.tan(Math.asin(0.2))

  it('needs the published pulls to raise and to hold', () => {
    const { raise, hold } = asked(circleOf0_2, [2, 0], [0, -1])
    expect(raise).toBeCloseTo(611.11, 2)
    expect(hold).toBeCloseTo(409.09, 2)
    expect(asked(circleOf0_2, [0, 2], [1, 0]).raise).toBeCloseTo(576.3, 1)
  })

  it('needs 608.7 lb where the circle is r sin(atan μ) and not r μ', () => {
    // SOURCE hand (500 (2 + 0.19612) / (2 − 0.19612) with 0.19612 = sin(atan 0.2))
    expect(asked(0.2, [2, 0], [0, -1]).raise).toBeCloseTo(608.7, 1)
  })
})

describe('a wedge under a block against a wall', () => {
  it('is pushed in with 423 lb and must be pulled out with 206 lb', () => {
    // SOURCE book (Beer & Johnston, Statics, Sample Prob. 8.4 p.411, via open textbook-companion notebooks, READ): block 400 lb,
    // wedge 8°, friction 0.35 at all faces: raise 423 lb, lower 206 lb (self-locking). Recomputed: 422.69 and 205.50.
    const here = scene(wedge(8 * DEG, 0.35))
    const node = stepsOn(here, 0)!
    const { mechanism } = here
    const load = forceOn(mechanism, node.posture, { part: partNamed(mechanism, 'block'), at: [0, 0], force: [0, -400] })
    const port = derivativeOf(mechanism, node.posture, here.drive)
    const { closing, opening } = framesOf(here, node)
    expect(amplitude(here, closing, { port, load })).toBeCloseTo(422.69, 1)
    expect(amplitude(here, opening, { port, load })).toBeCloseTo(-205.5, 1)
  })
})
