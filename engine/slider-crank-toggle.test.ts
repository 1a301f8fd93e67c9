/** The oldest toggle of all: a crank and a rod whose far pin runs in a slot of the mount. */
import { describe, expect, it } from 'vitest'
import { readDesign } from './design/read-design.ts'
import { evaluate } from './evaluate.ts'

const DEG = Math.PI / 180
const CRANK_mm = 12
const ROD_mm = 35
const PUSH_N = 40

const free = { least: 0, likely: 0, most: 0 }
const hole = (x_mm: number) => ({ x: `${x_mm} mm`, y: '0 mm', diameter: '3.02 mm' })
const guide = { ...hole(40), slot: { length: '30 mm', along: '0 deg' } }

const press = (closed_deg: number, guided: object = guide) =>
  JSON.stringify({
    format: 'fingerwright-design/1',
    title: 'A crank that pushes its rod along a slot',
    friction: { none: { moving: free, rest: free, source: 'invented' } },
    parts: {
      mount: { role: 'mount', holes: { shaft: hole(0), guide: guided } },
      crank: {
        role: 'proximal',
        holes: { shaft: hole(0), knee: hole(CRANK_mm) },
        drawn: { x: '0 mm', y: '0 mm', turn: '60 deg' },
      },
      rod: { role: 'link', holes: { knee: hole(0), end: hole(ROD_mm) }, pads: { end: [`${ROD_mm} mm`, '0 mm'] } },
    },
    pins: {
      shaft: { joins: ['mount.shaft', 'crank.shaft'], diameter: '3 mm', friction: 'none' },
      knee: { joins: ['crank.knee', 'rod.knee'], diameter: '3 mm', friction: 'none' },
      end: { joins: ['rod.end', 'mount.guide'], diameter: '3 mm', friction: 'none' },
    },
    drive: { kind: 'turn', part: 'crank', against: 'mount', pin: 'shaft', open: '-60 deg', closed: `${closed_deg} deg` },
    toggles: { knee: { pins: ['shaft', 'knee', 'end'] } },
    loadCases: { push: { forces: [{ at: 'rod.end', force: `${PUSH_N} N`, direction: '180 deg' }] } },
  })

describe('the toggle of a slider-crank', () => {
  it.each([40, 20, 5, 1])('with its crank %i° short of the line', (crank_deg) => {
    const { value: design, problems } = readDesign(press(-crank_deg), 'press')
    expect(problems).toBeUndefined()
    const figures = new Map(evaluate(design!).figures.map(({ id, value }) => [id, value]))
    // SOURCE book (in-line slider-crank, any text on mechanisms): the rod leans by φ with ROD sin φ = CRANK sin θ; the knee is short of
    // straight by θ + φ
    const crank = crank_deg * DEG
    const lean = Math.asin((CRANK_mm * Math.sin(crank)) / ROD_mm)
    expect(figures.get('closed.toggle.knee.deadCentreMargin')).toBeCloseTo(crank + lean, 9)
    // SOURCE hand (virtual work: the end moves by CRANK sin(θ + φ) / cos φ for each radian of the crank)
    const couple = (PUSH_N * CRANK_mm * Math.sin(crank + lean)) / Math.cos(lean)
    expect(figures.get('loadCase.push.effortFrictionless')).toBeCloseTo(couple, 8)
  })

  it('is none where the far pin sits in a round hole: three pins of two arms and the mount are a rigid triangle', () => {
    const { problems = [] } = readDesign(press(-5, hole(40)), 'press')
    expect(problems.map(({ code, place }) => `${place}: ${code}`)).toContain('toggles.knee.pins: no toggle')
  })
})
