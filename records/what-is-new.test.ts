// SOURCE hand (histories of a few letters, compared by eye)
import { describe, expect, it } from 'vitest'
import type { Draft, History, Revision } from './store.ts'
import { moment, revisionOfText } from './test-support/store-bench.ts'
import { whatIsNew } from './what-is-new.ts'

const revision = (text: string, index: number): Revision => ({ ...revisionOfText(text), number: index + 1, saved: moment })

/** A draft that appends one letter a step, all of them done. */
const draft = (letters: string, more: Partial<Draft> = {}): Draft => ({
  version: letters.length,
  base: '',
  steps: [...letters].map((letter, at) => ({ splice: { at, removed: '', inserted: letter }, said: letter })),
  position: letters.length,
  text: letters,
  given: null,
  saved: moment,
  ...more,
})
const history = (texts: string, letters?: string | Draft): History => ({
  name: 'heron',
  revisions: [...texts].map(revision),
  ...(letters === undefined ? {} : { draft: typeof letters === 'string' ? draft(letters) : letters }),
})
const newsOf = (here: History, other: History) => {
  const news = whatIsNew(here, other)
  return news && [news.revisions.map(({ number }) => number), news.draft?.text]
}

describe('revisions', () => {
  it.each([
    ['later ones are new', 'a', 'abc', [2, 3]],
    ['the same ones are not', 'ab', 'ab', []],
    ['fewer of them are not', 'ab', 'a', []],
    ['all are where nothing was', '', 'ab', [1, 2]],
  ])('%s', (_what, here, other, numbers) => {
    expect(newsOf(history(here), history(other))).toEqual([numbers, undefined])
  })

  it('have parted where one of the same number is another', () => {
    expect(newsOf(history('ab'), history('ac'))).toBeUndefined()
    expect(newsOf(history('a'), history('bc'))).toBeUndefined()
    const [first] = history('a').revisions
    const later = { name: 'heron', revisions: [{ ...first, saved: '2031-04-05T06:07:08.010Z' } as Revision] }
    expect(newsOf(history('a'), later)).toBeUndefined()
  })
})

describe('a draft', () => {
  it('that goes on is new, with later revisions or without', () => {
    expect(newsOf(history('a', 'x'), history('ab', 'xy'))).toEqual([[2], 'xy'])
    expect(newsOf(history('ab', 'x'), history('a', 'xy'))).toEqual([[], 'xy'])
    expect(newsOf(history('a'), history('a', 'x'))).toEqual([[], 'x'])
  })

  it('that is behind, or is not there, takes the place of none', () => {
    expect(newsOf(history('a', 'xy'), history('ab', 'x'))).toEqual([[2], undefined])
    expect(newsOf(history('a', 'xy'), history('ab'))).toEqual([[2], undefined])
  })

  it('of the same steps is new where it was saved later with other steps done', () => {
    const undone = draft('xy', { position: 1, text: 'x', version: 3 })
    expect(newsOf(history('', 'xy'), history('', undone))).toEqual([[], 'x'])
    expect(newsOf(history('', undone), history('', 'xy'))).toEqual([[], undefined])
  })

  it('has parted where a step or the base is another', () => {
    expect(newsOf(history('a', 'xy'), history('a', 'xz'))).toBeUndefined()
    expect(newsOf(history('a', 'x'), history('ab', draft('x', { base: 'b' })))).toBeUndefined()
    // Saved equally often, and neither knows of what the other took back.
    const undone = draft('xy', { position: 1, text: 'x' })
    expect(newsOf(history('', 'xy'), history('', undone))).toBeUndefined()
  })
})
