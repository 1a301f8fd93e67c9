import { describe, expect, it } from 'vitest'
import { tableMaterials } from '../design/read-materials.ts'
import { keptAfter, longestTime, tableHeat } from './heat.ts'

const HOUR_s = 3600
const rows = (material: string) => tableHeat.get(material)

describe('how long a hardened alloy bears heat', () => {
  it('is ten hours of 7075-T6 at 300 °F, and a tenth of it at 325 °F', () => {
    const upTo = rows('7075-T6')?.upTo ?? []
    // SOURCE book (handbook table of reheating times, from memory: 10 to 12 h at 300 °F = 148.89 °C, 1 to 2 h at 325 °F = 162.78 °C)
    expect(longestTime(upTo, 148.8)).toBeCloseTo(10 * HOUR_s, 0)
    expect(longestTime(upTo, 162.7777)).toBeCloseTo(HOUR_s, -1)
    // SOURCE hand (half-way the logarithm is half-way: √(10 × 1) = 3.162 h)
    expect((longestTime(upTo, (148.8889 + 162.7778) / 2) ?? 0) / HOUR_s).toBeCloseTo(3.162, 2)
  })

  it('shortens as it gets hotter, and is never guessed above the hottest', () => {
    for (const { upTo } of tableHeat.values()) {
      const times = Array.from({ length: 60 }, (_, step) => longestTime(upTo, 100 + 4 * step))
      // SOURCE property (heat does no good)
      for (const [index, time] of times.entries()) {
        if (index > 0 && times[index - 1] === undefined) expect(time).toBeUndefined()
        if (index > 0 && time !== undefined) expect(time).toBeLessThanOrEqual((times[index - 1] ?? 0) + 1e-6)
      }
      expect(longestTime(upTo, 400)).toBeUndefined()
    }
  })
})

describe('what is left after a cure', () => {
  it('is 95 % of 7075-T6 under a film cured at 150 °C for 2 h, and unknown at 204 °C for 1 h', () => {
    // SOURCE book (as above, from memory: at most 5 % is lost); SOURCE paper (Maldonado and others 2009, abstract, read: 204 °C harms it)
    expect(keptAfter(rows('7075-T6'), { temperature_C: 150, time_s: 2 * HOUR_s })).toBe(0.95)
    expect(keptAfter(rows('7075-T6'), { temperature_C: 204, time_s: HOUR_s })).toBeUndefined()
  })

  it('is known a little longer of 6061-T6', () => {
    // SOURCE paper (senior project of Rose, Fortune, Trout 2015, abstract, read: 6061-T6 above its minimum for hours at 390 °F = 199 °C)
    expect(keptAfter(rows('6061-T6'), { temperature_C: 199, time_s: HOUR_s / 2 })).toBe(0.95)
    expect(keptAfter(rows('6061-T6'), { temperature_C: 204, time_s: HOUR_s })).toBeUndefined()
  })

  it('is all of steel that was hardened hotter, and unknown of what the table lacks', () => {
    expect(keptAfter(rows('17-4PH H900'), { temperature_C: 204, time_s: HOUR_s })).toBe(1)
    expect(keptAfter(rows('acetal'), { temperature_C: 150, time_s: HOUR_s })).toBeUndefined()
  })

  it('is stated of materials that exist', () => {
    for (const material of tableHeat.keys()) expect(tableMaterials.has(material)).toBe(true)
  })
})
