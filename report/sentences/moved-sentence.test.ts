import { expect, it } from 'vitest'
import { type FigureMove, type FindingMove, type WhatMoved, whatMoved } from '../../engine/index.ts'
import { movedSentence, shownApart } from '../index.ts'
import { inventedEvaluation, inventedFinding } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180
const at = (margin_deg: number) =>
  inventedEvaluation({ findings: [withMargin(inventedFinding(margin_deg >= 0 ? 'met' : 'short', margin_deg * RAD), margin_deg)] })

/** The finding with its figure where the margin says that it is. */
function withMargin(finding: ReturnType<typeof inventedFinding>, margin_deg: number) {
  const figure = finding.figure!
  return { ...finding, figure: { ...figure, value: (7 + margin_deg) * RAD } }
}

it('names the figure with its value before and after', () => {
  const words = movedSentence(whatMoved(at(1.72), at(1.5)))
  // SOURCE hand (7° and the margins, three digits)
  expect(words).toContain('8.72° → 8.50°')
  expect(words).not.toContain('now')
  expect(words).toMatch(/^[A-Z].*\.$/)
})

it('says which requirement falls short now', () => {
  expect(movedSentence(whatMoved(at(1), at(-1)))).toContain('8.00° → 6.00°, now short')
  expect(movedSentence(whatMoved(at(-1), at(1)))).toContain('6.00° → 8.00°, now met')
})

it('takes as many digits as it needs to tell two values apart', () => {
  // SOURCE hand (0.02° of 12.5° shows in the fourth digit)
  expect(movedSentence(whatMoved(at(5.5), at(5.52)))).toContain('12.50° → 12.52°')
})

it('says that nothing moved', () => {
  expect(movedSentence(whatMoved(at(1), at(1)))).toMatch(/^Nothing moved/)
})

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

it('a verdict that changed is told behind the figure before and after', () => {
  expect(movedSentence({ ...still, findings: [finding], figures: [effort] })).toBe(
    'Dead-centre margin of toggle distal, closed 8.72° → 6.50°, now short; largest effort on the way to closed 2.27 N·m → 2.31 N·m.',
  )
})

it('in inch units forces and couples are told in those', () => {
  // SOURCE hand (2270 N·mm / 112.985 = 20.09 in·lbf; 2310 / 112.985 = 20.45)
  expect(movedSentence({ ...still, figures: [effort] }, 'inch')).toBe(
    'Largest effort on the way to closed 20.1 in·lbf → 20.4 in·lbf.',
  )
})

it('nothing that moved is said so', () => {
  expect(movedSentence(still)).toBe('Nothing moved.')
})

it('a requirement that came or went is told so', () => {
  const { before: _, ...came } = { ...finding, verdictChanged: true }
  const { after: __, ...went } = finding
  expect(movedSentence({ ...still, findings: [came] })).toContain('newly asked for: short')
  expect(movedSentence({ ...still, findings: [went] })).toContain('no longer asked for')
})

it('more than four clauses are counted', () => {
  expect(movedSentence({ ...still, figures: [effort, effort, effort, effort, effort, effort] })).toMatch(/; and 2 more\.$/)
})

it('problems come first, and are told when they are gone', () => {
  const problem = { code: 'cannot close', place: 'pins.dip', found: 'the links do not reach', needed: 'a longer link' }
  expect(movedSentence({ ...still, came: [problem], figures: [effort] })).toMatch(/^At pins\.dip: the links do not reach; /)
  expect(movedSentence({ ...still, gone: [problem] })).toBe('What was wrong before is mended.')
})

it('two values that differ are shown with as many digits as it takes', () => {
  // SOURCE hand (22.701 and 22.704 are both 22.7 to three digits, and 22.70 to four)
  expect(shownApart({ unit: 'N', before: 22.701, after: 22.704 })).toEqual(['22.701 N', '22.704 N'])
  expect(shownApart({ unit: 'N', before: 22.7, after: 22.7 })).toEqual(['22.7 N', '22.7 N'])
  expect(shownApart({ unit: 'N', before: undefined, after: 3 })).toEqual(['none', '3.00 N'])
})
