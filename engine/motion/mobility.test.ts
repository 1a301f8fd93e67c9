import { describe, expect, it } from 'vitest'
import { assembled } from '../sketches/assembled.ts'
import { finger } from '../sketches/finger.ts'
import { fourBar } from '../sketches/linkages.ts'
import { KINDS, randomMechanism } from '../sketches/random-mechanism.ts'
import { drawnPosture } from './assemble.ts'
import { mechanismOf } from './mechanism.ts'
import { mobilityOf } from './mobility.ts'

const names = (design: ReturnType<typeof finger>, loose: readonly number[]) => loose.map((part) => design.parts[part].id)

describe('the mobility', () => {
  it('is 1 for the finger and every linkage that is driven by one part, with nothing loose', () => {
    const designs = [finger(), ...KINDS.map((kind) => randomMechanism(kind, 2))]
    for (const design of designs) {
      const { mechanism, posture } = assembled(design)
      // SOURCE hand: finger 3·5 − 2·7 = 1
      expect(mobilityOf(mechanism, posture)).toEqual({ degrees: 1, byRank: 1, loose: [] })
    }
  })

  it('is 2 without the second link, and names what hangs loose', () => {
    const design = finger()
    const without = { ...design, parts: design.parts.slice(0, 5), pins: design.pins.slice(0, 5) }
    const { mechanism, posture } = assembled(without)
    const { degrees, byRank, loose } = mobilityOf(mechanism, posture)
    // SOURCE hand: 3·4 − 2·5 = 2; the distal phalanx turns freely on its pin
    expect(degrees).toBe(2)
    expect(byRank).toBe(2)
    expect(names(without, loose)).toEqual(['distal'])
  })

  it('is 2 without the first link, and names all that it leaves loose', () => {
    const design = finger()
    const parts = design.parts.filter(({ id }) => id !== 'link1')
    const pins = design.pins
      .filter(({ id }) => !id.startsWith('base'))
      .map((pin) => ({ ...pin, joins: pin.joins.map((ref) => (ref.part === 5 ? { ...ref, part: 4 } : ref)) }))
    const without = { ...design, parts, pins: pins.map((pin) => ({ ...pin, fixedIn: pin.fixedIn === 5 ? 4 : pin.fixedIn })) }
    const mechanism = mechanismOf(without)
    const { degrees, loose } = mobilityOf(mechanism, drawnPosture(without))
    // SOURCE hand: 3·4 − 2·5 = 2; middle, distal and link 2 move while the proximal phalanx stands
    expect(degrees).toBe(2)
    expect(names(without, loose)).toEqual(['middle', 'distal', 'link2'])
  })

  it('is 0 with a further link between two places that do not keep their distance', () => {
    const design = fourBar({ ground: 100, crank: 40, coupler: 120, rocker: 80, drawn_deg: [40, 20, 57] })
    const put = assembled(design)
    const braced = withLink(put, { on: [10, 5], to: [60, 40] })
    const { degrees, byRank } = mobilityOf(mechanismOf(braced), drawnPosture(braced))
    // SOURCE hand: 3·4 − 2·6 = 0
    expect(degrees).toBe(0)
    expect(byRank).toBe(0)
  })

  it('is 0 by count and 1 by rank for a parallelogram with a third crank, which moves only while its sizes are exact', () => {
    const put = assembled(fourBar({ ground: 100, crank: 40, coupler: 100, rocker: 40, drawn_deg: [60, 0, 60] }))
    const crank_x = 40 * Math.cos(Math.PI / 3)
    const crank_y = 40 * Math.sin(Math.PI / 3)
    const third = withLink(put, { on: [50, 0], to: [50 + crank_x, crank_y] })
    const { degrees, byRank, loose } = mobilityOf(mechanismOf(third), drawnPosture(third))
    // SOURCE hand: 3·4 − 2·6 = 0, yet it turns on three equal parallel cranks
    expect(degrees).toBe(0)
    expect(byRank).toBe(1)
    expect(loose).toEqual([])
  })
})

/** A link from a place of the mount to a place of the coupler, both in the mount frame as the linkage stands. */
function withLink(
  { mechanism, posture }: ReturnType<typeof assembled>,
  { on, to }: { on: [number, number]; to: [number, number] },
): ReturnType<typeof finger> {
  const { design } = mechanism
  const hole = (id: string, [x_mm, y_mm]: readonly [number, number]) => ({ id, at: { x_mm, y_mm }, diameter_mm: 3 })
  const turn = posture[8]
  const [dx, dy] = [to[0] - posture[6], to[1] - posture[7]]
  const inCoupler = [Math.cos(turn) * dx + Math.sin(turn) * dy, Math.cos(turn) * dy - Math.sin(turn) * dx] as const
  const length = Math.hypot(to[0] - on[0], to[1] - on[1])
  const stood = (index: number) => ({
    drawn: { at: { x_mm: posture[3 * index], y_mm: posture[3 * index + 1] }, turn_rad: posture[3 * index + 2] },
  })
  const parts = design.parts.map((part, index) => ({
    ...part,
    ...stood(index),
    holes: index === 0 ? [...part.holes, hole('k', on)] : index === 2 ? [...part.holes, hole('l', inCoupler)] : part.holes,
  }))
  const turn_rad = Math.atan2(to[1] - on[1], to[0] - on[0])
  const brace = {
    ...parts[1],
    id: 'brace',
    holes: [hole('k', [0, 0]), hole('l', [length, 0])],
    drawn: { at: { x_mm: on[0], y_mm: on[1] }, turn_rad },
  }
  const pins = [
    { ...design.pins[0], id: 'k', joins: [0, 4].map((part) => ({ part, hole: part === 0 ? 2 : 0 })), fixedIn: 0 },
    { ...design.pins[0], id: 'l', joins: [2, 4].map((part) => ({ part, hole: part === 2 ? 2 : 1 })), fixedIn: 2 },
  ]
  return { ...design, parts: [...parts, brace], pins: [...design.pins, ...pins] }
}
