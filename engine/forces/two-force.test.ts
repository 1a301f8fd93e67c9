import { describe, expect, it } from 'vitest'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, atMargin, coupleOn, forceOn, framesOf, jointNamed, partNamed, scene } from '../sketches/force-scene.ts'
import { plainToggle } from '../sketches/plain-toggle.ts'
import { againstMotion, balanceIn, type FillLevers, prepare, withoutFriction } from './balance.ts'
import type { ForceFrame } from './force-frame.ts'
import { solveTwoForce } from './two-force.ts'

describe('the finger pushed on the back of its distal phalanx', () => {
  const here = scene(finger({ friction: 0.12 }))
  const { mechanism, bench } = here
  const node = atDrive(here, 75 * DEG)
  const turn = node.posture[3 * partNamed(mechanism, 'distal') + 2]
  const load = forceOn(mechanism, node.posture, {
    part: partNamed(mechanism, 'distal'),
    at: [12, 4.4],
    force: [30 * Math.sin(turn), -30 * Math.cos(turn)],
  })
  const port = coupleOn(mechanism, partNamed(mechanism, 'proximal'), -1)
  const levers = bench.leversOf('moving', 'likely')

  const solved = (frame: ForceFrame, fill: FillLevers) => {
    const { plan, room } = prepare(frame, { port, load })!
    const used = new Float64Array(mechanism.joints.length)
    fill(room.questionRates, used)
    const out = { values: new Float64Array(used.length), forces: new Float64Array(2 * used.length) }
    expect(solveTwoForce(frame, plan!, { levers: used, out })).toBe(true)
    return { link: out.values[jointNamed(mechanism, 'topB')], dip: out.values[jointNamed(mechanism, 'dip')] }
  }

  it('carries the force of the worked example in its link', () => {
    const { opening, closing } = framesOf(here, node)
    // SOURCE other-method (a dense solver with all pins of the finger, docs/theory/two-force-links.md)
    expect(solved(opening, againstMotion(levers)).link).toBeCloseTo(668.3919906, 6)
    expect(solved(opening, againstMotion(levers)).dip).toBeCloseTo(642.998, 3)
    expect(solved(closing, againstMotion(levers)).link).toBeCloseTo(292.36698332, 6)
    expect(solved(closing, againstMotion(levers)).dip).toBeCloseTo(267.242, 3)
    // SOURCE hand (360 N·mm over an arm of 0.88925 mm)
    expect(solved(opening, withoutFriction).link).toBeCloseTo(404.835, 2)
  })
})

describe('a toggle with nothing on its links', () => {
  it('carries nothing: the port alone holds the rocker', () => {
    const here = scene(plainToggle())
    const rocker = partNamed(here.mechanism, 'rocker')
    const { opening } = framesOf(here, atMargin(here, 12 * DEG))
    const prepared = prepare(opening, {
      port: coupleOn(here.mechanism, rocker, 1),
      load: coupleOn(here.mechanism, rocker, -700),
    })!
    const { amplitude, magnitudes } = balanceIn(prepared, againstMotion(Float64Array.from([0.2, 0.25, 0.15, 0.3])))!
    // SOURCE hand (couple against couple on one part)
    expect(amplitude).toBeCloseTo(700, 9)
    expect([...magnitudes]).toEqual([0, 0, 0, 0])
  })
})
