import { expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { sentence } from './sentence.ts'
import { documentText } from './test-support/full-document.ts'

it('says file, place, what was found, what is needed, and the way out', () => {
  const { problems = [] } = readDesign(documentText({ 'pins.mcp.diameter': '3' }))
  expect(problems.map((problem) => sentence('designs/crane.json', problem))).toEqual([
    'designs/crane.json:1 › pins.mcp.diameter: “3”, at column 1 a plain number. Needed: a length, such as 3 mm. Give it a unit, such as 3 mm.',
  ])
})

it('leaves out what there is not', () => {
  const problem = { code: 'x', place: '', found: 'nothing', needed: 'a file' }
  expect(sentence('a.json', problem)).toBe('a.json: nothing. Needed: a file.')
  expect(sentence('', { ...problem, place: 'pins' })).toBe('pins: nothing. Needed: a file.')
  expect(sentence('', problem)).toBe('nothing. Needed: a file.')
  expect(sentence('', { ...problem, line: 7, place: 'pins' })).toBe('line 7 › pins: nothing. Needed: a file.')
})

it('does not let a garbled text speak to the terminal', () => {
  const { problems = [] } = readDesign(
    documentText({ 'pins.mcp.diameter': '3 \u001b[31m mm', '\u001b[2J': 1, title: 'a\u202eb' }),
  )
  const told = problems.map((problem) => sentence('', problem)).join('\n')
  expect(problems.length).toBeGreaterThan(0)
  expect([...told].filter((letter) => letter !== '\n' && /[\p{Cc}\p{Cf}]/u.test(letter))).toEqual([])
})

it('shortens a long paste', () => {
  const { problems = [] } = readDesign(documentText({ 'parts.middle.role': 'x'.repeat(10_000) }))
  expect(sentence('', problems[0]).length).toBeLessThan(300) // SOURCE property (one line of a terminal or two)
})
