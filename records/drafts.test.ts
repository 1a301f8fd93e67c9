// SOURCE hand (versions count the saves of each test)
import { describe, expect, it } from 'vitest'
import { digest } from './digest.ts'
import type { DraftChange, Step } from './store.ts'
import { moment, newStore, revisionOfText } from './test-support/store-bench.ts'

const put = (at: number, removed: string, inserted: string): Step => ({ splice: { at, removed, inserted }, said: 'a change' })
const begin: DraftChange = { version: 0, keep: 0, steps: [put(0, 'ab', 'cd')], position: 1, base: 'ab' }

/** A draft `ab` → `cd` → `ce` at its end, version 2. */
async function begun() {
  const store = await newStore()
  store.keepDraft('heron', begin)
  store.keepDraft('heron', { ...begin, version: 1, keep: 1, steps: [put(1, 'd', 'e')], position: 2 })
  return store
}

describe('a draft', () => {
  it('is read back with its whole history', async () => {
    const store = await begun()
    expect(store.draft('heron')).toEqual({
      version: 2,
      base: 'ab',
      steps: [put(0, 'ab', 'cd'), put(1, 'd', 'e')],
      position: 2,
      text: 'ce',
      given: null,
      saved: moment,
    })
    expect(store.designs()).toEqual([{ name: 'heron', revisions: 0, draft: { version: 2, saved: moment } }])
  })

  it.each([
    [0, 'ab'],
    [1, 'cd'],
    [2, 'ce'],
  ])('taken back to position %i has the text %s, and every step is still there', async (position, text) => {
    const store = await begun()
    store.keepDraft('heron', { ...begin, version: 2, keep: 2, steps: [], position })
    expect(store.draft('heron')).toMatchObject({ text, position, steps: [put(0, 'ab', 'cd'), put(1, 'd', 'e')] })
  })

  it('gives up the steps that another step takes the place of', async () => {
    const store = await begun()
    store.keepDraft('heron', { ...begin, version: 2, keep: 1, steps: [put(2, '', 'f')], position: 2 })
    expect(store.draft('heron')).toMatchObject({ text: 'cdf', steps: [put(0, 'ab', 'cd'), put(2, '', 'f')] })
  })

  it('may begin anew with another base', async () => {
    const store = await begun()
    store.keepDraft('heron', { version: 2, keep: 0, steps: [], position: 0, base: 'xy' })
    expect(store.draft('heron')).toMatchObject({ version: 3, base: 'xy', text: 'xy', steps: [] })
  })

  it('holds half a character in a step, as long as the text is whole', async () => {
    const store = await newStore()
    // Two characters that share their first half: U+1F600 and U+1F601.
    const half = [put(1, '\ude00', '\ude01')]
    expect(store.keepDraft('heron', { version: 0, keep: 0, steps: half, position: 1, base: '\u{1f600}' })).toHaveProperty('kept')
    expect(store.draft('heron')).toMatchObject({ text: '\u{1f601}', steps: half })
  })
})

describe('a save of a draft', () => {
  it('that another one overtook is refused with the newer text, and nothing is overwritten', async () => {
    const store = await begun()
    expect(store.keepDraft('heron', { ...begin, version: 1 })).toMatchObject({ newer: { version: 2, text: 'ce' } })
    expect(store.keepDraft('heron', begin)).toMatchObject({ newer: { version: 2, text: 'ce' } })
    expect(store.draft('heron')).toMatchObject({ version: 2, text: 'ce' })
  })

  it('that is sent twice, because its answer was lost, is kept once', async () => {
    const store = await begun()
    const last = { ...begin, version: 1, keep: 1, steps: [put(1, 'd', 'e')], position: 2 }
    const before = store.draft('heron')
    expect(store.keepDraft('heron', last)).toEqual({ kept: { version: 2 } })
    expect(store.draft('heron')).toEqual(before)
    for (const other of [{ position: 1 }, { steps: [put(1, 'd', 'f')] }, { keep: 0 }, { version: 0 }, { base: 'x' }])
      expect(store.keepDraft('heron', { ...last, ...other })).toHaveProperty('newer')
  })

  it.each<[string, Partial<DraftChange>]>([
    ['more steps kept than there are', { keep: 3 }],
    ['a position past the last step', { keep: 2, position: 3 }],
    ['a step that removes what is not there', { keep: 2, steps: [put(0, 'x', 'y')], position: 3 }],
    ['a step past the end', { keep: 2, steps: [put(9, '', 'y')], position: 3 }],
    ['a step that does not fit, although it is not done', { keep: 2, steps: [put(0, 'x', 'y')], position: 2 }],
    ['steps of another base', { keep: 1, base: 'other', position: 1 }],
    ['a text with half a character', { keep: 2, steps: [put(0, '', '\ud83d')], position: 3 }],
    ['a text over the limit', { keep: 2, steps: [put(0, '', ' '.repeat(2_000_000))], position: 3 }],
  ])('with %s is refused and changes nothing', async (_what, change) => {
    const store = await begun()
    const before = store.draft('heron')
    const saved = store.keepDraft('heron', { version: 2, keep: 0, steps: [], position: 0, base: 'ab', ...change })
    expect(saved).toHaveProperty('refused.found')
    expect(store.draft('heron')).toEqual(before)
  })
})

it.each(['', ' ', 'a\nb\u001b', 'a\u202eb', 'n'.repeat(256)])('nothing is kept under the name %j', async (name) => {
  const store = await newStore()
  expect(store.keepDraft(name, begin)).toHaveProperty('refused.wayOut')
  expect(store.keepRevision(name, revisionOfText('one'))).toHaveProperty('refused.wayOut')
  expect(store.designs()).toEqual([])
})

describe('the file of the same name', () => {
  it('is known again by its digest: from the beginning, and when the draft agrees with it', async () => {
    const store = await newStore()
    store.keepDraft('heron', { ...begin, given: 'ab' })
    expect(store.draft('heron')?.given).toBe(digest('ab'))
    store.keepDraft('heron', { ...begin, version: 1, keep: 1, steps: [], given: 'new file' })
    expect(store.draft('heron')?.given).toBe(digest('ab'))
    const take = [put(0, 'cd', 'new file')]
    store.keepDraft('heron', { ...begin, version: 2, keep: 1, steps: take, position: 2, given: 'new file' })
    expect(store.draft('heron')?.given).toBe(digest('new file'))
  })
})
