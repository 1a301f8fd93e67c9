import { expect, it } from 'vitest'
import { drawPlot, findingRows, loadRows, overlapRows, plotGroups, readTravel, toldIn, verdictSentence } from '../index.ts'
import { inventedEvaluation, inventedFigure, inventedFigures, inventedFinding } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180

it('says a force in pounds to a reader of inches, and changes nothing else', () => {
  const evaluation = inventedEvaluation()
  const [load] = loadRows(evaluation)
  const [told] = loadRows(toldIn('inch', evaluation))
  // SOURCE hand (one pound-force is 4.4482 N)
  const newtons = Number.parseFloat(load.load)
  expect(Number.parseFloat(told.load)).toBeCloseTo(newtons / 4.4482, 1)
  expect(told.load).toMatch(/lbf$/)
  expect(told.name).toBe(load.name)
})

it('leaves angles as they are, in sentences and plots', () => {
  const evaluation = inventedEvaluation()
  const degrees = (text: string) => text.match(/−?\d+(\.\d+)?°/g)
  expect(degrees(verdictSentence(toldIn('inch', evaluation)))).toEqual(degrees(verdictSentence(evaluation)))
  const told = toldIn('inch', evaluation)
  const [plain] = plotGroups(evaluation)
  const [group] = plotGroups(told)
  const size = { width_px: 600, height_px: 236 }
  expect(drawPlot({ group, travel: told.travel! }, size).svg).toEqual(
    drawPlot({ group: plain, travel: evaluation.travel! }, size).svg,
  )
})

it('shows a bound as it was typed to a reader of metric units, and in inch units to the other', () => {
  const figures = inventedFigures(inventedFigure('play.least', 25.4, 'mm'))
  const finding = inventedFinding('met', 0.1 * RAD)
  const figure = { ...figures.find(({ id }) => id === 'play.least')! }
  const bound = { kind: 'atLeast', value: 12.7, unit: 'mm', typed: '12.7 mm' } as const
  const findings = [{ ...finding, figure, margin: 12.7, requirement: { ...finding.requirement, bound } }]
  const evaluation = inventedEvaluation({ findings })
  expect(findingRows(evaluation)[0].needed).toBe('at least 12.7 mm')
  // SOURCE hand (12.7 mm is half an inch, 25.4 mm one)
  expect(findingRows(toldIn('inch', evaluation))[0]).toMatchObject({
    found: { number: '1.00', unit: 'in' },
    needed: 'at least 0.500 in',
    margin: { number: '+0.500', unit: 'in' },
  })
})

it('reads a stroke to a thousandth of an inch', () => {
  const { travel } = inventedEvaluation()
  const stroke = {
    ...travel!,
    driveUnit: 'mm' as const,
    postures: travel!.postures.map((posture) => ({ ...posture, drive: 12.7 })),
  }
  // SOURCE hand (12.7 mm is half an inch)
  expect(readTravel(stroke, 0.5)).toBe('12.7 mm')
  expect(readTravel({ ...stroke, units: 'inch' }, 0.5)).toBe('0.500 in')
})

it('names the parts that run into each other, where and by how much', () => {
  const evaluation = inventedEvaluation()
  const overlap = {
    parts: [0, 2] as const,
    first_ratio: 0.5,
    deepest_ratio: 1,
    firstDrive: 37.5 * RAD,
    deepestDrive: 75 * RAD,
    depth_mm: 0.254,
    at: { x_mm: 0, y_mm: 0 },
  }
  const clashing = inventedEvaluation({ travel: { ...evaluation.travel!, overlaps: [overlap] } })
  const [row] = overlapRows(clashing)
  expect(row).toMatchObject({ parts: 'Mount and Middle phalanx', depth: { number: '0.254', unit: 'mm' } })
  // SOURCE hand (the invented travel turns by 75° and ends there at its stop)
  expect(row.deepest).toEqual({ arc_ratio: 1, words: '75.0°, stop' })
  expect(overlapRows(evaluation)).toEqual([])
  // SOURCE hand (0.254 mm is a hundredth of an inch)
  expect(overlapRows(toldIn('inch', clashing))[0].depth).toEqual({ number: '0.0100', unit: 'in' })
})
