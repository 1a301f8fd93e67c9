import { describe, expect, it } from 'vitest'
import { readDesign } from '../read-design.ts'
import { changeDocument } from './change-document.ts'
import { dependents } from './dependents.ts'
import { expressionRenamed } from './expression-renamed.ts'
import { renamed } from './renamed.ts'
import { exampleText } from './test-support/example-texts.ts'
import { thingsOf } from './test-support/things-of.ts'

const heron = exampleText('heron')

describe.each(['heron', 'crane'])('every thing of %s under another name', (name) => {
  const text = exampleText(name)
  it('leaves a file without problems, in which everybody names it so; named back the file is the old one', () => {
    for (const place of thingsOf(JSON.parse(text))) {
      const to = 'quiteAnotherName'
      const there = renamed(text, place, to)
      expect(there.problems, place.join('.')).toBeUndefined()
      const changed = changeDocument(text, there.value ?? [])
      const renamedPlace = [...place.slice(0, -1), to]
      expect(readDesign(changed).problems, place.join('.')).toBeUndefined()
      // SOURCE property (a name is only a name: as many name it as before, and the way back is the way)
      expect(dependents(changed, renamedPlace).length, place.join('.')).toBe(dependents(text, place).length)
      const back = renamed(changed, renamedPlace, String(place.at(-1)))
      expect(changeDocument(changed, back.value ?? []), place.join('.')).toBe(text)
    }
  })
})

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
