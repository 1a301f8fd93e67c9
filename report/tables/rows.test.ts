import { expect, it } from 'vitest'
import { drawMark, figureRows, findingRows, governingFinding, marks, overallVerdict, svgText } from '../index.ts'
import { inventedEvaluation, inventedFigure, inventedFigures, inventedFinding } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180

it('sets what was found, what is needed as it was typed, and the margin with its sign', () => {
  const [row] = findingRows(inventedEvaluation({ findings: [inventedFinding('met', 1.7179 * RAD)] }))
  // SOURCE hand (8.7179° and 1.7179° rounded to two decimals)
  expect(row).toMatchObject({
    found: { number: '8.72', unit: '°' },
    needed: 'at least 7 deg',
    margin: { number: '+1.72', unit: '°' },
  })
})

it('puts a figure under its heading, with the requirement that watches it and the reason where it does not exist', () => {
  const figures = inventedFigures(inventedFigure('loadCase.back.slipAngle', undefined, 'rad', 'no keeper'))
  const evaluation = inventedEvaluation({ figures, findings: [inventedFinding('met', 1 * RAD)] })
  const motion = figureRows(evaluation, 'motion')
  expect(motion.find((row) => row.id === 'closed.toggle.distal.deadCentreMargin')?.finding?.verdict).toBe('met')
  const slip = figureRows(evaluation, 'hold').find((row) => row.id === 'loadCase.back.slipAngle')
  expect(slip).toMatchObject({ group: 'Push on the back of the distal', why: 'no keeper' })
  expect(slip?.value).toBeUndefined()
})

it('lets short outweigh undecided, and undecided outweigh met', () => {
  const [met, short, undecided] = [inventedFinding('met', 0.01), inventedFinding('short', -0.02), inventedFinding('undecided')]
  expect(overallVerdict([met, undecided, short])).toBe('short')
  expect(overallVerdict([met, undecided])).toBe('undecided')
  expect(overallVerdict([met])).toBe('met')
  expect(overallVerdict([])).toBe('notAsked')
  expect(governingFinding([met, short])).toBe(short)
})

it('gives each mark a shape, a word and a character of its own', () => {
  const answers = ['met', 'short', 'undecided', 'notAsked'] as const
  expect(new Set(answers.map((answer) => svgText(drawMark(answer)))).size).toBe(answers.length)
  expect(new Set(answers.map((answer) => marks[answer].word)).size).toBe(answers.length)
  expect(new Set(answers.map((answer) => marks[answer].character)).size).toBe(answers.length)
})
