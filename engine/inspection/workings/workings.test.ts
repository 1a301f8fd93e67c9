import { expect, it } from 'vitest'
import type { Working } from '../../figures/evaluation.ts'
import { gaugeStudy } from '../gauge-study.ts'
import type { Characteristic } from '../inspection-plan.ts'
import { lifeStudy } from '../life-study.ts'
import { lotStudy } from '../lot-study.ts'
import { gaugeWorking } from './gauge-working.ts'
import { shownWorking } from './life-working.ts'
import { lotWorking } from './lot-working.ts'
import { guardWorking } from './set-working.ts'

const stepOf = ({ steps }: Working, name: string) => steps.find((step) => step.name === name)?.value

it('a working carries the numbers that the formula beside it gives', () => {
  // SOURCE hand: steps of 2, 2 and 2 are 2 in the mean, σ = √π; limits 12 apart about the mean, Cp = Cpk = 12/(6√π)
  const lot = lotWorking(lotStudy([-1, 1, -1, 1], { least: -6, most: 6 }), 'mm')
  expect(stepOf(lot, 'short deviation')).toBeCloseTo(Math.sqrt(Math.PI), 12)
  expect(stepOf(lot, 'Cp')).toBeCloseTo(2 / Math.sqrt(Math.PI), 12)
  expect(stepOf(lot, 'Cpk')).toBeCloseTo(2 / Math.sqrt(Math.PI), 12)
  // SOURCE hand: of 12 µm a gauge that leaves 2 µm open either way leaves 8 µm to be accepted
  const characteristic = { kind: 'size', least: 3.006, most: 3.018 } as Characteristic
  const guard = guardWorking({ characteristic, size: { least: 3.01, most: 3.014 } }, 'mm')
  expect(stepOf(guard, 'accepted from')).toBeCloseTo(3.008, 12)
  expect(stepOf(guard, 'accepted up to')).toBeCloseTo(3.016, 12)
  // SOURCE hand: parts 0 and 4 with repeats ± 1: MS of repeats 2, of parts 16, the part (16 − 2)/2
  const gauge = gaugeWorking(gaugeStudy([[[-1, 1]], [[3, 5]]]))
  expect(stepOf(gauge, 'repeat')).toBeCloseTo(Math.SQRT2, 12)
  expect(stepOf(gauge, 'parts')).toBeCloseTo(Math.sqrt(7), 12)
  expect(stepOf(gauge, 'people')).toBeUndefined()
  // SOURCE hand: 0.1^(1/2)
  const runs = [1, 2].map((reached) => ({ serial: 'A', reached, failed: false }))
  const { shown } = lifeStudy(runs, { life: 1, shape: 1, confidence: 0.9 })
  expect(stepOf(shownWorking(shown, 0.9), 'R, shown at least')).toBeCloseTo(Math.sqrt(0.1), 9)
})
