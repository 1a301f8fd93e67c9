import { describe, expect, it } from 'vitest'
import type { Change } from './change.ts'
import { changeDocument } from './change-document.ts'

const text = `{
  "a": { "x": "1 mm",   "y": 0.10 },
  "list": ["p", "q"],
  "things": {
    "one": { "x": "2 mm" },
    "two": { "x": "3 mm" }
  },
  "empty": {}
}
`

interface Row {
  readonly says: string
  readonly change: Change
  readonly from: string
  readonly to: string
}

// SOURCE hand (the text with the words in question written anew)
const rows: readonly Row[] = [
  {
    says: 'a value is written over, the blanks beside it stay',
    change: { kind: 'set', place: ['a', 'x'], value: '1/4 in' },
    from: '"x": "1 mm",   "y"',
    to: '"x": "1/4 in",   "y"',
  },
  {
    says: 'a new key goes to the end of its line',
    change: { kind: 'set', place: ['a', 'z'], value: '7 mm' },
    from: '"y": 0.10 }',
    to: '"y": 0.10, "z": "7 mm" }',
  },
  {
    says: 'a new thing gets a line of its own where its neighbours have one',
    change: { kind: 'set', place: ['things', 'three'], value: { x: '4 mm', at: ['1 mm', '2 mm'] } },
    from: '"two": { "x": "3 mm" }\n',
    to: '"two": { "x": "3 mm" },\n    "three": { "x": "4 mm", "at": ["1 mm", "2 mm"] }\n',
  },
  {
    says: 'the first key of an empty object stands in it',
    change: { kind: 'set', place: ['empty', 'k'], value: true },
    from: '"empty": {}',
    to: '"empty": { "k": true }',
  },
  {
    says: 'the place behind the last of a list adds to it',
    change: { kind: 'set', place: ['list', 2], value: 'r' },
    from: '["p", "q"]',
    to: '["p", "q", "r"]',
  },
  {
    says: 'the first thing goes with the comma behind it',
    change: { kind: 'remove', place: ['things', 'one'] },
    from: '    "one": { "x": "2 mm" },\n',
    to: '',
  },
  {
    says: 'the last thing goes with the comma before it',
    change: { kind: 'remove', place: ['things', 'two'] },
    from: ',\n    "two": { "x": "3 mm" }',
    to: '',
  },
  {
    says: 'a key gets another name where it stands',
    change: { kind: 'rename', place: ['things', 'one'], to: 'first' },
    from: '"one": {',
    to: '"first": {',
  },
  { says: 'what is not there is removed by doing nothing', change: { kind: 'remove', place: ['a', 'w'] }, from: '', to: '' },
  {
    says: 'a number that is set to itself keeps its spelling',
    change: { kind: 'set', place: ['a', 'y'], value: 0.1 },
    from: '0.10',
    to: '0.10',
  },
]

describe('in a text that somebody laid out', () => {
  it.each(rows)('$says', ({ change, from, to }) => {
    expect(text).toContain(from)
    expect(changeDocument(text, [change])).toBe(text.replace(from, to))
  })

  it('the only thing leaves empty brackets', () => {
    const changes: Change[] = [
      { kind: 'remove', place: ['things', 'one'] },
      { kind: 'remove', place: ['things', 'two'] },
    ]
    expect(changeDocument(text, changes)).toContain('"things": {}')
  })

  it('a long thing is broken into lines that are indented', () => {
    const value = { text: 'a'.repeat(60), more: 'b'.repeat(60) }
    const changed = changeDocument(text, [{ kind: 'set', place: ['things', 'long'], value }])
    expect(changed).toContain(`    "long": {\n      "text": "${value.text}",\n      "more": "${value.more}"\n    }`)
  })
})

describe('a place that nobody can have offered is our own fault', () => {
  it.each<[string, Change]>([
    ['no owner', { kind: 'set', place: ['gone', 'x'], value: 1 }],
    ['a key of a text', { kind: 'set', place: ['a', 'x', 'z'], value: 1 }],
    ['a hole in a list', { kind: 'set', place: ['list', 5], value: 'r' }],
    ['a name in a list', { kind: 'set', place: ['list', 'x'], value: 'r' }],
    ['a number as key', { kind: 'set', place: ['a', 3], value: 'r' }],
    ['the whole without a place', { kind: 'remove', place: [] }],
    ['a key to rename that is not there', { kind: 'rename', place: ['a', 'w'], to: 'v' }],
  ])('%s', (_, change) => {
    expect(() => changeDocument(text, [change])).toThrow(/ at | change|rename/)
  })

  it('a text that is no JSON', () => {
    expect(() => changeDocument('{ "a": ', [{ kind: 'remove', place: ['a'] }])).toThrow('end of the file')
  })
})
