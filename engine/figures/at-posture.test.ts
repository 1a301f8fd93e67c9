import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { evaluate } from '../evaluate.ts'
import { frictionLever } from '../forces/friction-lever.ts'
import { DISTAL, MIDDLE, padCase, returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { forcesAt, postureAt } from './at-posture.ts'
import type { ForcePicture, Question } from './evaluation.ts'

const FRICTION = 0.1
const keeper = { port: { kind: 'couple', part: DISTAL, against: 0 } as const, allowed: 2000 }
const design: Design = {
  ...shelfFinger({ friction: FRICTION }),
  springs: [returnSpring(120)],
  loadCases: [
    { ...padCase('grip', { part: MIDDLE, pad: 0, force_N: 25 }), acts: 'travel' },
    { ...padCase('carry', { part: MIDDLE, pad: 0, force_N: 60 }, keeper), acts: 'travel' },
    padCase('push', { part: DISTAL, pad: 1, force_N: -30 }),
  ],
}
const evaluation = evaluate(design)
const travel = evaluation.travel!

const questions: readonly Question[] = [
  { kind: 'return' },
  { kind: 'hold', loadCase: 'grip' },
  { kind: 'close', loadCase: 'grip' },
  { kind: 'hold', loadCase: 'carry' },
  { kind: 'hold', loadCase: 'push' },
]

/** Forces that are left over on each moving part of a picture, N. */
function leftOver(picture: ForcePicture, question: Question): { x: number; y: number }[] {
  const sums = design.parts.map(() => ({ x: 0, y: 0 }))
  const add = (part: number, { x, y }: { x: number; y: number }, sign: number): void => {
    sums[part].x += sign * x
    sums[part].y += sign * y
  }
  for (const { part, against, force_N } of picture.pins) {
    add(part, force_N, 1)
    add(against, force_N, -1)
  }
  for (const { stop, force_N } of picture.stops) {
    add(design.stops[stop].round.part, force_N, 1)
    add(design.stops[stop].against.part, force_N, -1)
  }
  const loadCase = question.kind === 'return' ? undefined : design.loadCases.find(({ id }) => id === question.loadCase)
  for (const [index, { force_N }] of picture.loads.entries()) add(loadCase!.forces[index].part, force_N, 1)
  return sums.slice(1)
}

describe('a posture asked for by its place on the scale', () => {
  it('is the posture of the travel at that place', () => {
    // SOURCE property: one path, asked twice
    for (const posture of travel.postures) {
      const again = postureAt(evaluation, posture.arc_ratio)
      for (const [index, value] of posture.poses.entries()) expect(again.poses[index]).toBeCloseTo(value, 10)
      expect(again.drive).toBeCloseTo(posture.drive, 10)
      expect(again.margins_rad[0]).toBeCloseTo(posture.margins_rad[0], 10)
    }
  })

  it('stays within what was followed', () => {
    expect(postureAt(evaluation, -3).drive).toBeCloseTo(travel.postures[0].drive, 12)
    const far = postureAt(evaluation, 99)
    expect(far.margins_rad[0]).toBeLessThan(0)
    expect(far.arc_ratio).toBeGreaterThan(1)
  })

  it('goes on past closed without a leap', () => {
    // SOURCE property: neighbours on the scale are neighbours in posture
    for (const at of [0.3, 0.999, 1]) {
      const [here, next] = [postureAt(evaluation, at), postureAt(evaluation, at + 1e-6)]
      for (const [index, value] of here.poses.entries()) expect(Math.abs(next.poses[index] - value)).toBeLessThan(1e-3)
    }
  })
})

describe('the picture of the forces', () => {
  it('leaves no force over on any part, for every question along the way', () => {
    // SOURCE property: efforts here are couples, so pins, stop and loads alone balance
    for (const question of questions) {
      for (const arc_ratio of [0, 0.25, 0.5, 0.8, 0.99, 1]) {
        const picture = forcesAt(evaluation, arc_ratio, question)
        expect(picture.why).toBeUndefined()
        const size = Math.max(1, ...picture.pins.map(({ force_N: { x, y } }) => Math.hypot(x, y)))
        for (const { x, y } of leftOver(picture, question)) expect(Math.hypot(x, y) / size).toBeLessThan(1e-9)
      }
    }
  })

  it('of the closed finger with play leaves over no more than the play turns the loads', () => {
    // SOURCE property: the forces are those with play taken up, drawn on the posture without: a degree or two, 2 or 3 %
    const loose = { ...design, parts: shelfFinger({ friction: FRICTION, clearance_mm: 0.01 }).parts }
    const played = evaluate(loose)
    for (const question of questions) {
      const picture = forcesAt(played, 1, question)
      const size = Math.max(1, ...picture.pins.map(({ force_N: { x, y } }) => Math.hypot(x, y)))
      for (const { x, y } of leftOver(picture, question)) expect(Math.hypot(x, y) / size).toBeLessThan(0.03)
    }
  })

  it('has each unloaded link’s line touch the friction circles of both its pins', () => {
    // SOURCE hand (radius of the circle 1.5 sin(atan 0.1) = 1.5 · 0.1 / √1.01 = 0.149256)
    const radius = frictionLever(1.5, FRICTION)
    expect(radius).toBeCloseTo(0.149256, 6)
    let touched = 0
    for (const question of questions) {
      for (const arc_ratio of [0.2, 0.6, 0.97]) {
        const picture = forcesAt(evaluation, arc_ratio, question)
        const largest = Math.max(...picture.pins.map(({ force_N: { x, y } }) => Math.hypot(x, y)))
        for (const { part, through, direction_rad, tension_N } of picture.linkLines) {
          // The distal phalanx hangs on two pins as well, but it is loaded.
          if (design.parts[part].role !== 'link') continue
          if (Math.abs(tension_N) < Math.max(1e-9, 1e-3 * largest)) continue
          for (const pin of picture.pins) {
            if (pin.part !== part && pin.against !== part) continue
            const dx = pin.at.x_mm - through.x_mm
            const dy = pin.at.y_mm - through.y_mm
            const away = Math.abs(dx * Math.sin(direction_rad) - dy * Math.cos(direction_rad))
            // What pushes closed is shown as it rests without friction: the line runs through both pins.
            if (question.kind === 'hold' && question.loadCase === 'push') {
              expect(away).toBeLessThan(1e-9)
              continue
            }
            // The drag of the return's question turns the pin as friction does, so it shifts the line by its torque over the force.
            const drag =
              picture.effort?.unit === 'N·mm per pin' ? picture.effort.value / Math.hypot(pin.force_N.x, pin.force_N.y) : 0
            const nearest = [drag, -drag].map((shift) => Math.abs(away - Math.abs(pin.frictionCircle_mm + shift)))
            // SOURCE property: tangent to the circle, or off it by the drag
            expect(Math.min(...nearest)).toBeLessThan(1e-9)
            if (Math.abs(pin.frictionCircle_mm - radius) < 1e-12) touched++
          }
        }
      }
    }
    // SOURCE property: at the full friction, at twenty ends or more
    expect(touched).toBeGreaterThan(20)
  })

  it('has the link’s line pass the distal phalanx’s pin where friction and drag together hold the phalanx', () => {
    // Letting go, the distal phalanx is loaded by its two pins only, so the force of one passes the other at what resists its turn:
    // on the wrong side of the link’s own circles the line would miss that distance by twice their radius.
    const link = design.parts.length - 1
    const dip = design.pins.findIndex(({ id }) => id === 'dip')
    for (const arc_ratio of [0.3, 0.7, 0.97]) {
      const picture = forcesAt(evaluation, arc_ratio, { kind: 'return' })
      const { through, direction_rad } = picture.linkLines.find(({ part }) => part === link)!
      const pin = picture.pins.find((candidate) => candidate.pin === dip)!
      const dx = pin.at.x_mm - through.x_mm
      const dy = pin.at.y_mm - through.y_mm
      const away = Math.abs(dx * Math.sin(direction_rad) - dy * Math.cos(direction_rad))
      const drag = picture.effort!.value / Math.hypot(pin.force_N.x, pin.force_N.y)
      const nearest = [drag, -drag].map((shift) => Math.abs(away - Math.abs(pin.frictionCircle_mm + shift)))
      // SOURCE property: balance of moments of the distal phalanx
      expect(Math.min(...nearest)).toBeLessThan(1e-9)
    }
  })

  it('shows the stop’s force where the stop carries', () => {
    const picture = forcesAt(evaluation, 1, { kind: 'hold', loadCase: 'push' })
    expect(picture.stops).toHaveLength(1)
    expect(picture.effort!.words).toContain('stop')
    const { x, y } = picture.stops[0].force_N
    expect(Math.hypot(x, y)).toBeCloseTo(picture.effort!.value, 9)
    expect(forcesAt(evaluation, 0.9, { kind: 'hold', loadCase: 'push' }).stops).toHaveLength(0)
  })

  it('shows the efforts that the figures state', () => {
    const figure = (id: string) => evaluation.figures.find((one) => one.id === id)!.value
    expect(forcesAt(evaluation, 1, { kind: 'close', loadCase: 'grip' }).effort!.value).toBeCloseTo(
      figure('loadCase.grip.effortToClose') as number,
      6,
    )
  })

  it('cannot be had of a load case that does not exist', () => {
    expect(() => forcesAt(evaluation, 0.5, { kind: 'hold', loadCase: 'none' })).toThrow('none')
  })
})
