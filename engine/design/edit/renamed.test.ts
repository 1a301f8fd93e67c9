import { describe, expect, it } from 'vitest'
import { expressionRenamed } from './expression-renamed.ts'
import { renamed } from './renamed.ts'
import { exampleText } from './test-support/example-texts.ts'

const heron = exampleText('heron')

describe('a name', () => {
  it.each([
    ['taken by another', ['pins', 'dip'], 'pip', 'used twice'],
    ['that is a unit', ['dimensions', 'pinDiameter'], 'mm', 'wrong key'],
    ['with a point', ['parts', 'middle'], 'the.middle', 'wrong key'],
    ['with a minus, for a dimension', ['dimensions', 'pinDiameter'], 'pin-diameter', 'wrong key'],
    ['that is empty', ['stops', 'shelf'], '', 'wrong key'],
    ['that reaches into the language', ['springs', 'return'], '__proto__', 'forbidden key'],
  ])('%s is refused', (_, place, to, code) => {
    const { value, problems } = renamed(heron, place, to)
    expect(value).toBeUndefined()
    expect(problems?.map((problem) => problem.code)).toContain(code)
  })

  it('that it has already changes nothing', () => {
    expect(renamed(heron, ['pins', 'dip'], 'dip')).toEqual({ value: [] })
  })

  it('of something that has none is our own fault', () => {
    expect(() => renamed(heron, ['drive'], 'x')).toThrow('no thing to rename')
    expect(() => renamed(heron, ['pins', 'gone'], 'x')).toThrow('no thing to rename')
  })
})

it('of a screw and of a hole goes into what is masked', () => {
  const text = heron.replace('["threads"]', '["threads.front", "holes.mcp"]')
  const masked = (place: readonly string[]) =>
    renamed(text, place, 'other').value?.find(({ place: [, , key] }) => key === 'masked')
  // SOURCE hand (read off the file)
  expect(masked(['screws', 'front'])).toMatchObject({ place: ['parts', 'mount', 'masked', 0], value: 'threads.other' })
  expect(masked(['parts', 'mount', 'holes', 'mcp'])).toMatchObject({ value: 'holes.other' })
})

it('of a size goes into what its tolerances cost', () => {
  const prices = ['topLinkLength', 'parts.middle.holes.dip.position'].map((size) => ({
    ...{ size, drawn: 11, source: 'Invented for this test.' },
    offers: [{ tolerance: '0.03 mm', price: 8 }],
  }))
  const text = heron.replace('"variation": {', `"variation": {"prices": ${JSON.stringify(prices)},`)
  const priced = (place: readonly string[]) => renamed(text, place, 'other').value?.find(({ place: [, key] }) => key === 'prices')
  // SOURCE hand (read off the text)
  const sizeAt = (index: number) => ['variation', 'prices', index, 'size']
  expect(priced(['dimensions', 'topLinkLength'])).toMatchObject({ place: sizeAt(0), value: 'other' })
  expect(priced(['parts', 'middle'])).toMatchObject({ place: sizeAt(1), value: 'parts.other.holes.dip.position' })
  expect(priced(['parts', 'middle', 'holes', 'dip'])).toMatchObject({ value: 'parts.middle.holes.other.position' })
})

describe('in an expression', () => {
  // SOURCE hand (the name written anew wherever it stands as a whole word that is no unit)
  it.each([
    ['a - a*b + max(a, -a)', 'long - long*b + max(long, -long)'],
    ['ab + b', 'ab + b'],
    ['3 mm·a', '3 mm·long'],
    ['1 1/2 in + a ^ 2 / a', '1 1/2 in + long ^ 2 / long'],
    ['a +', 'a +'],
    ['“a', '“a'],
  ])('%s becomes %s', (typed, expected) => {
    expect(expressionRenamed(typed, { from: 'a', to: 'long' })).toBe(expected)
  })
})
