import fc from 'fast-check'
import { expect, it } from 'vitest'
import { begun, type History, redone, standing, taken, undone } from './history.ts'

const after = (...texts: readonly string[]): History =>
  texts.slice(1).reduce((history, text) => taken(history, { text, said: `to ${text}` }), begun(texts[0]))

it('goes back and forth without limit', () => {
  // SOURCE property: as many steps back as were taken lead to the first text, as many forth to the last
  fc.assert(
    fc.property(fc.array(fc.string(), { minLength: 1, maxLength: 30 }), (texts) => {
      const history = after(...texts)
      expect(standing(history, 0).text).toBe(texts[0])
      expect(standing(standing(history, 0), history.steps.length)).toEqual(history)
    }),
    { seed: 20261126 },
  )
})

it('stays where nothing is to be undone or done again', () => {
  const history = after('a', 'b')
  expect(redone(history)).toBe(history)
  expect(undone(undone(history))).toEqual(undone(history))
})

it('gives up what waited once something else is done', () => {
  const history = taken(undone(after('a', 'b', 'c')), { text: 'd', said: 'to d' })
  expect(history.steps.map(({ said }) => said)).toEqual(['to b', 'to d'])
  expect(redone(history)).toBe(history)
  expect(undone(history).text).toBe('b')
})

it('says what was done in a line that the store can keep', () => {
  const said = (words: string) => taken(begun('a'), { text: 'b', said: words }).steps[0].said
  expect(said('one\u200b line\n of it ')).toBe('one  line  of it')
  // SOURCE hand (the store takes 300 letters; 298, a blank and the dots are left)
  expect([...said('𝟛'.repeat(301))]).toHaveLength(300)
  expect(said('𝟛'.repeat(300))).toBe('𝟛'.repeat(300))
})

it('takes a deed that changes nothing for no step', () => {
  const history = after('a', 'b')
  expect(taken(history, { text: 'b', said: 'again' })).toBe(history)
})
