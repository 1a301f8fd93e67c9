import { describe, expect, it } from 'vitest'
import { DEG } from '../sketches/finger.ts'
import { atMargin, coupleOn, framesOf, jointNamed, partNamed, scene } from '../sketches/force-scene.ts'
import { unbalanced } from '../sketches/free-bodies.ts'
import { type ForceKind, PIN_KINDS } from '../sketches/random-forces.ts'
import { type Asked, difference, randomQuestion } from '../sketches/random-question.ts'
import { type ToggleSizes, toggleOf } from '../sketches/toggle-of.ts'
import { againstMotion, amplitudeByDyads, type Balance, balanceIn, balanceNow, generalWay, prepare } from './balance.ts'
import { toggleRunJamAngle } from './toggle-jam.ts'

/** Both ways on one question; undefined where it cannot be taken dyad by dyad. */
function bothWays({ frame, fill, port, load }: Asked): { dyads: Balance; general: Balance | undefined } | undefined {
  const prepared = prepare(frame, { port, load })
  const amplitude = prepared && amplitudeByDyads(prepared, fill)
  if (!prepared || amplitude === undefined) return undefined
  const dyads = balanceNow(prepared, amplitude)
  return { dyads, general: balanceIn(generalWay(prepared), fill) }
}

const OF_DYADS: readonly ForceKind[] = PIN_KINDS.filter((kind) => kind !== 'Stephenson six-bar')

describe('friction taken dyad by dyad', () => {
  it.each(OF_DYADS)('gives the balance that the general way gives: %s', (kind) => {
    // SOURCE other-method (Newton on all joints at once), SOURCE property (free bodies)
    let compared = 0
    for (let seed = 1; seed <= 60; seed++) {
      const asked = randomQuestion(kind, seed)
      const both = asked && bothWays(asked)
      if (!both) continue
      expect(difference(both.dyads, both.general!)).toBeLessThan(1e-9)
      const { mechanism, posture } = asked.frame
      expect(unbalanced(mechanism, posture, both.dyads, asked) / Math.max(...both.dyads.magnitudes)).toBeLessThan(1e-9)
      compared++
    }
    expect(compared).toBeGreaterThan(20) // SOURCE property (most random questions are far from a jam)
  })

  it('goes through the running jam of a toggle and says no more than the general way there', () => {
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
    const found = [0.5, 0.9, 1.01, 1.1, 2, 3, 4].map((share) => {
      const asked: Asked = {
        frame: framesOf(here, atMargin(here, share * jam_rad)).opening,
        port: coupleOn(mechanism, partNamed(mechanism, 'rocker'), 1),
        load: coupleOn(mechanism, partNamed(mechanism, 'bc'), 500),
        fill: againstMotion(levers),
      }
      const both = bothWays(asked)
      return both ? difference(both.dyads, both.general!) < 1e-9 : undefined
    })
    // SOURCE other-method (Newton on all joints at once); inside the jam it has to leave the answer to the general way
    expect(found.slice(0, 2)).toEqual([undefined, undefined])
    expect(found).not.toContain(false)
    expect(found[found.length - 1]).toBe(true)
  })
})
