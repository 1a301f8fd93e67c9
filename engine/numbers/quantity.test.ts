import { describe, expect, it } from 'vitest'
import { limits } from './limits.ts'
import type { Measured } from './measure.ts'
import { parseQuantity, type QuantityKind } from './quantity.ts'

const length = { length: 1, force: 0, time: 0, angle: 0 }
const names = new Map<string, Measured>([
  ['proximalLength', { value: 44, powers: length }],
  ['inset', { value: 2, powers: length }],
  ['count', { value: 3, powers: { ...length, length: 0 } }],
])

const read = (text: string, kind: QuantityKind) => parseQuantity(text, kind, names)

const degree = Math.PI / 180
const pound = 4.4482216152605

describe('quantities as a workshop types them', () => {
  // SOURCE hand (each value is the arithmetic in its own row; inch 25.4 mm, pound-force 4.4482216152605 N, pound 0.45359237 kg)
  const rows: readonly [string, QuantityKind, number][] = [
    ['3 mm', 'length', 3],
    ['  3mm ', 'length', 3],
    ['1/4 in', 'length', 6.35],
    ['1 1/2 in', 'length', 1.5 * 25.4],
    ['-1/4 in', 'length', -6.35],
    ['0.1181"', 'length', 0.1181 * 25.4],
    ['0.1181″', 'length', 0.1181 * 25.4],
    ['5 thou', 'length', 0.127],
    ['1 ft', 'length', 304.8],
    ['1e-3 m', 'length', 1],
    ['25 µm', 'length', 0.025],
    ['25 μm', 'length', 0.025],
    ['.5 cm', 'length', 5],
    ['7°', 'angle', 7 * degree],
    ['7 deg', 'angle', 7 * degree],
    ['−4°', 'angle', -4 * degree],
    ['2 mrad', 'angle', 0.002],
    ['44 N', 'force', 44],
    ['10 lbf', 'force', 10 * pound],
    ['16 ozf', 'force', pound],
    ['1 kgf', 'force', 9.80665],
    ['12 in·lbf', 'couple', 12 * 25.4 * pound],
    ['12 lbf*in', 'couple', 12 * 25.4 * pound],
    ['12 in lbf', 'couple', 12 * 25.4 * pound],
    ['0.4 N*m', 'couple', 400],
    ['0.4 Nm', 'couple', 400],
    ['0.9 N*mm/deg', 'torsionRate', 0.9 / degree],
    ['2 N/mm', 'springRate', 2],
    ['2 N*mm^-1', 'springRate', 2],
    ['5 ksi', 'pressure', (5000 * pound) / 25.4 ** 2],
    ['71.7 GPa', 'pressure', 71_700],
    ['15 g', 'mass', 0.015],
    ['1 lb', 'mass', 0.45359237],
    ['2.7 g/cm^3', 'density', 2.7e-6],
    ['2.7 g/cm³', 'density', 2.7e-6],
    ['0.098 lb/in^3', 'density', (0.098 * 0.45359237) / 25.4 ** 3],
    ['5 %', 'number', 0.05],
    ['0.12', 'number', 0.12],
  ]
  it.each(rows)('%s', (text, kind, expected) => {
    const value = read(text, kind).value ?? Number.NaN
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-14 * Math.abs(expected))
  })
})

describe('expressions over dimensions', () => {
  // SOURCE hand (proximalLength 44 mm, inset 2 mm, count 3; sin 30° = 1/2, 3-4-5 triangle)
  const rows: readonly [string, QuantityKind, number][] = [
    ['proximalLength - 1 mm', 'length', 43],
    ['proximalLength-1mm', 'length', 43],
    ['3 mm/2', 'length', 1.5],
    ['10 mm / 2 mm', 'number', 5],
    ['proximalLength * count / 2', 'length', 66],
    ['proximalLength * 1/4 in / 1 mm', 'length', 279.4],
    ['-2^2', 'number', -4],
    ['2^3^2', 'number', 512],
    ['2^-1', 'number', 0.5],
    ['(3 mm)^2/1 mm', 'length', 9],
    ['3 mm^2/1 mm', 'length', 3],
    ['sqrt(9 mm^2)', 'length', 3],
    ['(9 mm^2)^(1/2)', 'length', 3],
    ['sin(30 deg)', 'number', 0.5],
    ['cos(60°) + tan(45°)', 'number', 1.5],
    ['asin(1/2)', 'angle', 30 * degree],
    ['acos(0)', 'angle', Math.PI / 2],
    ['atan(1)', 'angle', Math.PI / 4],
    ['atan2(3 mm, 3 mm)', 'angle', Math.PI / 4],
    ['hypot(3 mm, 4 mm)', 'length', 5],
    ['min(3 mm, inset, 1 in)', 'length', 2],
    ['max(3 mm, inset)', 'length', 3],
    ['abs(inset - 3 mm)', 'length', 1],
    ['pi * 2 rad', 'angle', 2 * Math.PI],
    ['proximalLength * 0.5 rad / 1 rad', 'length', 22],
    ['2 kg * 9.80665 m/s^2', 'force', 19.6133],
    ['60 N * proximalLength', 'couple', 2640],
  ]
  it.each(rows)('%s', (text, kind, expected) => {
    expect(read(text, kind).value).toBeCloseTo(expected, 12)
  })
})

describe('what cannot be read is refused with its column', () => {
  // SOURCE hand (columns counted from 1 in the text of each row)
  const rows: readonly [string, QuantityKind, string, number][] = [
    ['', 'length', 'cannot be read', 1],
    ['   ', 'length', 'cannot be read', 4],
    ['3 mm + 2 N', 'length', 'wrong unit', 6],
    ['3 mm + 2', 'length', 'wrong unit', 6],
    ['1-1/2 in', 'length', 'wrong unit', 2],
    ['7', 'angle', 'wrong unit', 1],
    ['3', 'length', 'wrong unit', 1],
    ['10 lb', 'force', 'wrong unit', 1],
    ['0.9 N*mm', 'torsionRate', 'wrong unit', 1],
    ['proximalLength * 0.5 rad', 'length', 'wrong unit', 1],
    ['sin(30)', 'number', 'wrong unit', 1],
    ['asin(1 mm)', 'angle', 'wrong unit', 1],
    ['atan2(1 mm, 1 N)', 'angle', 'wrong unit', 1],
    ['2^proximalLength', 'number', 'wrong unit', 3],
    ['proximalLength^count', 'length', 'wrong unit', 16],
    ['1,5 mm', 'length', 'cannot be read', 2],
    ['1 000 mm', 'length', 'cannot be read', 3],
    ['3 MM', 'length', 'cannot be read', 3],
    ['3 count', 'length', 'cannot be read', 3],
    ['mm', 'length', 'cannot be read', 1],
    ['3 mm)', 'length', 'cannot be read', 5],
    ['(3 mm', 'length', 'cannot be read', 6],
    ['3 mm +', 'length', 'cannot be read', 7],
    ['3 mm inset', 'length', 'cannot be read', 6],
    ['3 mm^0.5', 'length', 'cannot be read', 6],
    ['3 mm^9', 'length', 'cannot be read', 6],
    ['3 mm; 2', 'length', 'cannot be read', 5],
    ['sine(30 deg)', 'number', 'cannot be read', 5],
    ['sin 30', 'number', 'cannot be read', 5],
    ['sin(1 rad, 2 rad)', 'number', 'cannot be read', 1],
    ['hypot(3 mm)', 'length', 'cannot be read', 1],
    ['proximalLength / 1/4 in', 'number', 'cannot be read', 19],
    ['1 3/2 in', 'length', 'cannot be read', 3],
    ['1/0 in', 'length', 'cannot be read', 2],
    ['distalLength', 'length', 'unknown name', 1],
    ['constructor', 'length', 'unknown name', 1],
    ['__proto__', 'length', 'cannot be read', 1],
    ['toString(1)', 'number', 'cannot be read', 9],
    ['1/0', 'number', 'no such number', 2],
    ['3 mm/(inset - 2 mm)', 'number', 'no such number', 5],
    ['sqrt(-1)', 'number', 'no such number', 1],
    ['(-8)^(1/3)', 'number', 'no such number', 5],
    ['asin(2)', 'angle', 'no such number', 1],
    ['atan2(0, 0)', 'angle', 'no such number', 1],
    ['1e999', 'number', 'too large', 1],
    ['1e300 * 1e300', 'number', 'too large', 7],
    ['10^400', 'number', 'too large', 3],
  ]
  it.each(rows)('%s', (text, kind, code, column) => {
    expect(read(text, kind).fault).toMatchObject({ code, column })
  })
})

it('names the way out of the usual mix-ups', () => {
  expect(read('10 lb', 'force').fault?.wayOut).toContain('lbf')
  expect(read('3 mn', 'force').fault?.wayOut).toContain('mN')
  expect(read('proximalLenght', 'length').fault?.wayOut).toContain('proximalLength')
  expect(read('1,5 mm', 'length').fault?.wayOut).toContain('1.5 mm')
  expect(read('1-1/2 in', 'length').fault?.wayOut).toContain('1 1/2 in')
  expect(read('7', 'angle').fault?.wayOut).toContain('7 deg')
})

describe('the limits hold just inside and refuse just outside', () => {
  it('length of the text', () => {
    const text = (characters: number) => `3 mm${' '.repeat(characters - 4)}`
    expect(read(text(limits.expressionLength), 'length').value).toBe(3) // SOURCE hand (3 mm and blanks)
    expect(read(text(limits.expressionLength + 1), 'length').fault?.code).toBe('too large')
  })

  it('depth of brackets, of signs and of powers', () => {
    // The number itself stands on the last level.
    const inside = limits.expressionDepth - 1
    const brackets = (depth: number) => `${'('.repeat(depth)}1${')'.repeat(depth)}`
    expect(read(brackets(inside), 'number').value).toBe(1)
    expect(read(brackets(inside + 1), 'number').fault?.code).toBe('cannot be read')
    expect(read(`${'-'.repeat(inside)}1`, 'number').value).toBe((-1) ** inside)
    expect(read(`${'-'.repeat(inside + 1)}1`, 'number').fault?.code).toBe('cannot be read')
    expect(read(`1${'^1'.repeat(inside)}`, 'number').value).toBe(1)
    expect(read(`1${'^1'.repeat(inside + 1)}`, 'number').fault?.code).toBe('cannot be read')
  })

  it('size of the value', () => {
    expect(read(`${limits.length_mm} mm`, 'length').value).toBe(limits.length_mm)
    expect(read(`${-limits.length_mm} mm`, 'length').value).toBe(-limits.length_mm)
    expect(read(`${limits.length_mm + 1} mm`, 'length').fault?.code).toBe('too large')
    expect(read(`${-limits.length_mm - 1} mm`, 'length').fault?.code).toBe('too large')
  })
})
