import { describe, expect, it } from 'vitest'
import { inspectionInterval } from './inspection-interval.ts'

const use = { closingsPerDay: 100, years: 2 }
const until = (closings: number) =>
  ({ requirement: 'reserve', figure: 'return.margin', verdict: 'short', untilMost: closings }) as const

describe('the interval of inspection', () => {
  it('is a quarter of the time to the first that may fall short, between a week and half a year', () => {
    const days = (closings: number) => inspectionInterval({ use }, { findings: [until(closings)] })
    // SOURCE hand: 20 000 / 100 a day / 4 looks = 50 days; 100 000 gives 250, held at 182; 2000 gives 5, held at 7
    expect(days(20_000)).toMatchObject({ interval_days: 50, isTooOften: false })
    expect(days(100_000)).toMatchObject({ interval_days: 182, isTooOften: false })
    expect(days(2000)).toMatchObject({ interval_days: 7, isTooOften: true })
  })

  it('is half a year where nothing falls short, and unknown where the use is', () => {
    expect(inspectionInterval({ use }, { findings: [] })).toEqual({ interval_days: 182, isTooOften: false }) // SOURCE hand
    expect(inspectionInterval({}, { findings: [until(1)] })).toBeUndefined()
  })
})
