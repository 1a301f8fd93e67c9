import { describe, expect, it } from 'vitest'
import { drawPosture, layoutSheet } from '../index.ts'
import { inventedDesign, inventedForces, inventedTravel } from '../test-support/invented-finger.ts'
import { overlap, placeLabels } from './labels.ts'
import { outlineOf } from './outline.ts'
import { escaped, svgText } from './svg.ts'
import { onSheet } from './view.ts'

const sheet = layoutSheet({ design: inventedDesign, travel: inventedTravel, width_px: 900 })
const options = { sheet, idPrefix: 't-', title: 'A finger' }

const drawn = (...about: Parameters<typeof drawPosture>) => svgText(drawPosture(...about).svg)

describe('a drawn posture', () => {
  it('keeps every pin on the sheet at every posture', () => {
    for (const posture of inventedTravel.postures) {
      for (const place of drawPosture({ design: inventedDesign, travel: inventedTravel, posture }, options).pins) {
        // SOURCE property: the sheet was laid out around everything the parts sweep over
        expect(place.x).toBeGreaterThan(0)
        expect(place.x).toBeLessThan(sheet.width)
        expect(place.y).toBeGreaterThan(0)
        expect(place.y).toBeLessThan(sheet.height)
      }
    }
  })

  it('draws lengths true to one scale', () => {
    const [posture] = inventedTravel.postures
    const drawing = drawPosture({ design: inventedDesign, travel: inventedTravel, posture }, options)
    const [mcp, pip] = drawing.pins
    // SOURCE hand (44 mm from MCP to PIP)
    expect(Math.hypot(pip.x - mcp.x, pip.y - mcp.y) / drawing.scale_px_mm).toBeCloseTo(44, 9)
  })

  it('writes the dead-centre margin, the loads and the link’s force beside their lines', () => {
    const posture = inventedTravel.postures[60]
    const forces = inventedForces(posture)
    const question = { kind: 'hold', loadCase: 'hook' } as const
    const picture = { design: inventedDesign, travel: inventedTravel, posture, forces, question }
    const svg = drawn(picture, options)
    // SOURCE hand (the invented forces and the margin of the posture, 8.705°)
    for (const words of ['>8.7°<', '>40 N<', '>310 N pushed<', '>120 N<', 'outside its friction circle']) {
      expect(svg).toContain(words)
    }
    // What the stop carries is given by nobody.
    expect(svg).not.toContain('>240 N·mm<')
    expect(drawn({ ...picture, forces: { ...forces, stops: [] } }, options)).toContain('>240 N·mm<')
    const most = forces.stops.map((stop) => ({ ...stop, most_N: 200 }))
    expect(drawn({ ...picture, forces: { ...forces, stops: most } }, options)).toContain('>120 N, at most 200 N<')
  })

  it('shows a push on the side as the feathers of an arrow, with its value', () => {
    const posture = inventedTravel.postures[60]
    const forces = { ...inventedForces(posture), sideways: [{ at: posture.pinsAt[0], force_N: 10 }] }
    const picture = { design: inventedDesign, travel: inventedTravel, posture, forces }
    const svg = drawn(picture, options)
    expect(svg).toContain('>10 N from the side<')
    expect(svg.match(/class="pin load"/g)).toHaveLength(1)
    expect(drawn({ ...picture, forces: inventedForces(posture) }, options)).not.toContain('from the side')
  })

  it('gives the same text for the same posture, and has no script, style or event in it', () => {
    const picture = { design: inventedDesign, travel: inventedTravel, posture: inventedTravel.postures[30] }
    const svg = drawn(picture, options)
    expect(drawn(picture, options)).toBe(svg)
    expect(svg).not.toMatch(/<script|<style| style=| on\w+=|NaN|Infinity|undefined/)
  })

  it('escapes names that come from a file', () => {
    const design = {
      ...inventedDesign,
      pins: inventedDesign.pins.map((pin, index) => (index === 0 ? { ...pin, id: '<b>&"' } : pin)),
    }
    const svg = drawn({ design, travel: inventedTravel, posture: inventedTravel.postures[60] }, options)
    expect(svg).toContain(escaped('<b>&"'))
    expect(svg).not.toContain('<b>')
  })

  it('leaves the detail out for a finger without a toggle', () => {
    const design = { ...inventedDesign, toggles: [] }
    const plain = layoutSheet({ design, travel: inventedTravel, width_px: 900 })
    const svg = drawn({ design, travel: inventedTravel, posture: inventedTravel.postures[60] }, { ...options, sheet: plain })
    expect(plain.detail).toBeUndefined()
    expect(svg).not.toContain('Detail')
  })
})

describe('labels', () => {
  it('never cover each other, however close their anchors are', () => {
    const labels = Array.from({ length: 12 }, (_, index) => ({
      words: `label ${index}`,
      anchor: { x: 100 + 3 * index, y: 100 + ((index * 7) % 11) },
      clear_px: 8,
      prefers_rad: index,
      className: 'name',
      size_px: 12,
    }))
    const placed = placeLabels(labels, { sheet: { left: 0, top: 0, width: 300, height: 300 }, obstacles: [] })
    for (const [index, label] of placed.entries()) {
      for (const other of placed.slice(index + 1)) {
        // SOURCE property: boxes of placed labels share no area
        expect(overlap(label.box, other.box)).toBe(0)
      }
    }
  })
})

describe('an outline', () => {
  it('lies around every hole of the part with metal to spare', () => {
    for (const part of inventedDesign.parts) {
      const outline = outlineOf(part)
      for (const hole of part.holes) {
        const nearest = Math.min(...outline.map((point) => Math.hypot(point.x_mm - hole.at.x_mm, point.y_mm - hole.at.y_mm)))
        // SOURCE hand (a hull of circles cannot come nearer to a hole than its own circle, sampled by 40 points: 1 − cos(π/40) = 0.3 %)
        expect(nearest).toBeGreaterThan((hole.diameter_mm / 2 + 2.1) * 0.9969)
      }
    }
  })

  it('is the one of the design where there is one', () => {
    const outline = [0, 1, 2].map((index) => ({ x_mm: index, y_mm: index * index }))
    expect(outlineOf({ ...inventedDesign.parts[0], outline })).toBe(outline)
  })
})

it('turns the mount frame’s y up into the sheet’s y down', () => {
  // SOURCE hand (2 px/mm, origin at 10, 20: x 10 + 2·3, y 20 − 2·4)
  expect(onSheet({ scale_px_mm: 2, origin: { x: 10, y: 20 } }, { x_mm: 3, y_mm: 4 })).toEqual({ x: 16, y: 12 })
})
