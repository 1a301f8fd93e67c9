// SOURCE hand (numbers count the saves of each test)
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { moment, newStore, revisionOfText } from './test-support/store-bench.ts'

describe('a revision', () => {
  it('is read back as it was kept, with its number and moment', async () => {
    const store = await newStore()
    expect(store.keepRevision('heron', revisionOfText('one'))).toEqual({ kept: { number: 1 } })
    expect(store.keepRevision('heron', revisionOfText('two', { who: 'K2', why: 'link longer' }))).toEqual({ kept: { number: 2 } })
    const second = { ...revisionOfText('two', { who: 'K2', why: 'link longer' }), number: 2, saved: moment }
    expect(store.revision('heron', 2)).toEqual(second)
    expect(store.revision('heron', 'newest')).toEqual(second)
    expect(store.revision('heron', 1)?.text).toBe('one')
  })

  it('is listed with the verdicts of its findings, oldest first', async () => {
    const store = await newStore()
    store.keepRevision('heron', revisionOfText('one', { problems: '[{"code":"cannot close"}]' }))
    store.keepRevision('heron', revisionOfText('two'))
    const entry = { saved: moment, who: 'K1', why: 'first try', engine: 'fingerwright 0.1.0', verdicts: ['met', 'short'] }
    expect(store.revisions('heron')).toEqual([
      { ...entry, number: 1, problems: 1 },
      { ...entry, number: 2, problems: 0 },
    ])
  })

  it('is not there under another name or number', async () => {
    const store = await newStore()
    store.keepRevision('heron', revisionOfText('one'))
    expect(store.revision('heron', 2)).toBeUndefined()
    expect(store.revision('Heron', 'newest')).toBeUndefined()
    expect(store.revisions('__proto__')).toEqual([])
  })

  it('that is sent twice is kept once; with other words it is a revision of its own', async () => {
    const store = await newStore()
    store.keepRevision('heron', revisionOfText('one'))
    expect(store.keepRevision('heron', revisionOfText('one'))).toEqual({ kept: { number: 1 } })
    expect(store.keepRevision('heron', revisionOfText('one', { why: 'seen by K2' }))).toEqual({ kept: { number: 2 } })
  })

  it('of a draft that was changed meanwhile is not kept, and the newer text comes back', async () => {
    const store = await newStore()
    store.keepDraft('heron', { version: 0, keep: 0, steps: [], position: 0, base: 'now' })
    expect(store.keepRevision('heron', revisionOfText('then'), 0)).toEqual({ newer: { version: 1, text: 'now' } })
    expect(store.revisions('heron')).toEqual([])
    expect(store.keepRevision('heron', revisionOfText('now'), 1)).toEqual({ kept: { number: 1 } })
  })
})

describe('SQLite itself refuses, whatever program asks,', () => {
  it.each([
    ['to change a revision', "update revisions set why = 'other'", 'never changes'],
    ['to delete one', 'delete from revisions', 'never deleted'],
    ['to replace one', 'insert or replace into revisions select * from revisions', 'next number'],
    [
      'to leave a number out',
      'insert into revisions select design, 3, text, engine, figures, findings, problems, who, why, saved from revisions',
      'next number',
    ],
    ['to delete its design', 'delete from designs', 'FOREIGN KEY'],
    [
      'figures that are no JSON',
      "insert into revisions select design, 2, text, engine, '{', findings, problems, who, why, saved from revisions",
      'CHECK',
    ],
    [
      'a number that is a word',
      "insert into revisions select design, 'two', text, engine, figures, findings, problems, who, why, saved from revisions",
      'cannot store TEXT',
    ],
    ['a draft of an earlier version', 'update drafts set version = version', 'grows'],
  ])('%s', async (_what, statement, reason) => {
    const store = await newStore()
    store.keepRevision('heron', revisionOfText('one'))
    store.keepDraft('heron', { version: 0, keep: 0, steps: [], position: 0, base: 'one' })
    const other = new Database(store.file)
    expect(() => other.exec(statement)).toThrow(reason)
    other.close()
    expect(store.revisions('heron')).toHaveLength(1)
    expect(store.revision('heron', 1)?.why).toBe('first try')
  })
})
