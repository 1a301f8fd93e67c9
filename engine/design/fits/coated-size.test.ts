import { describe, expect, it } from 'vitest'
import type { Coating } from '../design.ts'
import { readDesign } from '../read-design.ts'
import { type Changes, documentText } from '../test-support/full-document.ts'
import { beforeCoating, changeOfSize, changePerThickness } from './coated-size.ts'

const inch_mm = 25.4

function coating(given: Partial<Coating>): Coating {
  return { name: 'x', thickness: { least_mm: 0.01, most_mm: 0.02 }, inward_ratio: 0, bore_ratio: 1, source: 'x', ...given }
}

/** Of one thickness in inches, or from one to another. */
const thick = (least_in: number, most_in = least_in) => ({
  thickness: { least_mm: least_in * inch_mm, most_mm: most_in * inch_mm },
})

describe('what a coating does to a size', () => {
  it('half of a hard coat grows inward: a shaft grows by its thickness, and by twice of it when plated', () => {
    // SOURCE trade (guidance of a supplier, read: 0.002 in of hard coat on a shaft add 0.002 in, plating would add 0.004 in)
    expect(changeOfSize(coating({ ...thick(0.002), inward_ratio: 0.5 }), 'pin').most_mm / inch_mm).toBeCloseTo(0.002, 12)
    expect(changeOfSize(coating(thick(0.002)), 'pin').most_mm / inch_mm).toBeCloseTo(0.004, 12)
  })

  it('a hole loses 0.4 thousandths to 0.6 of type II, and 1.5 to 1.5 of type III', () => {
    // SOURCE trade (note of a supplier, read: 2·0.6/3 and 2·1.5/2)
    expect(changeOfSize(coating({ ...thick(0.0006), inward_ratio: 2 / 3 }), 'hole').least_mm / inch_mm).toBeCloseTo(-0.0004, 12)
    expect(changeOfSize(coating({ ...thick(0.0015), inward_ratio: 0.5 }), 'hole').least_mm / inch_mm).toBeCloseTo(-0.0015, 12)
  })

  it('a bore gets its share, and a pin all of it', () => {
    // SOURCE hand (2 · 0.8 of a thickness off the hole, 2 onto the pin)
    expect(changePerThickness(coating({ bore_ratio: 0.8 }), 'hole')).toBeCloseTo(-1.6, 12)
    expect(changePerThickness(coating({ bore_ratio: 0.8 }), 'pin')).toBe(2)
  })

  it('a thread of 60° gains four times the thickness on its pitch diameter', () => {
    // SOURCE hand (a flank is moved by t along its normal, which stands at 30° to the axis: t / sin 30° = 2 t on either side)
    expect(changePerThickness(coating({}), 'outer thread')).toBeCloseTo(2 / Math.sin(Math.PI / 6), 12)
    expect(changePerThickness(coating({}), 'inner thread')).toBeCloseTo(-2 / Math.sin(Math.PI / 6), 12)
  })
})

describe('sizes before coating', () => {
  // A shaft of 1.500 in, + 0.001 − 0, finished, that gains 0.0009 to 0.0011 in on each surface.
  const finished = { lower_mm: 0, upper_mm: 0.001 * inch_mm }
  const plated = changeOfSize(coating(thick(0.0009, 0.0011)), 'pin')

  it('are 1.4982 to 1.4988 in for the shaft of the example, not the 1.498 + 0.0008 that is printed with it', () => {
    const { deviations } = beforeCoating(finished, plated)
    // SOURCE trade (page of a supplier, read, whose answer is wrong at its low end: 1.498 + 2 · 0.0009 = 1.4998 < 1.500)
    expect([deviations?.lower_mm, deviations?.upper_mm].map((mm) => 1.5 + Number(mm) / inch_mm)).toEqual([
      expect.closeTo(1.4982, 9),
      expect.closeTo(1.4988, 9),
    ])
    // SOURCE hand (the printed lower limit with the thinnest batch falls short of the finished limit)
    expect(-0.002 * inch_mm + plated.least_mm).toBeLessThan(finished.lower_mm)
    expect(Number(deviations?.lower_mm)).toBeGreaterThan(-0.002 * inch_mm)
  })

  it('give the finished limits with the thinnest and with the thickest batch, for pins and for holes', () => {
    // SOURCE property (the ends of the window, coated by the batch that is worst for each, are the finished limits)
    for (const surface of ['pin', 'hole', 'outer thread', 'inner thread'] as const) {
      const change = changeOfSize(coating({ inward_ratio: 0.5, bore_ratio: 0.7 }), surface)
      const { deviations } = beforeCoating({ lower_mm: -0.03, upper_mm: 0.04 }, change)
      expect(Number(deviations?.lower_mm) + change.least_mm).toBeCloseTo(-0.03, 12)
      expect(Number(deviations?.upper_mm) + change.most_mm).toBeCloseTo(0.04, 12)
    }
  })

  it('are refused with the numbers where the coating takes up more than the tolerance', () => {
    // SOURCE hand (the change runs over 0.4 thousandths of an inch = 10.16 µm, from 45.72 to 55.88 µm)
    const { fault } = beforeCoating({ lower_mm: 0, upper_mm: 0.0101 }, plated)
    expect(fault).toMatchObject({
      found: 'a tolerance of 10.1 µm on a size that its coating changes by 45.72 to 55.88 µm',
      needed: 'a tolerance of more than 10.16 µm',
    })
    expect(beforeCoating({ lower_mm: 0, upper_mm: 0.01016 }, plated).fault).toBeUndefined()
  })
})

describe('a document', () => {
  const refused = (changes: Changes) =>
    (readDesign(documentText(changes)).problems ?? []).map(({ place, code }) => `${place}: ${code}`)
  const thickness = (from: string, to: string) => ({ 'coatings.thin film.thickness': { from, to } })

  it('with a film that leaves nothing of a pin’s tolerance is refused', () => {
    // SOURCE hand (h6 on 3 mm is 6 µm; 2 · 3 µm of range are just as much, 2 · 3.1 µm are more)
    expect(refused(thickness('1 um', '4 um'))).toEqual([])
    expect(refused(thickness('1 um', '4.1 um'))).toEqual(['pins.mcp.tolerance: contradiction'])
  })

  it('is refused at the diameter where the tolerance is that of its dimension', () => {
    const changes = { ...thickness('1 um', '4.1 um'), 'pins.mcp.tolerance': undefined }
    expect(refused(changes)).toEqual(['pins.mcp.diameter: contradiction'])
  })

  it('with masked holes is not, and with coated ones is', () => {
    // SOURCE hand (a hard coat in the bore takes 40.6 to 61.0 µm off the diameter: more than the 12 µm of H7 and of ± 6 µm)
    const open = { 'parts.proximal.masked': undefined }
    expect(refused({})).toEqual([])
    expect(refused(open)).toEqual(
      ['mcp.tolerance', 'pip.diameter', 'top.diameter'].map((hole) => `parts.proximal.holes.${hole}: contradiction`),
    )
    // SOURCE property (a hole that is masked by its name gains no coating, the others do)
    expect(refused({ 'parts.proximal.masked': ['holes.pip', 'holes.top'] })).toEqual([
      'parts.proximal.holes.mcp.tolerance: contradiction',
    ])
  })
})
