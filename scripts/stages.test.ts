// SOURCE hand (the counts that go in are added up by eye)
import { describe, expect, it } from 'vitest'
import { stagesOf, summaryOf } from './stages.mjs'

const counts = (projects: Record<string, { passed: number; failed: number; left: number }>, unhandled = 0) => ({
  projects,
  unhandled,
})
const failedOf = (ended: Parameters<typeof stagesOf>[0]) => stagesOf(ended).reduce((sum, stage) => sum + stage.failed, 0)

describe('a run of tests', () => {
  const passing = { passed: 7, failed: 0, left: 0 }

  it('passes when every test of every project passed', () => {
    expect(failedOf({ group: ['unit'], counts: counts({ unit: passing }), status: 0 })).toBe(0)
  })

  it('fails by the tests that failed and by those that were left out', () => {
    expect(failedOf({ group: ['unit'], counts: counts({ unit: { passed: 7, failed: 2, left: 1 } }), status: 1 })).toBe(3)
  })

  it('fails by a project that ran no test', () => {
    expect(failedOf({ group: ['unit', 'browser'], counts: counts({ unit: passing }), status: 0 })).toBe(1)
  })

  it('fails by an exit status that no test explains, and by errors outside of tests', () => {
    expect(failedOf({ group: ['unit'], counts: counts({ unit: passing }), status: 1 })).toBe(1)
    expect(failedOf({ group: ['unit'], counts: counts({ unit: passing }, 2), status: 1 })).toBe(2)
  })
})

describe('the summary', () => {
  it('ends with how many passed', () => {
    const stages = [
      { name: 'unit', passed: 7, failed: 0 },
      { name: 'browser', passed: 3, failed: 0 },
    ]
    expect(summaryOf(stages, 12)).toEqual({ text: 'unit 7 · browser 3 · 12 s\nAll 10 passed.', passed: true })
  })

  it('does not pass with a failure or with nothing', () => {
    expect(summaryOf([{ name: 'unit', passed: 7, failed: 1 }], 1).passed).toBe(false)
    expect(summaryOf([{ name: 'unit', passed: 7, failed: 1 }], 1).text).toContain('1 failed, 7 passed.')
    expect(summaryOf([], 1).passed).toBe(false)
  })
})
