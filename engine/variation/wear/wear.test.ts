import { describe, expect, it } from 'vitest'
import type { Design, FrictionPair, LoadCase } from '../../design/design.ts'
import { evaluate } from '../../evaluate.ts'
import { readyFor } from '../../figures/ready-finger.ts'
import { padCase, returnSpring, shelfFinger } from '../../sketches/shelf-finger.ts'
import { sketch } from '../../sketches/sketch.ts'
import { rubbingUnder, wholeRubbing } from './rubbing.ts'
import type { Wear } from './wear.ts'
import { wearOf } from './wear-of.ts'

const DEG = Math.PI / 180
const TURN = 80 * DEG
const RADIUS_mm = 1.5
const WIDTH_mm = 6

function pair(name: string, rate_mm2_N: number, film?: { depth_mm: number; under: FrictionPair }): FrictionPair {
  // Without friction the pin presses along the force: all of its wear is on one side.
  const band = { least: 0, likely: 0, most: 0 }
  const rate = { name, least_mm2_N: rate_mm2_N / 4, likely_mm2_N: rate_mm2_N, most_mm2_N: 4 * rate_mm2_N, source: 'sketch' }
  return { name, moving: band, rest: band, source: 'sketch', wear: { rate, ...(film && { film }) } }
}

interface Hinge {
  readonly force_N?: number
  readonly friction?: FrictionPair
  readonly tipMost_mm?: number
}

/** An arm on one pin, turned by 80° against a force across it that turns with it: the pin carries just that force all the way. */
function hinge({ force_N = 50, friction = pair('steady', 1e-9), tipMost_mm = 0 }: Hinge): Design {
  const across: LoadCase = { ...padCase('across', { part: 1, pad: 0, force_N }), acts: 'travel' }
  const plain = sketch({
    parts: [
      { id: 'mount', role: 'mount', holes: { a: [0, 0] }, drawn: [0, 0, 0] },
      { id: 'arm', role: 'proximal', holes: { a: [0, 0] }, pads: { tip: [40, 0] }, drawn: [0, 0, 0] },
    ],
    pins: [{ id: 'a', joins: ['mount.a', 'arm.a'], radius_mm: RADIUS_mm, friction: 0.1, clearance_mm: 0.01 }],
    drive: { part: 'arm', pin: 'a', open: 0, closed: TURN },
    loadCases: [across],
  })
  const figure = 'closed.tip.x'
  const bound = { kind: 'atMost', value: tipMost_mm, unit: 'mm', typed: '' } as const
  return {
    ...plain,
    parts: plain.parts.map((part) => ({ ...part, thickness_mm: WIDTH_mm })),
    pins: plain.pins.map((pin) => ({ ...pin, friction })),
    tip: { part: 1, pad: 0 },
    use: { closingsPerDay: 300, years: 2, shares: [{ loadCase: 0, share_ratio: 1 }] },
    requirements: [{ id: 'reach', figure, bound, reason: 'x', source: 'x' }],
  }
}

function worn(design: Design, level: 'least' | 'likely' | 'most' = 'likely'): Wear {
  const run = wearOf(design, level)
  let step = run.next()
  while (!step.done) step = run.next()
  if (!step.value.wear) throw new Error(JSON.stringify(step.value.missing))
  return step.value.wear
}

/** Depth that one closing takes off the hinge's hole: k F r 2θ over d w. */
const perClosing_mm = (rate: number, force_N: number) => (rate * force_N * RADIUS_mm * 2 * TURN) / (2 * RADIUS_mm * WIDTH_mm)

describe('what rubs', () => {
  it('at one pin under a force that turns with the arm is force times way', () => {
    const design = hinge({})
    const ready = readyFor(design)
    const rubbed = ready && rubbingUnder(ready, design.loadCases[0]).rubbing
    // SOURCE hand (50 N × 1.5 mm × 80° there and back)
    expect(rubbed && wholeRubbing(rubbed)).toBeCloseTo(50 * RADIUS_mm * 2 * TURN, 6)
  })

  it('is the work that friction takes, over its lever', () => {
    const friction = 0.1
    const grip: LoadCase = { ...padCase('grip', { part: 2, pad: 0, force_N: 30 }), acts: 'travel' }
    const design: Design = { ...shelfFinger({ friction }), springs: [returnSpring(60)], loadCases: [grip] }
    const ready = readyFor(design)
    const rubbed = ready && rubbingUnder(ready, grip).rubbing
    const { travel } = evaluate(design)
    const series = (id: string) => travel?.series.find((one) => one.id === id)?.values ?? []
    const [close, hold] = [series('loadCase.grip.effortToClose'), series('loadCase.grip.effortToHold')]
    let work = 0
    for (let index = 1; index < close.length; index++) {
      const between = [index - 1, index].map((at) => (close[at] ?? Number.NaN) - (hold[at] ?? Number.NaN))
      const turned = (travel?.postures[index].drive ?? 0) - (travel?.postures[index - 1].drive ?? 0)
      work += ((between[0] + between[1]) / 2) * turned
    }
    // SOURCE property (energy: the drive gives what closes without friction and what friction takes; 61 postures there, 25 here)
    const bores = rubbed ? wholeRubbing({ ...rubbed, stops: [] }) : 0
    expect(bores / (work / Math.sin(Math.atan(friction)))).toBeCloseTo(1, 2)
  })
})

describe('a hinge that wears', () => {
  it('wears by Archard’s depth, and turns its requirement where that says so', () => {
    const rate = 1e-8
    // The hole wears where the pin presses, across the arm: its centre moves by half of the depth, and the tip with it.
    const allowed_mm = 0.006
    const closed = 40 * Math.cos(-TURN)
    const sideways = Math.sin(TURN)
    const found = worn(hinge({ friction: pair('steady', rate), tipMost_mm: closed + allowed_mm * sideways }))
    const depth = perClosing_mm(rate, 50)
    // SOURCE hand (k F r 2θ / (d w) a closing)
    expect(found.places[0].depth_mm / (depth * found.end_closings)).toBeCloseTo(1, 9)
    const { asNew } = found.places[0]
    expect(asNew).toMatchObject({ along_mm: 2 * RADIUS_mm, width_mm: WIDTH_mm })
    expect('depth_mm' in asNew && asNew.depth_mm / depth).toBeCloseTo(1, 9)
    const until = found.findings[0].until ?? Number.NaN
    // SOURCE hand (half of the depth is 0.006 mm)
    expect(until / ((2 * allowed_mm) / depth)).toBeCloseTo(1, 2)
    expect(found.findings[0]).toMatchObject({ asNew: 'met', becomes: 'short' })
  })

  it('wears through its film first, then by the rate of what lies under it', () => {
    const bare = pair('bare', 1e-7)
    const film = pair('film', 1e-8, { depth_mm: 0.004, under: bare })
    const found = worn(hinge({ friction: film, tipMost_mm: 100 }))
    const through = 0.004 / perClosing_mm(1e-8, 50)
    // SOURCE hand (film depth over depth a closing; then ten times as fast to the end)
    expect(found.films).toMatchObject([{ at: { kind: 'pin', id: 'a' }, film: 'film', under: 'bare' }])
    expect(found.films[0].closings / through).toBeCloseTo(1, 6)
    expect(found.places[0].depth_mm / (0.004 + perClosing_mm(1e-7, 50) * (found.end_closings - through))).toBeCloseTo(1, 6)
  })

  it('wears sooner under more load, on a worse pair and at the most of a rate', () => {
    const until = (asked: Hinge, level?: 'most') =>
      worn(hinge({ friction: pair('steady', 1e-8), tipMost_mm: 40 * Math.cos(TURN) + 0.004, ...asked }), level).findings[0].until
    const plain = until({}) ?? Number.NaN
    // SOURCE property
    expect(until({ force_N: 80 })).toBeLessThan(plain)
    expect(until({ friction: pair('worse', 3e-8) })).toBeLessThan(plain)
    expect(until({}, 'most')).toBeLessThan(plain)
  })

  it('plays at its tip by what the hole has grown', () => {
    const { points, places } = worn(hinge({ tipMost_mm: 100 }))
    const last = points[points.length - 1]
    // SOURCE hand (a clearance of 0.01 mm lets the whole arm move by as much; then by the depth on top)
    expect(points[0].tipPlay_mm).toBeCloseTo(0.01, 6)
    expect(last.tipPlay_mm).toBeCloseTo(0.01 + places[0].depth_mm, 4)
  })
})

describe('wear that is not known', () => {
  it('says what is missing', () => {
    const { use: _, ...design } = hinge({ friction: { ...pair('steady', 1e-9), wear: undefined } as unknown as FrictionPair })
    const parts = design.parts.map(({ thickness_mm: __, ...part }) => part)
    const run = wearOf({ ...design, parts }, 'likely').next()
    expect(run.done && run.value.missing?.map(({ place }) => place)).toEqual([
      'use',
      'friction.steady.wear',
      'parts.arm.thickness',
    ])
  })
})
