import { describe, expect, it } from 'vitest'
import { readDesign } from '../read-design.ts'
import { documentText } from '../test-support/full-document.ts'

const readWith = (changes: Readonly<Record<string, unknown>>) => readDesign(documentText(changes))
const problemsOf = (changes: Readonly<Record<string, unknown>>) => readWith(changes).problems ?? []

describe('what is to be shown, and what may go wrong', () => {
  it('comes with the indices of what is named', () => {
    const design = readWith({}).value
    // SOURCE hand: the test document
    expect(design?.requirements[0].shownBy).toEqual([
      { by: 'share', least_ratio: 0.99 },
      { by: 'test', test: 0 },
    ])
    expect(design?.demands[0].shownBy[1]).toEqual({ by: 'document', document: 'Drawing 7', isInHand: true })
    expect(design?.riskScales?.severity.map(({ acceptable }) => acceptable)).toEqual([1, 0])
    expect(design?.risks[0]).toMatchObject({ severity: 1, probability: 1, residual: { probability: 0, requirements: [0] } })
  })

  it('may be left out', () => {
    const none = { demands: undefined, risks: undefined, riskScales: undefined, benchTests: undefined }
    const design = readWith({ ...none, 'requirements.letsGo.shownBy': undefined }).value
    // SOURCE hand
    expect(design).toMatchObject({ demands: [], risks: [], benchTests: [] })
    expect(design).not.toHaveProperty('riskScales')
  })

  it.each([
    // SOURCE hand: just outside of each bound, and names that lead nowhere
    ['requirements.letsGo.shownBy', [{ test: 'letGo' }], 'requirements.letsGo.shownBy.0.test', 'unknown name'],
    ['requirements.letsGo.shownBy', [{ share: '100 %' }], 'requirements.letsGo.shownBy.0.share', 'too large'],
    ['benchTests.letsGo.done.failed', 7, 'benchTests.letsGo.done.failed', 'too large'],
    ['benchTests.letsGo.done.tried', 6.5, 'benchTests.letsGo.done.tried', 'wrong value'],
    ['benchTests.letsGo.done.on', 'February', 'benchTests.letsGo.done.on', 'wrong value'],
    ['riskScales.probability.0.upTo', 1, 'riskScales.probability.1.upTo', 'too small'],
    ['riskScales.probability.1.upTo', '99 %', 'riskScales.probability.1.upTo', 'wrong value'],
    ['riskScales.severity.1.acceptable', 'never', 'riskScales.severity.1.acceptable', 'unknown name'],
    ['risks.staysShut.severity', 'grave', 'risks.staysShut.severity', 'unknown name'],
    ['risks.staysShut.residual.requirements', ['letGo'], 'risks.staysShut.residual.requirements.0', 'unknown name'],
    ['riskScales', undefined, 'riskScales', 'missing'],
  ])('is refused where %s is %j', (place, typed, where, code) => {
    expect(problemsOf({ [place]: typed })).toEqual([expect.objectContaining({ place: where, code })])
  })

  it('is read where nobody has judged what is left: it has neither a probability nor requirements', () => {
    const left = { 'risks.staysShut.residual.probability': undefined, 'risks.staysShut.residual.requirements': undefined }
    expect(problemsOf(left)).toEqual([])
  })
})
