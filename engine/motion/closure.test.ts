import { describe, expect, it } from 'vitest'
import { KINDS, randomMechanism } from '../sketches/random-mechanism.ts'
import { seeded } from '../sketches/seeded.ts'
import { assemble, drawnPosture } from './assemble.ts'
import { addCouple, addForce, closureDerivative, closureGap, slotAngle } from './closure.ts'
import { mechanismOf } from './mechanism.ts'
import { makeBench } from './settle.ts'
import { slotRoom } from './slot-room.ts'

describe('the closure equations', () => {
  it('are met by a linkage that was drawn closed', () => {
    for (const kind of KINDS) {
      const mechanism = mechanismOf(randomMechanism(kind, 11))
      const gap = new Float64Array(mechanism.rows_count)
      closureGap(makeBench(mechanism), drawnPosture(mechanism.design), undefined, gap)
      // SOURCE property: every hole was put where its pin stands
      for (const value of gap) expect(Math.abs(value)).toBeLessThan(1e-12)
    }
  })

  it('have the derivative that small steps show', () => {
    const dice = seeded(5)
    for (const kind of KINDS) {
      const mechanism = mechanismOf(randomMechanism(kind, 12))
      const { rows_count: rows, columns_count: columns, scale_mm } = mechanism
      const at = assemble(mechanism).posture!.map((value, index) => (index < 3 ? 0 : value + dice.between(-0.3, 0.3)))
      const derivative = new Float64Array(rows * columns)
      closureDerivative(mechanism, at, derivative)
      for (let column = 0; column < columns; column++) {
        const gaps = [1e-5, -1e-5].map((step) => {
          const gap = new Float64Array(rows)
          closureGap(
            makeBench(mechanism),
            at.map((value, index) => value + (index === column + 3 ? step : 0)),
            undefined,
            gap,
          )
          return gap
        })
        for (let row = 0; row < rows; row++) {
          // SOURCE other-method (central differences; the derivative by an angle is over the scale)
          const seen = (gaps[0][row] - gaps[1][row]) / 2e-5
          const stated = derivative[row * columns + column] * (column % 3 === 2 ? scale_mm : 1)
          expect(Math.abs(stated - seen)).toBeLessThan(1e-7 * scale_mm)
        }
      }
    }
  })

  it('count a clearance take-up off their gap', () => {
    const mechanism = mechanismOf(randomMechanism('four-bar', 1))
    const offsets = Float64Array.from({ length: mechanism.rows_count }, (_, row) => row / 100)
    const gap = new Float64Array(mechanism.rows_count)
    closureGap(makeBench(mechanism), drawnPosture(mechanism.design), offsets, gap)
    for (const [row, value] of gap.entries()) expect(value).toBeCloseTo(-row / 100, 12)
  })
})

describe('a generalised force', () => {
  const mechanism = mechanismOf(randomMechanism('four-bar', 1))
  const posture = Float64Array.from([0, 0, 0, 5, 7, 0.3, ...new Array<number>(6).fill(0)])
  const fresh = () => ({ mechanism, posture, out: new Float64Array(mechanism.columns_count), start: 0 })

  it('has the components of the force and its moment about the part’s origin over the scale', () => {
    const row = fresh()
    addForce(row, { part: 1, at: { x_mm: 8, y_mm: 11 }, force: { x: 2, y: 5 } })
    // SOURCE hand: arm (3, 4), moment 3·5 − 4·2 = 7
    expect([...row.out.slice(0, 2)]).toEqual([2, 5])
    expect(row.out[2] * mechanism.scale_mm).toBeCloseTo(7, 12)
  })

  it('takes couples as they are and nothing for the mount', () => {
    const row = fresh()
    addCouple(row, { part: 2, couple: 6 })
    addCouple(row, { part: 0, couple: 6 })
    addForce(row, { part: 0, at: { x_mm: 1, y_mm: 1 }, force: { x: 1, y: 1 } })
    // SOURCE hand
    expect(row.out[5] * mechanism.scale_mm).toBeCloseTo(6, 12)
    expect(row.out.filter((value) => value !== 0)).toHaveLength(1)
  })
})

describe('a slot', () => {
  it('turns with its part and says how far its ends are', () => {
    const mechanism = mechanismOf(randomMechanism('pin in the slot of a moving part', 4))
    const joint = mechanism.joints.find(({ kind }) => kind === 'slot')!
    const posture = drawnPosture(mechanism.design)
    const turned = posture.slice()
    turned[3 * joint.b + 2] += 0.25
    // SOURCE property: the slot is drawn with its middle on the pin and 1000 mm long; it turns as its part does
    expect(slotAngle(turned, joint) - slotAngle(posture, joint)).toBeCloseTo(0.25, 12)
    expect(slotRoom(posture, joint)).toBeCloseTo(500, 9)
    const along = slotAngle(posture, joint)
    posture[3 * joint.b] += 20 * Math.cos(along)
    posture[3 * joint.b + 1] += 20 * Math.sin(along)
    // SOURCE hand: 500 − 20, and 510 further on 10 past the end
    expect(slotRoom(posture, joint)).toBeCloseTo(480, 9)
    posture[3 * joint.b] += 490 * Math.cos(along)
    posture[3 * joint.b + 1] += 490 * Math.sin(along)
    expect(slotRoom(posture, joint)).toBeCloseTo(-10, 9)
  })
})
