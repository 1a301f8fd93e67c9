import { expect, it } from 'vitest'
import { lifeStudy, proofStudy, type Run } from '../../../engine/index.ts'
import { measuredTests, type SerialTest, testRuns } from './kept-tests.ts'
import { lifeLines, shownSentence } from './life-lines.ts'
import { readRuns } from './read-runs.ts'

const ran = (reached: number, failed = false): Run => ({ serial: 'A', reached, failed })

it('runs show at a life what the success run shows, and by the stated shape more where they ran longer', () => {
  // SOURCE book: success run, 59 passed show 95 % with 95 % (standard reliability tables, from memory)
  const passed = lifeStudy(
    Array.from({ length: 59 }, () => ran(100)),
    { life: 100, shape: 2, confidence: 0.95 },
  )
  expect(passed.shown.share).toBeGreaterThan(0.95)
  expect(passed.byShape).toBeCloseTo(passed.shown.share ?? 0, 12)
  expect(lifeLines(passed)[0]).toContain('without a failure it takes 29 for 90 %, 59 for 95 %, 299 for 99 %')
  // SOURCE hand: two runs of twice the life are worth 2 · 2² = 8 pieces, 0.05^(1/8) = 0.68766
  const longer = lifeStudy([ran(200), ran(200)], { life: 100, shape: 2, confidence: 0.95 })
  expect(longer.byShape).toBeCloseTo(0.68766, 5)
})

it('finds the likeliest law where enough failed', () => {
  // SOURCE book: NIST e-Handbook 8.4.1.2, censored test: shape 1.7208, scale 606.5280 h (from memory)
  const lives = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386].map((life) => ran(life, true))
  const study = lifeStudy([...lives, ...Array.from({ length: 10 }, () => ran(500))], { life: 200, shape: 1, confidence: 0.9 })
  expect(study.likeliest?.shape).toBeCloseTo(1.7208, 4)
  expect(study.likeliest?.outlast).toBeCloseTo(Math.exp(-((200 / 606.528) ** 1.7208)), 5)
  // SOURCE hand: two failed by 200, eighteen outran it, of which eight failed later
  expect(study.shown).toMatchObject({ passed: 18, failed: 2, silent: 0 })
  expect(study.byShape).toBeUndefined()
})

it('of a load more that was held counts and more that was not says nothing', () => {
  const shown = proofStudy([ran(60), ran(70), ran(50), ran(80, true), ran(60, true)], { load: 60, confidence: 0.9 })
  // SOURCE hand
  expect(shown).toMatchObject({ passed: 2, failed: 1, silent: 2 })
  expect(shownSentence(shown, { at: '60 N', confidence: 0.9 })).toContain('2 runs say nothing of it')
})

it('reads runs from a table, and takes from the bench book what stands', () => {
  const rows = [
    ['Serial', 'ran', 'outcome'],
    ['A', '20000', 'did'],
    ['B', '60 N', 'failed'],
    ['', '', ''],
  ]
  expect(readRuns(rows).value).toEqual([{ ...ran(20_000) }, { serial: 'B', reached: 60, failed: true }])
  const places = readRuns([rows[0], ['A', 'long', 'broke']]).problems?.map(({ place }) => place)
  expect(places).toEqual(['row 2, ran', 'row 2, outcome'])
  const kept = { serial: 'A', value: 17, tested: '2031-04-04', rig: 'rig 1' }
  const tests: readonly SerialTest[] = [
    { ...kept, test: 'load to hold', outcome: 'measured' },
    { ...kept, test: 'load to hold', outcome: 'measured', value: 71, correctedBy: 1 },
    { ...kept, test: 'load to hold', outcome: 'did not' },
  ]
  const asked = { kind: 'load to hold', figure: 'f', uncertainty: 1 } as const
  // SOURCE hand
  expect(measuredTests(tests, asked)).toEqual([{ serial: 'A', figure: 'f', found: 17, uncertainty: 1 }])
  expect(testRuns(tests, 'load to hold')).toEqual([ran(17, true)])
})
