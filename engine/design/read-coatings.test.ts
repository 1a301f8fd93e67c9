import { describe, expect, it } from 'vitest'
import { tableCoatings } from './read-coatings.ts'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

const refused = (changes: Changes) =>
  (readDesign(documentText(changes)).problems ?? []).map(({ place, code }) => `${place}: ${code}`)
const row = (name: string) => tableCoatings.get(name)

describe('the table of coatings', () => {
  it('has a bonded film of 5 to 13 µm that stands on the surface', () => {
    // SOURCE hand (0.0002 in × 25.4 = 5.08 µm, 0.0005 in × 25.4 = 12.7 µm; read on the page of a supplier as 5 to 13 µm)
    expect(row('bonded MoS2 film')?.thickness).toEqual({
      least_mm: expect.closeTo(0.00508, 12),
      most_mm: expect.closeTo(0.0127, 12),
    })
    expect(row('bonded MoS2 film')).toMatchObject({ inward_ratio: 0, bore_ratio: 1 })
  })

  it('has the two cures of type III', () => {
    // SOURCE standard MIL-L-46010E / SAE AS5272, specification text of 1997, read: type III 150 °C for 2 h or 204 °C for 1 h
    expect(row('bonded MoS2 film')?.cure).toEqual({ temperature_C: 150, time_s: 7200 })
    expect(row('bonded MoS2 film, hot cure')?.cure).toEqual({ temperature_C: 204, time_s: 3600 })
  })

  it('has anodic coatings that grow inward', () => {
    // SOURCE standard MIL-A-8625, table of thicknesses, from memory: type II 0.00007 to 0.0010 in, type III nominal 0.002 in ± 20 %
    const [two, three] = [row('anodise, type II'), row('hard anodise')]
    expect(two?.thickness).toEqual({ least_mm: expect.closeTo(0.00007 * 25.4, 12), most_mm: expect.closeTo(0.0254, 12) })
    expect(three?.thickness).toEqual({ least_mm: expect.closeTo(0.04064, 12), most_mm: expect.closeTo(0.06096, 12) })
    // SOURCE trade (guidance of two suppliers, read: half of a hard coat grows inward, two thirds of type II)
    expect([two?.inward_ratio, three?.inward_ratio]).toEqual([2 / 3, 0.5])
  })
})

describe('coatings of a document', () => {
  const { value: design } = readDesign(documentText())

  it('are read with the heat of their cure', () => {
    // SOURCE hand (2 µm ± 25 %; (300 − 32) / 1.8 = 148.889 °C; 90 × 60 = 5400 s)
    expect(design?.pins[0].coating).toEqual({
      name: 'thin film',
      thickness: { least_mm: 0.0015, most_mm: 0.0025 },
      inward_ratio: 0,
      bore_ratio: 0.8,
      cure: { temperature_C: expect.closeTo(148.8889, 4), time_s: 5400 },
      source: 'invented',
    })
  })

  it('are those of parts and of pins, and a part says what is masked', () => {
    const named = (id: string) => design?.parts.find((part) => part.id === id)
    expect(named('middle')?.coating?.name).toBe('own anodise')
    expect(named('middle')?.masked).toBeUndefined()
    expect(named('proximal')?.masked).toEqual(['holes'])
    expect(design?.pins[1].coating).toBeUndefined()
  })

  it.each<[string, Changes, string[]]>([
    ['an unknown coating', { 'pins.mcp.coating': 'thin films' }, ['pins.mcp.coating: unknown name']],
    ['one on a part', { 'parts.middle.coating': 'paint' }, ['parts.middle.coating: unknown name']],
    [
      'a row of the table written over',
      { 'coatings.hard anodise': { thickness: { from: '1 µm', to: '2 µm' }, source: 'x' } },
      ['coatings.hard anodise: wrong key'],
    ],
    [
      'the thinner above the thicker',
      { 'coatings.own anodise.thickness': { from: '12 µm', to: '8 µm' } },
      ['coatings.own anodise.thickness: wrong order'],
    ],
    [
      'a thickness below nothing',
      { 'coatings.own anodise.thickness': { from: '-1 µm', to: '8 µm' } },
      ['coatings.own anodise.thickness.from: too small'],
    ],
    [
      'a coating of nothing',
      { 'coatings.own anodise.thickness': { from: '0 µm', to: '0 µm' } },
      ['coatings.own anodise.thickness.to: too small'],
    ],
    [
      'one that may be away',
      { 'coatings.thin film.thickness.within': '100 %' },
      ['coatings.thin film.thickness.within: too large'],
    ],
    [
      'both ways of a range',
      { 'coatings.thin film.thickness.from': '1 µm' },
      ['coatings.thin film.thickness.from: key too many'],
    ],
    ['one that only grows inward', { 'coatings.own anodise.inward': 1 }, ['coatings.own anodise.inward: too large']],
    ['more in the bore than outside', { 'coatings.thin film.bore': '101 %' }, ['coatings.thin film.bore: too large']],
    ['more strength than before', { 'coatings.thin film.keepsFatigue': 1.1 }, ['coatings.thin film.keepsFatigue: too large']],
    ['none in the bore', { 'coatings.thin film.bore': 0 }, ['coatings.thin film.bore: too small']],
    [
      'a temperature without its unit',
      { 'coatings.thin film.cure.temperature': '150' },
      ['coatings.thin film.cure.temperature: cannot be read'],
    ],
    ['a cure of frost', { 'coatings.thin film.cure.temperature': '31 °F' }, ['coatings.thin film.cure.temperature: wrong value']],
    ['a cure of ten days', { 'coatings.thin film.cure.time': '240 h' }, ['coatings.thin film.cure.time: wrong value']],
    ['a mask without a coating', { 'parts.mount.masked': ['holes'] }, ['parts.mount.coating: missing']],
    ['a mask of something else', { 'parts.middle.masked': ['pads'] }, ['parts.middle.masked.0: wrong value']],
    ['a mask of a hole that there is not', { 'parts.middle.masked': ['holes.tip'] }, ['parts.middle.masked.0: unknown name']],
    ['a mask of threads where no screw is', { 'parts.middle.masked': ['threads'] }, ['parts.middle.masked.0: unknown name']],
    ['a third flat side', { 'parts.middle.masked': ['faces.left'] }, ['parts.middle.masked.0: unknown name']],
    ['a mask of one face twice', { 'parts.middle.masked': ['outline', 'outline'] }, ['parts.middle.masked.1: too many']],
    [
      'a mask of a hole beside that of all',
      { 'parts.proximal.masked': ['holes.mcp', 'holes'] },
      ['parts.proximal.masked.0: too many'],
    ],
  ])('refuse %s', (_, changes, problems) => {
    expect(refused(changes)).toEqual(problems)
  })

  it('reach to the bounds', () => {
    expect(
      refused({
        'coatings.thin film.bore': 1,
        'coatings.thin film.cure.temperature': '32 °F',
        'coatings.thin film.cure.time': '168 h',
      }),
    ).toEqual([])
  })
})
