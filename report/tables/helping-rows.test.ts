import { describe, expect, it } from 'vitest'
import type { HelpingChange, HelpingChanges, RankedStrength } from '../../engine/index.ts'
import { helpingDocument, helpingRows, helpingSentence } from './helping-rows.ts'

const first: RankedStrength = {
  figure: 'strength.stop.shelf.contact',
  words: 'stop shelf',
  margin: 0.064,
  says: 'dents',
  factor: 1.3,
}
const then: RankedStrength = { ...first, figure: 'strength.screw.front.proof', words: 'screw front by stretching', margin: 0.166 }
const input = { place: ['dimensions', 'a'], title: 'dimension a', typed: '6 mm', step: '0.1 mm', up: [], down: [] } as const
const change: HelpingChange = { input, way: 'down', gain: 0.102, first: then, costs: ['carryKeeper'] }

describe('what helps', () => {
  it('is said with its step, its margin, what gives first then and what it costs', () => {
    // SOURCE hand (the words of one invented change)
    expect(helpingRows({ first, changes: [change], tried_count: 9 })).toMatchObject([
      { step: '−0.1 mm', first: 'screw front by stretching', costs: 'carryKeeper falls short' },
    ])
    expect(helpingSentence({ first, changes: [change], tried_count: 9 })).toBe(
      'The smallest margin is 0.064: stop shelf. Of steps of 9 sizes dimension a helps most: −0.1 mm brings it to 0.166, and screw front by stretching is the first then; it costs carryKeeper.',
    )
    expect(helpingDocument({ first, changes: [change], tried_count: 9 })).toMatchObject({
      tried: 9,
      changes: [{ step: '-0.1 mm' }],
    })
  })

  it('is said to be nothing where nothing does', () => {
    const none: HelpingChanges = { first, changes: [], tried_count: 9 }
    expect(helpingSentence(none)).toContain('None of the steps of 9 sizes raises it.')
    expect(helpingSentence({ changes: [], tried_count: 0 })).toContain('No load presses')
  })
})
