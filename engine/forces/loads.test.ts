import { describe, expect, it } from 'vitest'
import type { Design, Spring } from '../design/design.ts'
import { dot } from '../numbers/row.ts'
import { DEG } from '../sketches/finger.ts'
import { atDrive, framesOf, scene } from '../sketches/force-scene.ts'
import { fourBar } from '../sketches/linkages.ts'
import { returnSpring, shelfFinger } from '../sketches/shelf-finger.ts'
import { oneFriction } from '../sketches/sketch.ts'
import { effortToClose, effortToHold, portRow } from './effort.ts'
import { addWorstWeight, forceBench } from './force-bench.ts'
import { emptyRow, powerIn } from './force-frame.ts'
import { openingPort } from './letting-go.ts'
import { fillWeight, springAction } from './loads.ts'
import { returnReserve } from './return-reserve.ts'

const NOTHING = { addLoads: () => {} }

describe('springs', () => {
  it('of torsion give preload and rate times the flexion since drawn', () => {
    const here = scene({ ...shelfFinger(), springs: [{ ...returnSpring(60), rate_Nmm_rad: 40 } as Spring] })
    const [spring] = here.mechanism.design.springs
    const { posture } = atDrive(here, 30 * DEG)
    // SOURCE hand (60 + 40 · 30 π / 180 = 80.94395)
    expect(springAction(spring, posture, here.drawn)).toBeCloseTo(80.94395, 5)
  })

  it('of tension pull only when long, of compression push only when short', () => {
    const ends = { from: { part: 0, at: { x_mm: 0, y_mm: 0 } }, to: { part: 1, at: { x_mm: 30, y_mm: 0 } } }
    const tension = { id: 't', kind: 'tension', ...ends, rate_N_mm: 2, initial_N: 5, ownFriction_ratio: 0 } as const
    const posture = new Float64Array(6)
    const pull = (freeLength_mm: number) => springAction({ ...tension, freeLength_mm }, posture, posture)
    const push = (freeLength_mm: number) =>
      springAction({ ...tension, kind: 'compression', initial_N: 0, freeLength_mm }, posture, posture)
    // SOURCE hand (30 mm apart: 5 + 2 · (30 − 26) = 13; 2 · (30 − 34) = −8, which pushes)
    expect(pull(26)).toBe(13)
    expect(pull(30)).toBe(0)
    expect(pull(34)).toBe(0)
    expect(push(34)).toBe(-8)
    expect(push(30)).toBe(0)
    expect(push(26)).toBe(0)
  })

  it('give less when they drive the motion and ask more when they are wound up, by their own friction', () => {
    const reserve = (ratio: number) => {
      const here = scene({ ...shelfFinger({ friction: 0.1 }), springs: [returnSpring(100, ratio)] })
      return returnReserve(here.bench, framesOf(here, atDrive(here, 40 * DEG)).opening)!
    }
    // SOURCE property: without drag and weight the reserve is in proportion to the spring
    expect(reserve(0.05).fromRest!.amplitude / reserve(0).fromRest!.amplitude).toBeCloseTo(0.95, 9)
    expect(reserve(0.05).free_Nmm / reserve(0).free_Nmm).toBeCloseTo(0.95, 12)
    const here = scene({ ...shelfFinger(), springs: [returnSpring(100, 0.05)] })
    const { closing } = framesOf(here, atDrive(here, 40 * DEG))
    const port = portRow(here.bench, closing, { kind: 'drive' })
    // SOURCE hand (the spring sits where the drive turns: 100 · 1.05)
    expect(effortToClose(here.bench, closing, { port, ...NOTHING })!.amplitude).toBeCloseTo(105, 9)
  })

  it('ask for the same effort however many share the work', () => {
    const effort = (count: number) => {
      const springs = Array.from({ length: count }, (_, index) => ({ ...returnSpring(100 / count, 0.05), id: `s${index}` }))
      const here = scene({ ...shelfFinger({ friction: 0.1 }), springs })
      const { closing } = framesOf(here, atDrive(here, 40 * DEG))
      const port = portRow(here.bench, closing, { kind: 'drive' })
      return effortToClose(here.bench, closing, { port, ...NOTHING })!.amplitude!
    }
    // SOURCE property: fifty springs side by side, each a fiftieth, are one
    expect(effort(50)).toBeCloseTo(effort(1), 9)
  })

  it('of any kind push by the derivative of their energy', () => {
    // SOURCE other-method: numerical derivative of ½ rate stretch² + initial · stretch along the path
    const ends = { from: { part: 0, at: { x_mm: -10, y_mm: 12 } }, to: { part: 1, at: { x_mm: 20, y_mm: 5 } } }
    const sizes = { freeLength_mm: 25, rate_N_mm: 1.7, initial_N: 3, ownFriction_ratio: 0 }
    const here = scene({ ...shelfFinger(), springs: [{ id: 't', kind: 'tension', ...ends, ...sizes }] })
    const energy = (drive: number) => {
      const { posture } = atDrive(here, drive)
      const c = Math.cos(posture[5])
      const s = Math.sin(posture[5])
      const stretch = Math.hypot(20 * c - 5 * s + 10, 20 * s + 5 * c - 12) - 25
      return 0.5 * 1.7 * stretch ** 2 + 3 * stretch
    }
    const at = 40 * DEG
    const slope = (energy(at + 1e-4) - energy(at - 1e-4)) / 2e-4
    const { opening } = framesOf(here, atDrive(here, at))
    const port = portRow(here.bench, opening, { kind: 'drive' })
    // The wearer gives what the spring takes up: dE = effort · d(drive).
    expect(effortToHold(here.bench, opening, { port, ...NOTHING })!.free).toBeCloseTo(slope, 4)
  })
})

describe('declared drag', () => {
  it('parts hold and close by twice the work it takes', () => {
    const plain = { ...shelfFinger(), springs: [returnSpring(200)] }
    const pins = plain.pins.map((pin, index) => ({ ...pin, drag_Nmm: 0.5 + 0.1 * index }))
    const here = scene({ ...plain, pins })
    const { opening, closing } = framesOf(here, atDrive(here, 40 * DEG))
    const port = portRow(here.bench, opening, { kind: 'drive' })
    const hold = effortToHold(here.bench, opening, { port, ...NOTHING })!.amplitude!
    const close = effortToClose(here.bench, closing, { port, ...NOTHING })!.amplitude!
    // SOURCE property: without friction each way costs Σ T |ω| over the drive's own rate
    const turns = here.bench.room.turns
    const cost = pins.reduce((sum, pin, joint) => sum + pin.drag_Nmm * Math.abs(turns[joint]), 0) / Math.abs(turns[0])
    expect(close - hold).toBeCloseTo(2 * cost, 9)
  })
})

describe('weight', () => {
  const masses = [0.02, 0.03, 0.02, 0.015, 0.004, 0.003]
  function heavy(range: { from_rad: number; to_rad: number }): Design {
    const plain = shelfFinger({ friction: 0.1 })
    const parts = plain.parts.map((part, index) => ({
      ...part,
      mass_kg: masses[index],
      centreOfMass: { x_mm: 10 + index, y_mm: 2 },
    }))
    return { ...plain, parts, weight: range, springs: [returnSpring(60)] }
  }

  it('is taken in the attitude that hinders or helps most, in a whole turn and in a part of one', () => {
    // SOURCE other-method: dense sampling of the range
    for (const [from_deg, to_deg] of [
      [0, 360],
      [-90, 90],
      [200, 260],
      [700, 730],
      [45, 45],
    ]) {
      const here = scene(heavy({ from_rad: from_deg * DEG, to_rad: to_deg * DEG }))
      for (const drive_deg of [5, 40, 70]) {
        for (const frame of Object.values(framesOf(here, atDrive(here, drive_deg * DEG)))) {
          const [forward, upward] = [emptyRow(frame).out, emptyRow(frame).out]
          fillWeight({ forward, upward }, here.bench.masses, frame.room)
          const powers = Array.from({ length: 721 }, (_, step) => {
            const towards_rad = (from_deg + ((to_deg - from_deg) * step) / 720) * DEG
            return Math.cos(towards_rad) * powerIn(frame, forward) + Math.sin(towards_rad) * powerIn(frame, upward)
          })
          const size = Math.max(...powers.map(Math.abs))
          for (const [worst, extreme] of [
            ['helps', Math.max(...powers)],
            ['hinders', Math.min(...powers)],
          ] as const) {
            const row = emptyRow(frame)
            const attitude = addWorstWeight(here.bench, frame, row, worst)!
            expect(attitude).toBeGreaterThanOrEqual(from_deg * DEG - 1e-12)
            expect(attitude).toBeLessThanOrEqual(to_deg * DEG + 1e-12)
            expect(Math.abs(powerIn(frame, row.out) - extreme) / size).toBeLessThan(1e-4)
          }
        }
      }
    }
  })

  it('takes from the return reserve whatever the attitude, and more in a wider range', () => {
    // SOURCE property: a wider range holds a worse attitude
    const reserves = [1, 60, 180, 360].map((width) => {
      const here = scene(heavy({ from_rad: 0, to_rad: width * DEG }))
      return returnReserve(here.bench, framesOf(here, atDrive(here, 50 * DEG)).opening)!.free_Nmm
    })
    for (let step = 1; step < reserves.length; step++) expect(reserves[step]).toBeLessThanOrEqual(reserves[step - 1] + 1e-12)
    const here = scene({ ...heavy({ from_rad: 0, to_rad: 1 }), weight: { from_rad: 0, to_rad: 2 * Math.PI } })
    const lone = scene({ ...shelfFinger({ friction: 0.1 }), springs: [returnSpring(60)] })
    const weightless = returnReserve(lone.bench, framesOf(lone, atDrive(lone, 50 * DEG)).opening)!.free_Nmm
    expect(returnReserve(here.bench, framesOf(here, atDrive(here, 50 * DEG)).opening)!.free_Nmm).toBeLessThan(weightless)
  })
})

describe('a drive that pulls', () => {
  const guide = { part: 0, at: { x_mm: -60, y_mm: 40 } }
  const sizes = { ground: 60, crank: 25, coupler: 55, rocker: 40, drawn_deg: [100, 10, 80] } as const
  const design = (drive: Design['drive']): Design => {
    const plain = fourBar(sizes)
    return { ...plain, drive, pins: plain.pins.map((pin) => ({ ...pin, friction: oneFriction(0.1) })) }
  }
  const pull: Design['drive'] = {
    kind: 'pull',
    on: { part: 1, at: { x_mm: 25, y_mm: 0 } },
    towards: guide,
    travel: { open: 0, closed: 10 },
  }
  const wrap: Design['drive'] = {
    kind: 'wrap',
    roller: { part: 1, at: { x_mm: 0, y_mm: 0 } },
    pitchRadius_mm: 9,
    turns: 'counter-clockwise',
    towards: guide,
    travel: { open: 0, closed: 10 },
  }

  it('does work by its stroke, over a roller by its pitch radius', () => {
    // SOURCE property: power of the unit pull = rate of the stroke
    for (const drive of [pull, wrap]) {
      const here = scene(design(drive))
      const node = atDrive(here, 2)
      const port = portRow(here.bench, framesOf(here, node).closing, { kind: 'drive' })
      const ahead = atDrive(here, 2.001).posture
      const moved = ahead[5] - node.posture[5]
      const rate = dot(port, node.tangent) / (node.tangent[2] / here.mechanism.scale_mm)
      expect(0.001 / moved).toBeCloseTo(rate, 2)
      // SOURCE hand: the roller sits on the crank's own pin and turns counter-clockwise, so its lever is its pitch radius
      if (drive === wrap) expect(rate).toBeCloseTo(9, 9)
    }
  })

  it('cannot open: a cable does not push', () => {
    for (const drive of [pull, wrap]) {
      const here = scene(design(drive))
      const { opening } = framesOf(here, atDrive(here, 2))
      expect(openingPort(here.bench, opening, { kind: 'drive' })).toBeUndefined()
      expect(openingPort(here.bench, opening, { kind: 'couple', part: 3, against: 0 })).toBeDefined()
    }
  })
})

describe('the force bench', () => {
  it('keeps levers of each state and level, and no masses where weight is left out', () => {
    const here = scene(shelfFinger({ friction: 0.12 }))
    const bench = forceBench(here.mechanism, here.drawn, here.drive)
    // SOURCE hand (1.5 sin(atan 0.12) = 1.5 · 0.12 / √1.0144 = 0.178718)
    expect(bench.leversOf('rest', 'most')[0]).toBeCloseTo(0.178718, 6)
    expect(bench.leversOf('rest', 'most')).toBe(bench.leversOf('rest', 'most'))
    expect(bench.masses).toHaveLength(0)
  })
})
