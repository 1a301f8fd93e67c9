import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { pinCentre, placed } from '../motion/mechanism.ts'
import type { Pressed } from './pressed.ts'
import { sideChain } from './side-chain.ts'
import { sideCouple } from './side-couple.ts'
import { leantIn, sideMoment } from './side-moment.ts'
import { sideStrength } from './side-strength.ts'
import { heron, heronBench } from './test-support/heron-bench.ts'

const [drawn] = heronBench([{ forces: {} }]).states
const leaning: Pressed = { ...drawn, loadCase: 'sidePush' }
const bench = heronBench([])
const part = (id: string) => heron.parts.findIndex((one) => one.id === id)
const pin = (id: string) => heron.pins.findIndex((one) => one.id === id)

/** All checks of the example, leant on as drawn. */
function found(design: Design = heron, states: Parameters<typeof heronBench>[0] = []) {
  const given = heronBench(states, design)
  const checks = sideStrength(given, [leantIn(given.mechanism, leaning)])
  return new Map(checks.map(({ name, strength }) => [name, strength]))
}

describe('the way of a push from the side', () => {
  it('goes through the phalanges, and through a link only where there is nothing else', () => {
    const names = (design: Design, from: string) => sideChain(design, part(from)).map((hinge) => design.pins[hinge.pin].id)
    expect(names(heron, 'distal')).toEqual(['dip', 'pip', 'mcp'])
    expect(names(heron, 'topLink')).toEqual(['topNear', 'mcp'])
    expect(names(heron, 'mount')).toEqual([])
    const cut = { ...heron, pins: heron.pins.filter(({ id }) => id !== 'dip') }
    expect(names(cut, 'distal')).toEqual(['topFar', 'topNear', 'mcp'])
  })
})

describe('the moment about a place', () => {
  it('is the lever of the finger as drawn', () => {
    // SOURCE hand (tip at 44 + 26 cos 4° + 22 cos 8°, −26 sin 4° − 22 sin 8°: 91.723, −4.876; 10 N × 91.852 = 918.5 N·mm)
    const { moment } = sideMoment(leantIn(bench.mechanism, leaning).pushes, { x_mm: 0, y_mm: 0 })
    expect(Math.hypot(moment.x, moment.y)).toBeCloseTo(918.5, 0)
  })

  it.each(['dip', 'pip', 'mcp'])('at %s does the work of the push, about whatever axis the outer finger is turned', (id) => {
    const { pushes } = leantIn(bench.mechanism, leaning)
    const centre = pinCentre(bench.mechanism, leaning.posture, pin(id))
    const { moment } = sideMoment(pushes, centre)
    const tip = placed(leaning.posture, part('distal'), { x_mm: 22, y_mm: 0 })
    for (const axis of [0, 0.7, 2.1]) {
      // SOURCE other-method (virtual work in space: everything beyond the hinge turns by a small angle about an axis n in the plane, which
      // lifts the tip by n × r; the push of 10 N does that work, and the couple of the hinge, whose axis lies across m, takes it up)
      const n = [Math.cos(axis), Math.sin(axis)]
      const lifted = n[0] * (tip.y_mm - centre.y_mm) - n[1] * (tip.x_mm - centre.x_mm)
      const couple = [moment.y, -moment.x]
      expect(couple[0] * n[0] + couple[1] * n[1]).toBeCloseTo(10 * lifted, 9)
    }
  })
})

describe('the example leant on', () => {
  it('bends the pin of the knuckle by its couple', () => {
    const perCouple = sideCouple(heron.parts[part('proximal')], heron.parts[part('mount')])
    // SOURCE hand (918.5 N·mm times the moment per couple, 32 M / (π 3³), breaks at 1310.0 MPa with factor 2)
    const bent = (32 * 918.5 * (perCouple?.beam.moment_Nmm ?? 0)) / (Math.PI * 27)
    const mcp = found().get('pin.mcp.sideLoad')
    expect(mcp?.margin?.limit.stress).toBeCloseTo(bent, 0)
    expect(mcp?.margin?.value).toBeCloseTo(1310 / (2 * bent) - 1, 1)
  })

  it('asks more of a hinge the further in it lies', () => {
    // SOURCE property (dip and pip have forks of one kind; the lever to the tip grows)
    const margins = ['dip', 'pip', 'mcp'].map((id) => found().get(`pin.${id}.sideLoad`)?.margin?.value ?? Number.NaN)
    expect(margins[0]).toBeGreaterThan(margins[1])
    expect(margins[1]).toBeGreaterThan(margins[2])
  })

  it('spares the links, their pins and what lies in the plane', () => {
    for (const name of ['pin.topNear.sideLoad', 'pin.baseFar.sideLoad', 'part.topLink.sideLoad']) {
      expect(found().get(name)).toMatchObject({ spared: true })
    }
  })

  it('finds every phalanx weakest towards its root or where its outline is slim', () => {
    for (const id of ['proximal', 'middle', 'distal'])
      expect(found().get(`part.${id}.sideLoad`)?.margin?.value).toBeGreaterThan(0)
    // SOURCE property (a phalanx half as wide across the finger is four times as weak in bending, and weaker still in all)
    const slim = heron.parts.map((one) =>
      one.id === 'distal'
        ? {
            ...one,
            across: [
              { from_mm: -7.75, to_mm: -5.5 },
              { from_mm: 5.5, to_mm: 7.75 },
            ],
          }
        : one,
    )
    const before = (found().get('part.distal.sideLoad')?.margin?.value ?? Number.NaN) + 1
    const after = (found({ ...heron, parts: slim }).get('part.distal.sideLoad')?.margin?.value ?? Number.NaN) + 1
    expect(before / after).toBeGreaterThan(2)
    expect(before / after).toBeLessThan(8)
  })

  it('loses in proportion to the push, and by what acts in the plane beside it', () => {
    const loadCases = heron.loadCases.map((one) => ({
      ...one,
      sideways: one.sideways.map((push) => ({ ...push, force_N: 2 * push.force_N })),
    }))
    const [one, two] = [found(), found({ ...heron, loadCases })]
    const lone = (checks: typeof one, name: string) => (checks.get(name)?.margin?.value ?? Number.NaN) + 1
    // SOURCE property (margin + 1 goes as one over the force)
    for (const name of ['pin.mcp.sideLoad', 'part.middle.sideLoad']) expect(lone(one, name) / lone(two, name)).toBeCloseTo(2, 9)
    const beside = found(heron, [{ forces: { mcp: [300, 0] }, loadCase: 'sidePush' }])
    expect(lone(beside, 'pin.mcp.sideLoad')).toBeLessThan(lone(one, 'pin.mcp.sideLoad'))
  })

  it('says what is missing', () => {
    const bare = heron.parts.map((one) => {
      if (one.id !== 'middle') return one
      const { across: _, ...rest } = one
      return rest
    })
    const checks = found({ ...heron, parts: bare })
    const needed = expect.stringContaining('parts.middle.across')
    expect(checks.get('pin.dip.sideLoad')).toMatchObject({ why: needed })
    expect(checks.get('part.middle.sideLoad')).toMatchObject({ why: needed })
    expect(checks.get('pin.mcp.sideLoad')?.margin).toBeDefined()
  })
})
