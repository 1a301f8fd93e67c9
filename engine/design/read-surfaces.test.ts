import { describe, expect, it } from 'vitest'
import { readDesign } from './read-design.ts'
import { type Changes, documentText } from './test-support/full-document.ts'

const { value: design } = readDesign(documentText({ 'grease.arbour.stops': ['closedStop'] }))
const problems = (changes: Changes) =>
  (readDesign(documentText(changes)).problems ?? []).map(({ place, code }) => `${place}: ${code}`)

it('edges, roughness, places of racks and grease are read in inside units', () => {
  const [mount, proximal, middle] = design?.parts ?? []
  // SOURCE hand (as typed; 1.6 µm is 0.0016 mm; a bound that is left out is a sharp edge)
  expect(proximal).toMatchObject({
    outsideEdges: { from_mm: -0.1, to_mm: -0.3 },
    insideEdges: { from_mm: 0, to_mm: 0.3 },
    roughness_mm: expect.closeTo(0.0016, 12),
    racks: [{ x_mm: 20, y_mm: 7 }],
  })
  expect(proximal.holes[0]).toMatchObject({ edge: { from_mm: 0, to_mm: -0.2 }, roughness_mm: expect.closeTo(0.0008, 12) })
  expect(middle.edges[0].roughness_mm).toBeCloseTo(0.0004, 12)
  expect(design?.pins[0]).toMatchObject({ edge: { from_mm: -0.1, to_mm: -0.3 }, roughness_mm: expect.closeTo(0.0004, 12) })
  expect(mount).not.toHaveProperty('outsideEdges')
  expect(design?.grease).toEqual([{ id: 'arbour', grease: 'thin grease', amount: 'a film', pins: [], stops: [0], springs: [0] }])
})

describe('a surface is refused', () => {
  it.each<[string, Changes, readonly string[]]>([
    ['with an edge of no room', { 'parts.proximal.insideEdges': '0 mm' }, ['parts.proximal.insideEdges: too small']],
    ['with a least bound alone', { 'pins.mcp.edge': undefined }, ['pins.mcp.edge: missing']],
    ['with more at least than at most', { 'pins.mcp.edgeFrom': '-0.4 mm' }, ['pins.mcp.edgeFrom: wrong order']],
    ['with Ra typed in mm', { 'parts.proximal.roughness': '1.6 mm' }, ['parts.proximal.roughness: too large']],
    ['with Ra of nothing', { 'parts.middle.edges.shelf.roughness': '0 um' }, ['parts.middle.edges.shelf.roughness: too small']],
    ['with a rack beside the part', { 'parts.proximal.racks': [['20 mm', '7.01 mm']] }, ['parts.proximal.racks.0: outside']],
    ['with a rack and no coating', { 'parts.mount.racks': [['0 mm', '0 mm']] }, ['parts.mount.coating: missing']],
    ['with grease on nothing', { 'grease.arbour': { with: 'thin grease' } }, ['grease.arbour: missing']],
    ['with grease on a pin that is not there', { 'grease.arbour.pins': ['mpc'] }, ['grease.arbour.pins.0: unknown name']],
  ])('%s', (_, changes, expected) => {
    expect(problems(changes)).toEqual(expected)
  })

  it('and not just inside of each bound', () => {
    // SOURCE property (a sharp edge runs from a little off to a little over; 50 µm is the roughest grade, N12)
    const sharp = { 'pins.mcp.edge': '0.05 mm', 'pins.mcp.edgeFrom': '-0.05 mm', 'parts.proximal.roughness': '50 um' }
    expect(problems({ ...sharp, 'parts.proximal.racks': [['20 mm', '7 mm']] })).toEqual([])
  })
})
