import { describe, expect, it } from 'vitest'
import type { FigureUnit } from './figure-names.ts'
import { showFigure, shownFigure, significant, type UnitSystem } from './show.ts'

describe('a figure in the units of the reader', () => {
  // SOURCE hand (rad · 180/π; mm / 25.4; N / 4.4482216152605; N·mm / (25.4 · 4.4482216152605); three significant digits)
  const rows: readonly [number | boolean | string, FigureUnit, UnitSystem, string][] = [
    [0.15215, 'rad', 'metric', '8.72°'],
    [0.15215, 'rad', 'inch', '8.72°'],
    [-0.15215, 'rad', 'metric', '−8.72°'],
    [2.39, 'rad', 'metric', '137°'],
    [1.2e-17, 'rad', 'metric', '0°'],
    [2e-9, 'rad', 'metric', '1.15·10⁻⁷°'],
    [3, 'mm', 'metric', '3.00 mm'],
    [3, 'mm', 'inch', '0.118 in'],
    [44.482216152605, 'N', 'metric', '44.5 N'],
    [44.482216152605, 'N', 'inch', '10.0 lbf'],
    [999.4, 'N·mm', 'metric', '999 N·mm'],
    [1000, 'N·mm', 'metric', '1.00 N·m'],
    [-2850.2, 'N·mm', 'metric', '−2.85 N·m'],
    [1355.8179483314, 'N·mm', 'inch', '12.0 in·lbf'],
    [2500, 'N·mm per pin', 'metric', '2500 N·mm per pin'],
    [112.98482902762, 'N·mm per pin', 'inch', '1.00 in·lbf per pin'],
    [736.3, 'MPa', 'metric', '736 MPa'],
    [68.94757293168, 'MPa', 'inch', '10.0 ksi'],
    [0.3, '1', 'inch', '0.300'],
    [true, 'yes or no', 'metric', 'yes'],
    [false, 'yes or no', 'metric', 'no'],
    ['stop', 'words', 'metric', 'stop'],
  ]
  it.each(rows)('%s in %s, %s', (value, unit, system, text) => {
    expect(showFigure(value, unit, system)).toBe(text)
  })

  it('keeps number and unit apart for tables', () => {
    expect(shownFigure(0.15215, 'rad')).toEqual({ number: '8.72', unit: '°' })
    expect(shownFigure(25.4, 'mm', { system: 'inch', digits: 5 })).toEqual({ number: '1.0000', unit: 'in' })
  })
})

describe('significant digits', () => {
  // SOURCE hand (rounded by eye)
  const rows: readonly [number, number, string][] = [
    [0, 3, '0'],
    [-0, 3, '0'],
    [9.996, 3, '10.0'],
    [9.994, 3, '9.99'],
    [0.00012345, 3, '0.000123'],
    [0.000012345, 3, '1.23·10⁻⁵'],
    [123456, 3, '123000'],
    [1.5e12, 3, '1.50·10¹²'],
    [-0.5, 1, '−0.5'],
  ]
  it.each(rows)('%s with %s digits', (value, digits, text) => {
    expect(significant(value, digits)).toBe(text)
  })

  it('stops the program at a number that is none, because no figure may be one', () => {
    expect(() => significant(Number.NaN, 3)).toThrow('NaN')
    expect(() => showFigure(Number.POSITIVE_INFINITY, 'mm')).toThrow('Infinity')
  })
})
