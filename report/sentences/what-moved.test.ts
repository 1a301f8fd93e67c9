import { expect, it } from 'vitest'
import type { FigureMove, FindingMove, WhatMoved } from '../../engine/index.ts'
import { inventedFinding } from '../test-support/invented-finger.ts'
import { shownApart, whatMovedSentence } from './what-moved.ts'

const RAD = Math.PI / 180
const still: WhatMoved = { findings: [], figures: [], came: [], gone: [] }
const margin: FigureMove = {
  figure: 'closed.toggle.distal.deadCentreMargin',
  title: 'Dead-centre margin of toggle distal, closed',
  unit: 'rad',
  before: 8.72 * RAD,
  after: 6.5 * RAD,
  change: -2.22 * RAD,
}
const finding: FindingMove = {
  requirement: 'margin',
  before: inventedFinding('met', 1.72 * RAD),
  after: inventedFinding('short', -0.5 * RAD),
  verdictChanged: true,
  figure: margin,
}
const effort: FigureMove = {
  figure: 'drive.effortMost',
  title: 'Largest effort on the way to closed',
  unit: 'N·mm',
  before: 2270,
  after: 2310,
  change: 40,
}

it('a verdict that changed is told with the figure before and after', () => {
  expect(whatMovedSentence({ ...still, findings: [finding], figures: [effort] })).toBe(
    'Dead-centre margin of toggle distal, closed 8.72° → 6.50°, met → short; largest effort on the way to closed 2.27 N·m → 2.31 N·m.',
  )
})

it('in inch units forces and couples are told in those', () => {
  // SOURCE hand (2270 N·mm / 112.985 = 20.09 in·lbf; 2310 / 112.985 = 20.45)
  expect(whatMovedSentence({ ...still, figures: [effort] }, 'inch')).toBe(
    'Largest effort on the way to closed 20.1 in·lbf → 20.4 in·lbf.',
  )
})

it('nothing that moved is said so', () => {
  expect(whatMovedSentence(still)).toBe('Nothing moved.')
})

it('a requirement that came or went is told so', () => {
  const { before: _, ...came } = { ...finding, verdictChanged: true }
  const { after: __, ...went } = finding
  expect(whatMovedSentence({ ...still, findings: [came] })).toContain('now asked for: short')
  expect(whatMovedSentence({ ...still, findings: [went] })).toContain('no longer asked for')
})

it('more than four clauses are counted', () => {
  expect(whatMovedSentence({ ...still, figures: [effort, effort, effort, effort, effort, effort] })).toMatch(/; and 2 more\.$/)
})

it('problems come first, and are told when they are gone', () => {
  const problem = { code: 'cannot close', place: 'pins.dip', found: 'the links do not reach', needed: 'a longer link' }
  expect(whatMovedSentence({ ...still, came: [problem], figures: [effort] })).toMatch(/^At pins\.dip: the links do not reach; /)
  expect(whatMovedSentence({ ...still, gone: [problem] })).toBe('A problem is gone.')
})

it('two values that differ are shown with as many digits as it takes', () => {
  // SOURCE hand (22.701 and 22.704 are both 22.7 to three digits, and 22.70 to four)
  expect(shownApart({ unit: 'N', before: 22.701, after: 22.704 })).toEqual(['22.701 N', '22.704 N'])
  expect(shownApart({ unit: 'N', before: 22.7, after: 22.7 })).toEqual(['22.7 N', '22.7 N'])
  expect(shownApart({ unit: 'N', before: undefined, after: 3 })).toEqual(['none', '3.00 N'])
})
