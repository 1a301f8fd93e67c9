import { describe, expect, it } from 'vitest'
import type { Design, LoadCase } from './design/design.ts'
import { evaluate } from './evaluate.ts'
import type { Evaluation, Figure } from './figures/evaluation.ts'
import { frictionLever } from './forces/friction-lever.ts'
import { toggleJamAngle } from './forces/toggle-jam.ts'
import { DISTAL, MIDDLE, padCase, returnSpring, shelfFinger } from './sketches/shelf-finger.ts'
import { oneFriction } from './sketches/sketch.ts'

const DEG = Math.PI / 180

const figureOf = ({ figures }: Evaluation, id: string): Figure => {
  const found = figures.find((figure) => figure.id === id)
  if (!found) throw new Error(`no figure ${id}`)
  return found
}

function keeperOn(direction_rad: number): LoadCase['keeper'] {
  return { port: { kind: 'force', part: DISTAL, pad: 0, direction_rad, frame: DISTAL }, allowed: 30 }
}

function standing(more: Partial<Design> = {}, friction = 0.1): Design {
  const loadCases = [
    padCase('grip', { part: MIDDLE, pad: 0, force_N: 25 }),
    padCase('carry', { part: MIDDLE, pad: 0, force_N: 60 }, keeperOn(-90 * DEG)),
    padCase('push', { part: DISTAL, pad: 1, force_N: -30 }),
  ]
  return { ...shelfFinger({ friction }), springs: [returnSpring(120)], loadCases, ...more }
}

describe('an evaluation of the example finger', () => {
  const evaluation = evaluate(standing())
  const value = (id: string) => figureOf(evaluation, id).value

  it('closes at its shelf, 8.7° short of dead centre', () => {
    expect(evaluation.travel!.endsBy).toBe('stop')
    // SOURCE other-method (two independent solvers: the finger at 75.0° has a margin of 8.718°)
    expect((value('closed.toggle.distal.deadCentreMargin') as number) / DEG).toBeCloseTo(8.72, 1)
    expect((value('closed.drive') as number) / DEG).toBeCloseTo(75, 1)
  })

  it('jams where the closed form of its toggle says', () => {
    // SOURCE other-method (closed form of the toggle, springs elsewhere)
    const levers = frictionLever(1.5, 0.1)
    const first_mm = evaluation.design.parts[5].holes[1].at.x_mm
    const jam = toggleJamAngle({ first_mm, arm_mm: Math.hypot(2.27, 5.41), levers_mm: { a: levers, b: levers, c: levers } })!
    expect(value('closed.toggle.distal.jamAngle')).toBeCloseTo(jam, 10)
    expect(value('closed.toggle.distal.runJamAngle') as number).toBeLessThan(jam)
    expect(value('return.letsGo')).toBe(true)
  })

  it('says who carries each load', () => {
    expect(value('loadCase.grip.heldBy')).toBe('wearer')
    expect(value('loadCase.grip.holdsByItself')).toBe(false)
    expect(value('loadCase.push.heldBy')).toBe('stop')
    expect(value('loadCase.push.holdsByItself')).toBe(true)
    expect(value('loadCase.carry.sustainingLoad') as number).toBeGreaterThan(0)
    // SOURCE hand (keeper over load)
    expect(value('loadCase.carry.keeperRatio')).toBeCloseTo((value('loadCase.carry.sustainingLoad') as number) / 60, 12)
  })

  it('has hold, frictionless and close in order', () => {
    for (const id of ['grip', 'carry', 'push']) {
      const [hold, free, close] = ['effortToHold', 'effortFrictionless', 'effortToClose'].map(
        (tail) => value(`loadCase.${id}.${tail}`) as number,
      )
      expect(hold).toBeLessThan(free)
      expect(free).toBeLessThan(close)
    }
  })

  it('has a reserve from rest not above the reserve moving', () => {
    expect(value('return.reserveFromRest') as number).toBeLessThanOrEqual(value('return.reserveMoving') as number)
    expect(value('return.efficiency') as number).toBeLessThan(1)
  })
})

describe('figures that do not exist say why', () => {
  it('where the keeper does not close', () => {
    const loadCases = [padCase('carry', { part: MIDDLE, pad: 0, force_N: 60 }, keeperOn(90 * DEG))]
    const figure = figureOf(evaluate(standing({ loadCases })), 'loadCase.carry.sustainingLoad')
    expect(figure.value).toBeUndefined()
    expect(figure.why).toContain('does not close')
  })

  it('where nothing opens the finger, or no drag is declared', () => {
    const bare = evaluate(standing({ springs: [] }))
    expect(figureOf(bare, 'return.letsGo').value).toBe(false)
    expect(figureOf(bare, 'closed.toggle.distal.jamAngle').why).toContain('do not open it')
    expect(figureOf(bare, 'return.margin').why).toContain('no drag')
  })

  it('where the finger has no toggle or no stop', () => {
    const bare = evaluate(standing({ toggles: [], stops: [] }))
    expect(bare.travel!.endsBy).not.toBe('stop')
    expect(figureOf(bare, 'loadCase.grip.stopForceMost').why).toContain('does not end at a stop')
    expect(figureOf(bare, 'loadCase.grip.loadedMargin').why).toContain('no toggle')
  })

  it('and where a jam never comes, its requirement is met all the same', () => {
    const requirements = [
      {
        id: 'jam',
        figure: 'closed.toggle.distal.jamAngle',
        bound: { kind: 'atMost', value: 5 * DEG, unit: 'deg', typed: '5 deg' } as const,
        reason: 'it lets go',
        source: 'sketch',
      },
    ]
    // Without friction the return never fails before dead centre itself; a spring on the link opens it past that as well.
    const smooth = evaluate(standing({ requirements }, 0))
    const figure = figureOf(smooth, 'closed.toggle.distal.jamAngle')
    expect(Math.abs((figure.value ?? 0) as number)).toBeLessThan(1e-6)
    expect(smooth.findings[0].verdict).toBe('met')
  })
})

describe('a finger that cannot be worked out', () => {
  it('says where the holes do not meet', () => {
    const plain = standing()
    const parts = plain.parts.map((part) =>
      part.id === 'link1'
        ? { ...part, holes: part.holes.map((hole) => ({ ...hole, at: { x_mm: 3 * hole.at.x_mm, y_mm: 0 } })) }
        : part,
    )
    const evaluation = evaluate({ ...plain, parts })
    expect(evaluation.travel).toBeUndefined()
    expect(evaluation.problems[0].code).toBe('cannot assemble')
  })

  it('says which parts are loose', () => {
    const plain = standing()
    const pins = plain.pins.filter((pin) => pin.id !== 'topB')
    const toggles: Design['toggles'] = []
    const evaluation = evaluate({ ...plain, pins, toggles, stops: [] })
    expect(evaluation.mobility.degrees).toBeGreaterThan(1)
    expect(evaluation.problems[0].code).toBe('loose')
    expect(evaluation.problems[0].found).toContain('distal')
  })
})

describe('rougher pins', () => {
  it('hold with less, close with more, and jam sooner', () => {
    // SOURCE property: every figure of friction goes one way
    const runs = [0.02, 0.06, 0.1, 0.14].map((friction) => {
      const plain = standing({}, friction)
      return evaluate({ ...plain, pins: plain.pins.map((pin) => ({ ...pin, friction: oneFriction(friction) })) })
    })
    const along = (id: string) => runs.map((run) => figureOf(run, id).value as number)
    const rises = (values: number[]) => values.every((one, index) => index === 0 || one > values[index - 1])
    expect(rises(along('closed.toggle.distal.jamAngle'))).toBe(true)
    expect(rises(along('loadCase.grip.effortToClose'))).toBe(true)
    expect(rises(along('loadCase.grip.effortToHold').map((effort) => -effort))).toBe(true)
    expect(rises(along('loadCase.carry.sustainingLoad').map((effort) => -effort))).toBe(true)
    expect(rises(along('return.reserveFromRest').map((reserve) => -reserve))).toBe(true)
  })
})
