import { describe, expect, it } from 'vitest'
import { inch_mm } from '../../numbers/unit.ts'
import { changeDocument } from './change-document.ts'
import { readField, typedChange } from './read-field.ts'
import { exampleText } from './test-support/example-texts.ts'

const heron = exampleText('heron')
const baseX = ['parts', 'mount', 'holes', 'base', 'x']

describe('while something is typed into a field', () => {
  it('a quarter inch is read as 6.35 mm', () => {
    // SOURCE standard ISO 80000-3 (an inch is 25.4 mm), hence a quarter is 6.35 mm
    expect(readField(heron, baseX, '1/4 in')).toEqual({ read: { value: inch_mm / 4, unit: 'mm' }, problems: [] })
  })

  it('an expression is read with the dimensions of the file', () => {
    // SOURCE hand (44 − 37.5 = 6.5)
    expect(readField(heron, baseX, 'proximalLength - 37.5 mm')).toEqual({ read: { value: 6.5, unit: 'mm' }, problems: [] })
  })

  it.each([
    ['a misspelt unit', '1/4 inn', 'cannot be read'],
    ['a unit of another kind', '6 N', 'wrong unit'],
    ['a name that is not there', 'proximalLenght - 1 mm', 'unknown name'],
    ['nothing', '', 'cannot be read'],
    ['a length beyond any hand', '11 m', 'too large'],
  ])('%s has its problem there and no reading', (_, typed, code) => {
    const { read, problems } = readField(heron, baseX, typed)
    expect(read).toBeUndefined()
    expect(problems).toMatchObject([{ code, place: 'parts.mount.holes.base.x' }])
  })

  it('a pin too thick for its holes is read, and the holes that it does not fit are named', () => {
    const { read, problems } = readField(heron, ['pins', 'mcp', 'diameter'], '4 mm')
    expect(read?.value).toBe(4) // SOURCE hand (as typed)
    expect(problems.map(({ place }) => place)).toEqual(['pins.mcp.joins.0', 'pins.mcp.joins.1'])
  })

  it('problems that the file has elsewhere are not said again', () => {
    const broken = heron.replace('"3.43 mm"', '"3.43 kg"')
    expect(readField(broken, baseX, '6 mm').problems).toEqual([])
    expect(readField(broken, baseX, '6 kg').problems).toMatchObject([{ place: 'parts.mount.holes.base.x' }])
  })

  it('a choice takes names that are there, and no others', () => {
    expect(readField(heron, ['pins', 'mcp', 'fixedIn'], 'proximal').problems).toEqual([])
    expect(readField(heron, ['pins', 'mcp', 'fixedIn'], 'distal').problems).toMatchObject([{ code: 'wrong value' }])
    expect(readField(heron, ['parts', 'topLink', 'role'], 'lever').problems).toMatchObject([{ place: 'parts.topLink.role' }])
  })

  it('yes or no takes nothing else', () => {
    expect(readField(heron, ['requirements', 'letsGo', 'is'], 'no').problems).toEqual([])
    expect(readField(heron, ['requirements', 'letsGo', 'is'], 'maybe').problems).toMatchObject([{ needed: 'yes or no' }])
  })

  it('a field that is not there is our own fault', () => {
    expect(() => readField(heron, ['parts', 'mount', 'holes', 'gone', 'x'], '1 mm')).toThrow('no field at')
    expect(() => typedChange('{', ['title'], 'x')).toThrow('no JSON')
  })
})

describe('what is typed is stored', () => {
  const stored = (place: readonly string[], typed: string) => changeDocument(heron, [typedChange(heron, place, typed)])

  it('as typed: a quantity with its unit, not its reading', () => {
    expect(stored(baseX, '1/4 in')).toBe(heron.replace('"x": "6.47 mm"', '"x": "1/4 in"'))
  })

  it('as a number where JSON spells it so, as text where it does not', () => {
    const place = ['friction', 'filmed pin on shelf', 'rest', 'most']
    expect(stored(place, '0.2')).toBe(heron.replace('"most": 0.18', '"most": 0.2'))
    expect(stored(place, '0.20')).toBe(heron.replace('"most": 0.18', '"most": "0.20"'))
    expect(stored(place, '20 %')).toBe(heron.replace('"most": 0.18', '"most": "20 %"'))
  })

  it('as true or false for yes or no', () => {
    expect(stored(['requirements', 'letsGo', 'is'], 'no')).toBe(
      heron.replace('"return.letsGo", "is": true', '"return.letsGo", "is": false'),
    )
  })

  it('by leaving out what may be left out, when nothing is typed', () => {
    expect(stored(['springs', 'return', 'ownFriction'], '')).toBe(heron.replace(', "ownFriction": "5 %"', ''))
    expect(stored(['stops', 'shelf', 'gap'], ' ')).toBe(heron)
  })

  it('behind the last of a list, in its place, or as the first of a list that was left out', () => {
    const masked = (part: string, index: number, typed: string) => stored(['parts', part, 'masked', index] as never, typed)
    expect(masked('mount', 1, 'holes.mcp')).toBe(heron.replace('["threads"]', '["threads", "holes.mcp"]'))
    expect(masked('mount', 0, 'threads.rear')).toBe(heron.replace('["threads"]', '["threads.rear"]'))
    expect(masked('mount', 0, '')).toBe(heron.replace('["threads"]', '[]'))
    expect(JSON.parse(masked('middle', 0, 'outline')).parts.middle.masked).toEqual(['outline'])
    expect(masked('middle', 0, '')).toBe(heron)
  })

  it('where it was left out, at the end of its thing', () => {
    expect(stored(['springs', 'return', 'ownFriction'], '5 %')).toBe(heron)
    expect(stored(['stops', 'shelf', 'gap'], '0.1 mm')).toBe(
      heron.replace('"friction": "filmed pin on shelf"\n', '"friction": "filmed pin on shelf",\n      "gap": "0.1 mm"\n'),
    )
  })
})
