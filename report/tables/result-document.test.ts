import { expect, it } from 'vitest'
import { refusedDocument, resultDocument } from '../index.ts'
import { inventedEvaluation, inventedFigure, inventedFigures, inventedFinding } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180

it('gives angles in degrees with their unit, and null with a reason where a figure does not exist', () => {
  const figures = inventedFigures(inventedFigure('loadCase.hook.slipAngle', undefined, 'rad', 'no keeper is given'))
  const written = resultDocument(inventedEvaluation({ figures }), 'fingerwright 0.1.0')
  const margin = written.figures['closed.toggle.distal.deadCentreMargin']
  // SOURCE hand (8.7179° given as 8.7179·π/180 rad)
  expect(margin.value).toBeCloseTo(8.7179, 10)
  expect(margin.unit).toBe('deg')
  expect(written.figures['loadCase.hook.slipAngle']).toEqual({ value: null, unit: 'deg', why: 'no keeper is given' })
  expect(written.figures['loadCase.hook.heldBy']).toEqual({ value: 'wearer', unit: 'words' })
})

it('lists each requirement with what was found, what is needed and the margin', () => {
  const [finding] = resultDocument(inventedEvaluation({ findings: [inventedFinding('met', 1.7179 * RAD)] }), 'x').findings
  expect(finding.verdict).toBe('met')
  // SOURCE hand (8.7179° found, 7° needed, 1.7179° margin)
  expect(finding.found).toBeCloseTo(8.7179, 10)
  expect((finding.needed as { atLeast: number }).atLeast).toBeCloseTo(7, 10)
  expect(finding.margin).toBeCloseTo(1.7179, 10)
})

it('survives a round through JSON unchanged', () => {
  const written = resultDocument(inventedEvaluation(), 'x')
  expect(JSON.parse(JSON.stringify(written))).toEqual(written)
})

it('carries every problem of a refused design', () => {
  const problem = { code: 'unknown key', place: 'parts.x', found: 'lenght', needed: 'length' }
  const written = refusedDocument({ name: 'bad', problems: [problem] }, 'x')
  expect(written.problems).toEqual([problem])
  expect(written.findings).toEqual([])
})
