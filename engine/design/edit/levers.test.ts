import { describe, expect, it } from 'vitest'
import { changeDocument } from './change-document.ts'
import { type Handle, type Lever, leversOf, pulled } from './levers.ts'

const document = {
  dimensions: {
    length: { value: '42.108 mm', tolerance: 'h6' },
    other: 'length',
    short: '-1.5 mm',
    twice: 'length * 2',
    turn: '7 deg',
  },
  x: ['45.13 mm', 'length', 'other', 'twice', '1/4 in', '0.25 in', '−3 mm', 'length - 1 mm', '4 cm', '1 mm + 1 mm'],
  turns: ['turn', '90°', '0.5 rad'],
}
const text = JSON.stringify(document)
const at = (index: number): Handle => ({ place: ['x', index], kind: 'length' })
const turn = (index: number): Handle => ({ place: ['turns', index], kind: 'angle' })

function lever(handle: Handle): Lever {
  const found = leversOf(text)(handle)
  if (!('place' in found)) throw new Error(`bound by ${found.expression}`)
  return found
}

const moved = (handle: Handle, by: number) => {
  const change = pulled(lever(handle), by)
  return change.kind === 'set' ? change.value : undefined
}

describe('a number that is typed', () => {
  it('moves where it stands, in its own unit, with at least the decimals that it had', () => {
    // SOURCE hand (sums by eye; a tenth of a millimetre is 0.0039 in)
    expect(moved(at(0), 0.1)).toBe('45.23 mm')
    expect(moved(at(0), 0.17)).toBe('45.30 mm')
    expect(moved(at(5), 0.1)).toBe('0.2539 in')
    expect(moved(at(6), 0.1)).toBe('-2.9 mm')
    expect(moved(at(8), 0.1)).toBe('4.01 cm')
    expect(moved(at(4), 0.1)).toBe('0.2539 in')
  })

  it('never becomes less than nothing by rounding', () => {
    expect(moved(at(6), 3)).toBe('0 mm')
    expect(moved(at(6), 2.999)).toBe('0 mm')
  })

  it('of an angle moves by tenths of a degree', () => {
    // SOURCE hand (a degree is π/180)
    expect(moved(turn(0), Math.PI / 180)).toBe('8 deg')
    expect(moved(turn(1), -Math.PI / 1800)).toBe('89.9 °')
    expect(moved(turn(2), 0.01)).toBe('0.51 rad')
  })
})

describe('a name that is typed', () => {
  it('moves the dimension of that name and leaves the rest of it', () => {
    const found = lever(at(1))
    expect(found).toMatchObject({ place: ['dimensions', 'length', 'value'], dimension: 'length' })
    const after = JSON.parse(changeDocument(text, [pulled(found, 0.1)]))
    // SOURCE hand (42.108 + 0.1)
    expect(after).toEqual({
      ...document,
      dimensions: { ...document.dimensions, length: { value: '42.208 mm', tolerance: 'h6' } },
    })
  })

  it('of a dimension that has another’s name leads on to that', () => {
    expect(lever(at(2)).place).toEqual(['dimensions', 'length', 'value'])
  })
})

describe('what cannot be moved by hand', () => {
  it('is an expression; it names the dimensions that can be changed', () => {
    expect(leversOf(text)(at(7))).toEqual({ expression: 'length - 1 mm', dimensions: ['length'] })
    expect(leversOf(text)(at(3))).toEqual({ expression: 'length * 2', dimensions: ['length'] })
    expect(leversOf(text)(at(9))).toEqual({ expression: '1 mm + 1 mm', dimensions: [] })
  })

  it('is a place without anything', () => {
    expect(leversOf(text)({ place: ['x', 99], kind: 'length' })).toEqual({ expression: '', dimensions: [] })
  })
})
