import { expect, it } from 'vitest'
import { lotStudy } from '../../engine/index.ts'
import { svgText } from '../drawing/svg.ts'
import { drawRun, drawSteps } from './draw-run.ts'
import { roundedBy } from './lot-rows.ts'

const lotOf = (values: readonly number[]) => ({
  ...{ number: 1, words: 'the pin', unit: 'mm' as const, serials: values.map(String) },
  study: lotStudy(values, { least: 2.99, most: 3.01 }),
})

it('rings a step that chance does not explain, and tells its limit below the readings', () => {
  // SOURCE hand: nine steps of 0.001 and one of 0.009 are 0.0018 in the mean; D4 = 3.267 of them are 0.00588
  const values = [3, 3.001, 3, 3.001, 3, 3.009, 3.008, 3.009, 3.008, 3.009, 3.008]
  const steps = svgText(drawSteps(lotOf(values))!)
  expect(steps.match(/class="ring"/g)).toHaveLength(1)
  expect(steps).toContain('>0.0059<')
  expect(steps).toContain('>0.0018<')
  expect(steps.match(/class="event"/g)).toHaveLength(values.length - 1)
  const run = svgText(drawRun(lotOf(values))!)
  for (const limit of ['2.99', '3.01']) expect(run).toContain(`>${limit}<`)
  expect(drawSteps(lotOf([3]))).toBeUndefined()
})

it('tells a mean no finer than its deviation is known', () => {
  // SOURCE hand
  expect(roundedBy(3.0129437, { deviation: 0.0021 })).toBeCloseTo(3.0129, 12)
  expect(roundedBy(3.0129437, { deviation: 0 })).toBe(3.0129437)
})
