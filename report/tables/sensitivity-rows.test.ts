import { expect, it } from 'vitest'
import type { Sensitivity } from '../../engine/index.ts'
import { inventedEvaluation, inventedFigure } from '../test-support/invented-finger.ts'
import { sensitivityRows } from './sensitivity-rows.ts'

const RAD = Math.PI / 180
const evaluation = inventedEvaluation({
  figures: [
    inventedFigure('closed.toggle.distal.deadCentreMargin', 8.7 * RAD, 'rad'),
    inventedFigure('drive.effortMost', 2270, 'N·mm'),
    inventedFigure('return.letsGo', true, 'yes or no'),
  ],
})

const input = (title: string): Sensitivity['input'] => ({
  place: ['dimensions', title],
  title,
  typed: '3 mm',
  step: '0.1 mm',
  up: [],
  down: [],
})
const margin = (change: number) => ({ figure: 'closed.toggle.distal.deadCentreMargin', change })

it('what takes most of a margin comes first, what moves nothing last', () => {
  const rows = sensitivityRows(
    [
      { input: input('idle'), changes: [margin(0)], refused: {} },
      { input: input('little'), changes: [margin(0.2 * RAD)], refused: {}, takes: { requirement: 'short', share: 0.1 } },
      { input: input('much'), changes: [margin(-1.2 * RAD)], refused: {}, takes: { requirement: 'short', share: 0.6 } },
    ],
    evaluation,
  )
  expect(rows.map(({ title }) => title)).toEqual(['much', 'little', 'idle'])
  expect(rows[0]).toMatchObject({ takes: '60 % of short', cells: [{ change: { number: '−1.20', unit: '°' } }] })
  expect(rows[1].cells[0].change).toEqual({ number: '+0.200', unit: '°' })
  expect(rows[2].cells).toEqual([])
})

it('changes are told in the reader’s units', () => {
  const found = [{ input: input('spring'), changes: [{ figure: 'drive.effortMost', change: 100 }], refused: {} }]
  // SOURCE hand (100 N·mm / 112.985 = 0.885 in·lbf)
  expect(sensitivityRows(found, evaluation, 'inch')[0].cells[0].change).toEqual({ number: '+0.885', unit: 'in·lbf' })
})

it('a side that cannot be made is told with its reason, and which side alone counts', () => {
  const problem = { code: 'does not fit', place: 'pins.mcp', found: 'a pin of 4 mm in a hole of 3 mm', needed: 'a larger hole' }
  const found: Sensitivity[] = [
    { input: input('pin'), changes: [{ ...margin(0.5 * RAD), onlySide: 'down' }], refused: { up: [problem] } },
  ]
  expect(sensitivityRows(found, evaluation)[0]).toMatchObject({
    refused: ['up: a pin of 4 mm in a hole of 3 mm'],
    cells: [{ side: 'down only' }],
  })
})

it('a yes that becomes no, or is not known any more, is told', () => {
  const becomes = [
    { side: 'up', value: false },
    { side: 'down', value: undefined },
  ] as const
  const found: Sensitivity[] = [{ input: input('pin'), changes: [{ figure: 'return.letsGo', becomes }], refused: {} }]
  expect(sensitivityRows(found, evaluation)[0].cells[0].change.number).toBe('up: no, down: undecided')
})
