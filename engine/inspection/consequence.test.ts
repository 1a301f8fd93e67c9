import { expect, it } from 'vitest'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readVariation } from '../variation/sources/read-variation.ts'
import { consequences } from './consequence.ts'
import { inspectionPlan } from './inspection-plan.ts'
import type { Reading } from './measured-set.ts'

const variation = readVariation(exampleText('heron'), 'heron').value!
const plan = inspectionPlan(variation)
const found = (id: string, size_mm: number): Reading => ({
  characteristic: plan.find((one) => one.id === id)!,
  size: { least: size_mm, most: size_mm },
})

it('tells what each decision about a size out of its limits comes to, and nothing of one that is within', () => {
  const readings = [found('dimensions.topLinkLength', 24.527), found('dimensions.baseLinkLength', 42.108)]
  const [one, ...more] = consequences(variation, plan, readings)
  expect(more).toEqual([])
  // SOURCE hand: 24.517 is allowed
  expect(one.beyond).toBeCloseTo(0.01, 9)
  const marginOf = (index: number) =>
    one.outcomes[index].evaluation?.figures.find(({ id }) => id === 'closed.toggle.distal.deadCentreMargin')?.value as number
  // SOURCE property: the way to the drawing goes through the limit, and half of it is done there
  expect(one.outcomes.map(({ disposition }) => disposition)).toEqual(['use as is', 'rework', 'scrap'])
  const [asIs, atLimit, drawn] = [0, 1, 2].map(marginOf)
  expect((asIs - atLimit) / (atLimit - drawn)).toBeCloseTo(1, 1)
  expect(one.outcomes[0].moved?.findings.length).toBeGreaterThan(0)
})
