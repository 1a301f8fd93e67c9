import { expect, it } from 'vitest'
import { type BroughtIn, broughtInWords } from './carry-store.ts'

const heron = { name: 'heron', as: 'heron' } as const
const told: readonly (readonly [BroughtIn, string])[] = [
  [{ ...heron, came: 'new', revisions: 2 }, 'heron came in with 2 revisions.'],
  [{ ...heron, came: 'new', revisions: 0 }, 'heron came in with no revision.'],
  [{ ...heron, came: 'there', revisions: 0 }, 'heron was here already, with everything that the file has of it.'],
  [{ ...heron, came: 'further', revisions: 1 }, 'heron was here and goes on: one revision came to it.'],
  [{ ...heron, came: 'further', revisions: 0 }, 'heron was here and goes on: later work on it came to it.'],
  [
    { ...heron, as: 'heron-2', came: 'new', revisions: 1 },
    'heron came in as heron-2 with one revision: another design of that name was here.',
  ],
]

it.each(told)('what came of a design that was brought in is told in a sentence: %j', (brought, words) => {
  expect(broughtInWords(brought)).toBe(words)
})
