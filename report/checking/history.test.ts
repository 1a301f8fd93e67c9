// SOURCE hand (the words of what each entry says)
import { expect, it } from 'vitest'
import { historyLines, historyRows } from './history.ts'
import { paperLines } from './kept-words.ts'
import { readingsFile } from './readings-file.ts'
import { plan } from './test-support/small-plan.ts'

const moment = (made: string): string => made.slice(0, 10)
const signed = { who: 'K1', made: '2031-04-05T06:07:08.009Z' }
const [size] = plan
const read = (id: number, found: string, more: object = {}) => ({
  ...{ id, ...signed, serial: 'A', characteristic: size.id, visit: 'finished' as const, found },
  ...{ value: { least: Number(found), most: Number(found) }, ...more },
})
const withdrawn = { who: 'K2', made: '2031-04-06T06:07:08.009Z', reason: 'the wrong column' }

it('a reading that was corrected or taken back is struck and says by what; of repeats the newest counts', () => {
  const readings = [
    read(1, '2.7', { correctedBy: 2 }),
    read(2, '2.99', { corrects: 1, reason: 'misread' }),
    read(3, '29.9', { withdrawn, file: 'box.csv' }),
    read(4, '2.995', { by: 'K3', gauge: 'caliper 1' }),
  ]
  const row = { number: 1, id: size.id, words: '', visit: 'finished', found: '', allowed: '' } as const
  const sheet = { sentence: '', verdict: 'met', rows: [{ ...row, conformity: 'within', answer: 'met' }] } as const
  const rows = historyRows({ history: { readings }, plan, sheet, moment })
  expect(rows.map(({ isStruck }) => isStruck)).toEqual([true, false, true, false])
  expect(rows.map(({ answer }) => answer)).toEqual([
    'corrected by reading 2',
    'a later reading counts',
    'withdrawn with its import: the wrong column (K2, 2031-04-06)',
    '● within',
  ])
  expect(rows[1].said).toBe('corrects reading 1: misread; entered 2031-04-05 by K1')
  expect(rows[3].said).toBe('measured by K3; caliper 1; entered 2031-04-05 by K1')
})

it('tests, certificates and decisions stand with their number and with what corrects them; only what stands is on the sheet', () => {
  const decision = { ...signed, decision: 'scrap', why: 'bent', consequence: 'it jams' }
  const test = { ...signed, test: 'load to hold', value: 17.5, uncertainty: 0.5, figure: 'f', outcome: 'measured' } as const
  const decisions = [
    { id: 1, ...decision, decision: 'use as is', correctedBy: 2 },
    { id: 2, ...decision, corrects: 1, reason: 'seen on the plate' },
  ]
  const tests = [{ id: 1, ...test, tested: '2031-04-04', rig: 'rig 1' }]
  const lines = historyLines({ certificates: [], tests, decisions, signOffs: [], field: [] }, moment)
  expect(lines.map(({ sort, id, isStruck }) => [sort, id, isStruck])).toEqual([
    ['test', 1, false],
    ['decision', 1, true],
    ['decision', 2, false],
  ])
  expect(lines[0].words).toBe('Load to hold 17.5 ± 0.5 N: as measured, against f. Tested on 2031-04-04 on rig 1.')
  expect(lines[1].said).toBe('decision 1; K1, 2031-04-05; corrected by decision 2')
  expect(lines[2].said).toBe('decision 2; K1, 2031-04-05; corrects decision 1: seen on the plate')
  expect(paperLines({ decisions, signOffs: [] })).toEqual([expect.stringContaining('Decided: scrap')])
})

it('what was taken back with its import is not written out, and its corrections point to what it corrected', () => {
  const readings = [
    read(1, '2.7', { correctedBy: 4 }),
    read(2, '2.8', { corrects: 1, reason: 'x', withdrawn }),
    read(3, '3', { withdrawn }),
  ]
  const last = [read(4, '2.99', { corrects: 2, reason: 'again' }), read(5, '2.98', { corrects: 3, reason: 'anew' })]
  const text = readingsFile([...readings, ...last], plan)
  const cells = text
    .trim()
    .split('\r\n')
    .slice(1)
    .map((line) => line.split(',').filter((_, index) => [0, 3, 11, 12].includes(index)))
  expect(cells).toEqual([
    ['1', '2.7', '', ''],
    ['4', '2.99', '1', 'again'],
    ['5', '2.98', '', ''],
  ])
})
