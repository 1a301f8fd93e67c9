import { describe, expect, it } from 'vitest'
import type { Drive } from '../design/design.ts'
import { assembled, driven } from '../sketches/assembled.ts'
import { DEG, finger } from '../sketches/finger.ts'
import { seeded } from '../sketches/seeded.ts'
import { distance, driveCoordinate } from './condition.ts'
import { placed } from './mechanism.ts'
import { derivativeOf } from './path.ts'

const travel = { open: -5, closed: 20 }

const DRIVES: Readonly<Record<string, Drive>> = {
  turn: { kind: 'turn', part: 1, against: 0, pin: 0, travel },
  'turn of one part against another': { kind: 'turn', part: 3, against: 2, pin: 2, travel },
  pull: { kind: 'pull', on: { part: 2, at: { x_mm: 10, y_mm: -5 } }, towards: { part: 0, at: { x_mm: -30, y_mm: -12 } }, travel },
  'wrap on the proximal phalanx': {
    kind: 'wrap',
    roller: { part: 1, at: { x_mm: 3, y_mm: 1 } },
    pitchRadius_mm: 7,
    turns: 'clockwise',
    towards: { part: 0, at: { x_mm: -40, y_mm: -15 } },
    travel,
  },
  'wrap on the middle phalanx, led over the proximal': {
    kind: 'wrap',
    roller: { part: 2, at: { x_mm: 0, y_mm: 0 } },
    pitchRadius_mm: 5,
    turns: 'clockwise',
    towards: { part: 1, at: { x_mm: 20, y_mm: -8 } },
    travel,
  },
  'wrap the other way': {
    kind: 'wrap',
    roller: { part: 1, at: { x_mm: 0, y_mm: 0 } },
    pitchRadius_mm: 6,
    turns: 'counter-clockwise',
    towards: { part: 0, at: { x_mm: -35, y_mm: 20 } },
    travel,
  },
}

describe('the coordinate of the drive', () => {
  const { mechanism, posture } = assembled(finger())

  for (const [name, drive] of Object.entries(DRIVES)) {
    it(`has the derivative that small steps show: ${name}`, () => {
      const here = { ...mechanism, design: { ...mechanism.design, drive } }
      const coordinate = driveCoordinate(here, posture)
      const dice = seeded(3)
      for (let trial = 0; trial < 20; trial++) {
        const at = posture.map((value, index) => (index < 3 ? 0 : value + dice.between(-0.2, 0.2)))
        const derivative = derivativeOf(here, at, coordinate)
        for (const [column, slope] of derivative.entries()) {
          const step = (sign: number) => at.map((value, index) => value + (index === column + 3 ? sign * 1e-5 : 0))
          // SOURCE other-method (central differences; the derivative by an angle is over the scale)
          const seen = (coordinate.value(step(1)) - coordinate.value(step(-1))) / 2e-5
          expect(Math.abs(slope * (column % 3 === 2 ? mechanism.scale_mm : 1) - seen)).toBeLessThan(1e-7 * mechanism.scale_mm)
        }
      }
    })
  }

  it('is flexion, counted clockwise from where the two parts are parallel', () => {
    const at = driven({ mechanism, posture }, 30 * DEG)
    // SOURCE hand: the proximal phalanx turned by −30°
    expect(at[5]).toBeCloseTo(-30 * DEG, 12)
    expect(driveCoordinate(mechanism, posture).value(at)).toBeCloseTo(30 * DEG, 12)
    expect(driveCoordinate(mechanism, posture, 10 * DEG).value(at)).toBeCloseTo(20 * DEG, 12)
  })

  it('is the stroke of a pull from the drawn posture', () => {
    const here = { ...mechanism, design: { ...mechanism.design, drive: DRIVES.pull } }
    const coordinate = driveCoordinate(here, posture)
    const at = driven({ mechanism, posture }, 40 * DEG)
    const on = placed(at, 2, { x_mm: 10, y_mm: -5 })
    const before = placed(posture, 2, { x_mm: 10, y_mm: -5 })
    expect(coordinate.value(posture)).toBe(0)
    // SOURCE hand: the distance to the guide grows smaller by the stroke
    const span = ({ x_mm, y_mm }: typeof on) => Math.hypot(x_mm + 30, y_mm + 12)
    expect(coordinate.value(at)).toBeCloseTo(span(before) - span(on), 12)
  })

  for (const name of [
    'wrap on the proximal phalanx',
    'wrap on the middle phalanx, led over the proximal',
    'wrap the other way',
  ]) {
    it(`is the length of cable drawn in: ${name}`, () => {
      const drive = DRIVES[name] as Extract<Drive, { kind: 'wrap' }>
      const here = { ...mechanism, design: { ...mechanism.design, drive } }
      const coordinate = driveCoordinate(here, posture)
      const sense = drive.turns === 'clockwise' ? -1 : 1
      const postures = Array.from({ length: 1201 }, (_, step) => driven({ mechanism, posture }, (step / 1200) * 60 * DEG))
      // SOURCE other-method: the cable is drawn in by what the point of the roller where it leaves moves away from the guide along
      // it; that is summed over 1200 steps (midpoint rule), the leaving point found by Thales' circle over roller and guide.
      let drawnIn = 0
      for (let step = 1; step < postures.length; step++) {
        const [before, after] = [postures[step - 1], postures[step]]
        const middle = before.map((value, index) => (value + after[index]) / 2)
        const leaving = leavingPoint(middle, drive, sense)
        const onRoller = ownPlace(middle, drive.roller.part, leaving)
        const guide = placed(middle, drive.towards.part, drive.towards.at)
        const away = Math.hypot(guide.x_mm - leaving.x_mm, guide.y_mm - leaving.y_mm)
        const [ux, uy] = [(guide.x_mm - leaving.x_mm) / away, (guide.y_mm - leaving.y_mm) / away]
        const moved = (part: number, at: typeof guide) => {
          const [from, to] = [placed(before, part, at), placed(after, part, at)]
          return ux * (to.x_mm - from.x_mm) + uy * (to.y_mm - from.y_mm)
        }
        drawnIn += moved(drive.roller.part, onRoller) - moved(drive.towards.part, drive.towards.at)
      }
      expect(Math.abs(coordinate.value(postures[1200]) - drawnIn)).toBeLessThan(1e-4)
      expect(Math.abs(drawnIn)).toBeGreaterThan(1)
    })
  }
})

/** Of the two points where the roller's circle meets the circle over the way to the guide, the one a pull turns in `sense`. */
function leavingPoint(posture: Float64Array, drive: Extract<Drive, { kind: 'wrap' }>, sense: number) {
  const centre = placed(posture, drive.roller.part, drive.roller.at)
  const guide = placed(posture, drive.towards.part, drive.towards.at)
  const [dx, dy] = [guide.x_mm - centre.x_mm, guide.y_mm - centre.y_mm]
  const d = Math.hypot(dx, dy)
  const r = drive.pitchRadius_mm
  const along = (r * r) / d
  const across = Math.sqrt(r * r - along * along)
  const points = [1, -1].map((side) => ({
    x_mm: centre.x_mm + (along * dx - side * across * dy) / d,
    y_mm: centre.y_mm + (along * dy + side * across * dx) / d,
  }))
  const turning = ({ x_mm, y_mm }: typeof centre) =>
    (x_mm - centre.x_mm) * (guide.y_mm - y_mm) - (y_mm - centre.y_mm) * (guide.x_mm - x_mm)
  return points.find((point) => turning(point) * sense > 0)!
}

function ownPlace(posture: Float64Array, part: number, { x_mm, y_mm }: ReturnType<typeof placed>) {
  const [c, s] = [Math.cos(posture[3 * part + 2]), Math.sin(posture[3 * part + 2])]
  const [dx, dy] = [x_mm - posture[3 * part], y_mm - posture[3 * part + 1]]
  return { x_mm: c * dx + s * dy, y_mm: c * dy - s * dx }
}

describe('the distance of two points', () => {
  it('pushes them apart with a unit force', () => {
    const { mechanism, posture } = assembled(finger())
    const from = { part: 0, at: { x_mm: 0, y_mm: 0 } }
    const to = { part: 1, at: { x_mm: 30, y_mm: 40 } }
    const span = distance(from, to)
    // SOURCE hand: 3-4-5 triangle, and a force through the origin of its part has no moment there
    expect(span.value(posture)).toBeCloseTo(50, 12)
    expect([...derivativeOf(mechanism, posture, span).slice(0, 3)]).toEqual([0.6, 0.8, 0])
  })
})
