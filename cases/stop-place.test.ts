/**
 * Why the stop's place matters: how far a hundredth of a millimetre on one length moves the closed dead-centre margin, with the
 * stop beside the toggle (heron) and with the stop at the MCP.
 *
 * SOURCE other-method (script apart from the project: part coordinates by Newton, stop contact solved with them, central differences of
 * ±0.01 mm). "About seven" stands for the lengths that lie between the MCP and the toggle: 5 for the proximal phalanx, 7½ for the upper link,
 * 8½ for the middle phalanx, 8 for all of them together. The base link does not count at all beside the toggle: the shelf leaves it out.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { evaluate, readDesign } from '../engine/index.ts'

const MARGIN = 'closed.toggle.distal.deadCentreMargin'
const STEP_mm = 0.01

type Typed = string | { readonly value: string }

/** Degrees of margin for a millimetre on a length. */
function slope_deg_mm(name: string, length: string): number {
  const document = JSON.parse(readFileSync(join(import.meta.dirname, `../designs/${name}.json`), 'utf8'))
  const typed: Typed = document.dimensions[length]
  const nominal = typeof typed === 'string' ? typed : typed.value
  const [less, more] = [-STEP_mm, STEP_mm].map((step) => {
    // Load cases, their share of the use, requirements and risks take no part in where the finger closes.
    const changed = { ...document, loadCases: {}, use: undefined, requirements: {}, risks: undefined }
    changed.dimensions = { ...document.dimensions, [length]: `${nominal} + ${step} mm` }
    return margin_deg(JSON.stringify(changed))
  })
  return (more - less) / (2 * STEP_mm)
}

function margin_deg(text: string): number {
  const { value, problems } = readDesign(text, 'changed')
  if (value === undefined) throw new Error(`refused: ${JSON.stringify(problems)}`)
  const margin = evaluate(value).figures.find(({ id }) => id === MARGIN)?.value
  if (typeof margin !== 'number') throw new Error('no margin')
  return (margin * 180) / Math.PI
}

describe.each([
  { length: 'baseLinkLength', beside: 0, atMcp: 16.0933 },
  { length: 'topLinkLength', beside: -10.7003, atMcp: 80.0007 },
  { length: 'proximalLength', beside: -2.7636, atMcp: -14.6526 },
  { length: 'middleLength', beside: 9.3946, atMcp: -79.9647 },
])('a millimetre on $length', ({ length, beside, atMcp }) => {
  it(`moves the margin by ${beside}° with the stop beside the toggle`, () => {
    expect(slope_deg_mm('heron', length)).toBeCloseTo(beside, 3)
  })

  it(`moves it by ${atMcp}° with the stop at the MCP`, () => {
    expect(slope_deg_mm('heron-stop-at-mcp', length)).toBeCloseTo(atMcp, 3)
  })
})

it('all four lengths together move the margin about eight times as far with the stop at the MCP', () => {
  const lengths = ['baseLinkLength', 'topLinkLength', 'proximalLength', 'middleLength']
  const together = (name: string): number => Math.hypot(...lengths.map((length) => slope_deg_mm(name, length)))
  // SOURCE hand (√(16.0933² + 80.0007² + 14.6526² + 79.9647²) / √(10.7003² + 2.7636² + 9.3946²) = 115.18 / 14.505)
  expect(together('heron-stop-at-mcp') / together('heron')).toBeCloseTo(7.941, 2)
})
