import { describe, expect, it } from 'vitest'
import { type Design, readDesign } from '../engine/index.ts'
import { liveThrough } from './live-through.ts'
import type { Terminal } from './terminal.ts'
import { example } from './test-support/example.ts'

const design = readDesign(JSON.stringify(example)).value as Design

/** A terminal on which a reader looks on; Ctrl-C comes when the promise is kept. */
const watched = (told: string[], stopped: Promise<void>) =>
  ({ tellProgress: (text: string) => told.push(text), stopped: () => stopped, now: () => new Date(0) }) as unknown as Terminal

describe('the life of a finger at the terminal', () => {
  it('tells how far it is, and ends at Ctrl-C without a life', async () => {
    const told: string[] = []
    expect(await liveThrough(design, watched(told, Promise.resolve()))).toBeUndefined()
    // SOURCE hand: 300 closings a day for two years, 219 000, at the most and at the likely wear
    expect(told[0]).toMatch(/^closings of its life: \d+ of 438000.*; Ctrl-C ends it/)
    expect(told.at(-1)).toBe('')
  })

  it('is gone through to the end where nobody stops it', async () => {
    const { use: _, ...unused } = design
    const lived = await liveThrough(unused as Design, watched([], new Promise(() => {})))
    expect(lived?.missing?.length).toBeGreaterThan(0)
  })
})
