import { describe, expect, it } from 'vitest'
import { DEG, finger } from '../sketches/finger.ts'
import { atDrive, atMargin, coupleOn, forceOn, framesOf, jointNamed, partNamed, scene } from '../sketches/force-scene.ts'
import { unbalanced } from '../sketches/free-bodies.ts'
import { PIN_KINDS } from '../sketches/random-forces.ts'
import { type Asked, difference, randomQuestion } from '../sketches/random-question.ts'
import { type ToggleSizes, toggleOf } from '../sketches/toggle-of.ts'
import {
  againstMotion,
  amplitudeIn,
  amplitudeInClosedForm,
  type Balance,
  balanceIn,
  type FillLevers,
  generalWay,
  type Prepared,
  prepare,
} from './balance.ts'
import { dragPort } from './return-reserve.ts'
import { toggleRunJamAngle } from './toggle-jam.ts'

const answers = (prepared: Prepared, fill: FillLevers): boolean => amplitudeInClosedForm(prepared, fill) !== undefined

/** Both ways on one question; undefined where the closed form does not answer. */
function bothWays({ frame, fill, port, load }: Asked): { closed: Balance; general: Balance | undefined } | undefined {
  const prepared = prepare(frame, { port, load })
  if (!prepared || !answers(prepared, fill)) return undefined
  const closed = balanceIn(prepared, fill)!
  return { closed, general: balanceIn(generalWay(prepared), fill) }
}

describe('the closed form for bare links', () => {
  it('gives the balance that the general way gives', () => {
    // SOURCE other-method (Newton on all joints at once), SOURCE property (free bodies)
    let compared = 0
    for (const kind of PIN_KINDS) {
      for (let seed = 1; seed <= 260; seed++) {
        const asked = randomQuestion(kind, seed)
        const both = asked && bothWays(asked)
        if (!both) continue
        expect(difference(both.closed, both.general!)).toBeLessThan(1e-9)
        const { mechanism, posture } = asked.frame
        expect(unbalanced(mechanism, posture, both.closed, asked) / Math.max(...both.closed.magnitudes)).toBeLessThan(1e-9)
        compared++
      }
    }
    // SOURCE property: more than 500 questions have bare links and an order
    expect(compared).toBeGreaterThan(500)
  })

  it('answers for less friction wherever it answers for more, and changes by little from one to the next', () => {
    // SOURCE property: the conditions of the closed form shrink with friction, so its answer is the one raised from none
    let looked = 0
    for (const kind of PIN_KINDS) {
      for (let seed = 1; seed <= 60; seed++) {
        const asked = randomQuestion(kind, seed)
        const prepared = asked && prepare(asked.frame, asked)
        if (!prepared || !answers(prepared, asked.fill)) continue
        const at = (share: number) =>
          amplitudeInClosedForm(prepared, (rates, out) => {
            asked.fill(rates, out)
            for (let joint = 0; joint < out.length; joint++) out[joint] *= share
          })!
        const amplitudes = Array.from({ length: 65 }, (_, step) => at(step / 64))
        const whole = amplitudes.reduce((sum, value, step) => sum + Math.abs(value - amplitudes[Math.max(0, step - 1)]), 0)
        expect(Math.abs(amplitudes[0] - prepared.freeAmplitude)).toBeLessThan(1e-9 * Math.abs(prepared.freeAmplitude))
        for (const [step, value] of amplitudes.entries())
          if (step > 0) expect(Math.abs(value - amplitudes[step - 1])).toBeLessThanOrEqual(0.5 * whole)
        looked++
      }
    }
    // SOURCE property: a good hundred questions
    expect(looked).toBeGreaterThan(100)
  })

  it('asks for an effort just where the drag at the pins says that the load opens', () => {
    // SOURCE other-method: the reserve of drag, by the general way; both are zero at the same friction
    const seen = { opens: 0, held: 0 }
    for (const kind of PIN_KINDS) {
      for (let seed = 1; seed <= 260; seed++) {
        const asked = randomQuestion(kind, seed)
        const prepared = asked && prepare(asked.frame, asked)
        if (!prepared) continue
        // Pins six times as rough as those of the other tests, so that they hold often enough.
        const fill: FillLevers = (rates, out) => {
          asked.fill(rates, out)
          for (let joint = 0; joint < out.length; joint++) out[joint] *= 6
        }
        const effort = amplitudeInClosedForm(prepared, fill)
        if (effort === undefined) continue
        const carries = effort * prepared.freeAmplitude > 0
        const dragged = prepare(asked.frame, { port: dragPort(asked.frame), load: asked.load })!
        const reserve = amplitudeIn(dragged, fill)
        if (reserve === undefined) continue
        expect(reserve * dragged.freeAmplitude > 0).toBe(carries)
        seen[carries ? 'opens' : 'held']++
      }
    }
    // SOURCE property: both answers are given
    expect(Math.min(seen.opens, seen.held)).toBeGreaterThan(15)
  })

  it('answers for the finger all the way, whichever phalanx is loaded', () => {
    const here = scene(finger({ friction: 0.12 }))
    const { mechanism, bench } = here
    const port = coupleOn(mechanism, partNamed(mechanism, 'proximal'), -1)
    for (let flexion = 0; flexion <= 76; flexion += 4) {
      const node = atDrive(here, flexion * DEG)
      for (const id of ['proximal', 'middle', 'distal']) {
        const load = forceOn(mechanism, node.posture, { part: partNamed(mechanism, id), at: [13, -6], force: [20, 80] })
        for (const sense of ['opening', 'closing'] as const) {
          const frame = framesOf(here, node)[sense]
          const both = bothWays({ frame, port, load, fill: againstMotion(bench.leversOf('moving', 'most')) })
          // SOURCE other-method (Newton on all joints at once)
          expect(difference(both!.closed, both!.general!)).toBeLessThan(1e-9)
        }
      }
    }
  })
})

describe('the closed form near a jam', () => {
  const sizes: ToggleSizes = {
    first_mm: 40,
    arm_mm: 22,
    radii_mm: { a: 2, b: 2.5, c: 1.5, g: 3 },
    friction: 0.2,
    margin_rad: 12 * DEG,
    rocker_mm: 50,
    lean_mm: 0,
    spring_Nmm: 0,
  }
  const here = scene(toggleOf(sizes))
  const { mechanism, bench } = here
  const levers = bench.leversOf('moving', 'most')
  const lever = (pin: string) => levers[jointNamed(mechanism, pin)]
  // SOURCE other-method: the line of force through all three pins of the toggle (docs/theory/return.md)
  const jam_rad = toggleRunJamAngle({
    first_mm: sizes.first_mm,
    arm_mm: sizes.arm_mm,
    levers_mm: { a: lever('a'), b: lever('b'), c: lever('c') },
    oppositeToB: { a: true, c: true },
  })!
  // BC is loaded and pushes on C with the bare link AB; the couple on the rocker follows from that.
  const asked = (margin_rad: number, sense: 'opening' | 'closing'): Asked => ({
    frame: framesOf(here, atMargin(here, margin_rad))[sense],
    port: coupleOn(mechanism, partNamed(mechanism, 'rocker'), 1),
    load: coupleOn(mechanism, partNamed(mechanism, 'bc'), 500),
    fill: againstMotion(levers),
  })

  it('agrees with the general way until the leading coefficient vanishes', () => {
    for (const sense of ['opening', 'closing'] as const) {
      for (let beyond = 1; beyond > 1e-4; beyond /= 2) {
        const both = bothWays(asked(jam_rad * (1 + beyond), sense))
        expect(difference(both!.closed, both!.general!)).toBeLessThan(1e-9)
      }
    }
  })

  it('steps back where the jam angle of the toggle is, and leaves it to the general way', () => {
    for (const sense of ['opening', 'closing'] as const) {
      const answersAt = (margin_rad: number) => {
        const { frame, fill, ...given } = asked(margin_rad, sense)
        return answers(prepare(frame, given)!, fill)
      }
      let low = 0.5 * jam_rad
      let high = 2 * jam_rad
      expect([answersAt(low), answersAt(high)]).toEqual([false, true])
      while (high - low > 1e-9) {
        const middle = (low + high) / 2
        if (answersAt(middle)) high = middle
        else low = middle
      }
      // SOURCE other-method: `toggleRunJamAngle`; the closed form stops 1e-5 of an arm before it
      expect(high / jam_rad - 1).toBeGreaterThanOrEqual(0)
      expect(high / jam_rad - 1).toBeLessThan(2e-5)
      const { frame, fill, ...given } = asked(0.9 * jam_rad, sense)
      const prepared = prepare(frame, given)!
      const left = balanceIn(prepared, fill)
      expect(left?.amplitude).toEqual(balanceIn(generalWay(prepared), fill)?.amplitude)
    }
  })
})
