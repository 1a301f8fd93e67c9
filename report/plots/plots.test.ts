import { describe, expect, it } from 'vitest'
import { drawPlot, drawTravelScale, driveAt, driveMarks, plotGroups, readTravel, svgText } from '../index.ts'
import { inventedEvaluation, inventedFigure, inventedFigures, inventedTravel } from '../test-support/invented-finger.ts'

const RAD = Math.PI / 180
const size = { width_px: 430, height_px: 240 }

describe('plots', () => {
  it('gather the series by what they show, and draw the jam and slip angles across the dead-centre margin', () => {
    const figures = inventedFigures(inventedFigure('loadCase.hook.slipAngle', 13.9 * RAD, 'rad'))
    const groups = plotGroups(inventedEvaluation({ figures }))
    expect(groups.map((group) => group.id)).toEqual(['flexion', 'margin', 'return'])
    const margin = groups[1]
    // SOURCE hand (5.1° and 13.9° of the invented figures)
    expect(margin.limits.map((limit) => limit.value / RAD)).toEqual([expect.closeTo(5.1, 9), expect.closeTo(13.9, 9)])
    const svg = svgText(drawPlot({ group: margin, travel: inventedTravel }, size).svg)
    expect(svg).toContain('jams at rest 5.1°')
    expect(svg).toContain('slips 13.9°')
  })

  it('show a stretch without values as a gap with a word', () => {
    const series = inventedTravel.series.map((one) =>
      one.id === 'return.reserveMoving'
        ? { ...one, values: one.values.map((value, index) => (index > 20 ? undefined : value)) }
        : one,
    )
    const travel = { ...inventedTravel, series }
    const group = plotGroups(inventedEvaluation({ travel })).find((one) => one.id === 'return')
    if (group === undefined) throw new Error('no plot of the return')
    const svg = svgText(drawPlot({ group, travel }, size).svg)
    expect(svg).toContain('does not exist here')
    expect(svg).not.toMatch(/NaN|undefined/)
  })

  it('leave out a series that never exists', () => {
    const series = inventedTravel.series.map((one) => ({ ...one, values: one.values.map(() => undefined) }))
    expect(plotGroups(inventedEvaluation({ travel: { ...inventedTravel, series } }))).toEqual([])
  })
})

describe('the scale of the travel', () => {
  it('has a stroke where the drive passes each degree', () => {
    const marks = driveMarks(inventedTravel, 5)
    // SOURCE hand (0° to 75° in steps of 5° are 16 marks; the invented travel is linear in the drive, so 40° stands at 40/75)
    expect(marks.map((mark) => mark.drive)).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75])
    expect(marks[8].arc_ratio).toBeCloseTo(40 / 75, 9)
  })

  it('shows a degree twice that the drive passes twice, where it turns back at dead centre', () => {
    const postures = [0, 0.5, 1].map((arc_ratio, index) => ({
      ...inventedTravel.postures[0],
      arc_ratio,
      drive: [60, 70, 65][index] * RAD,
    }))
    const marks = driveMarks({ ...inventedTravel, postures }, 2)
    // SOURCE hand (62 … 70 going up, 68 and 66 coming back)
    expect(marks.map((mark) => Math.round(mark.drive))).toEqual([60, 62, 64, 66, 68, 70, 68, 66])
  })

  it('reads the drive between postures, and names the event it stands on', () => {
    // SOURCE hand (half of 75°)
    expect(driveAt(inventedTravel, 0.5) / RAD).toBeCloseTo(37.5, 9)
    expect(readTravel(inventedTravel, 0.5)).toBe('37.5°')
    expect(readTravel(inventedTravel, 1)).toBe('75.0°, stop')
  })

  it('engraves its events', () => {
    const svg = svgText(drawTravelScale(inventedTravel, { width_px: 800 }).svg)
    expect(svg).toContain('>open<')
    expect(svg).toContain('>stop<')
  })
})
