// SOURCE hand (exit statuses as `fingerwright --help` states them; the hinge's wear worked out beside it)
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { caution } from '../report/index.ts'
import { example, testFolder } from './test-support/example.ts'
import { tryCommand } from './test-support/tried-terminal.ts'

const none = { least: 0, likely: 0, most: 0 }

/** An arm on one pin that turns by 90° against 50 N across it: what rubs there and back is 50 N × 1.5 mm × π. */
const hinge = {
  format: 'fingerwright-design/1',
  title: 'Hinge',
  friction: { pair: { moving: none, rest: none, wear: { rate: 'own' }, source: 'invented' } },
  wearRates: { own: { least: '1e-6 mm^3/N/m', likely: '1e-6 mm^3/N/m', most: '1e-5 mm^3/N/m', source: 'invented' } },
  parts: {
    mount: { role: 'mount', holes: { a: { x: '0 mm', y: '0 mm', diameter: '3 mm' } } },
    arm: {
      role: 'proximal',
      thickness: '6 mm',
      holes: { a: { x: '0 mm', y: '0 mm', diameter: '3.01 mm' } },
      pads: { tip: ['40 mm', '0 mm'] },
      drawn: { x: '0 mm', y: '0 mm', turn: '0 deg' },
    },
  },
  pins: { a: { joins: ['mount.a', 'arm.a'], diameter: '3 mm', friction: 'pair' } },
  drive: { kind: 'turn', part: 'arm', against: 'mount', pin: 'a', open: '0 deg', closed: '90 deg' },
  loadCases: { across: { forces: [{ at: 'arm.tip', force: '50 N', direction: '90 deg', frame: 'arm' }], acts: 'travel' } },
  use: { closingsPerDay: 1000, years: 1 },
  tip: 'arm.tip',
  requirements: { reach: { figure: 'closed.tip.x', atMost: '0.01 mm', reason: 'x', source: 'x' } },
}

describe('wear', () => {
  it('says which requirement falls short first, when, and of what nothing is known for sure', async () => {
    const drawing = join(testFolder(), 'wear.svg')
    const { status, output } = await tryCommand(['wear', '-', '--drawing', drawing], { input: JSON.stringify(hinge) })
    // SOURCE hand (1e-8 mm²/N × 235.6 N·mm / 18 mm² = 1.309e-7 mm a closing; the tip moves by half of that: 0.01 mm after 152 800; tenfold at
    // the likely rate, beyond the 730 000 that are looked at)
    expect(output.replaceAll('\n', ' ')).toContain('tip, x, closed is the first that is no longer met, after 153 000 closings')
    expect(output).toContain('all under the load that rubs most')
    expect(output.replaceAll('\n', ' ')).toContain(caution)
    expect(status).toBe(2)
    expect(readFileSync(drawing, 'utf8')).toContain('Play of the tip, mm')
  })

  it('prints its numbers for machines', async () => {
    const { output } = await tryCommand(['wear', '-', '--json'], { input: JSON.stringify(hinge) })
    const { wear } = JSON.parse(output)
    expect(wear.findings).toMatchObject([{ requirement: 'reach', verdict: 'undecided' }])
    // SOURCE hand (50 N × 1.5 mm × π there and back)
    expect(wear.most.places[0].rubbed_Nm).toBeCloseTo(0.2356, 4)
  })

  it('asks for what is not stated', async () => {
    const { use: _, ...unused } = example
    const { status, errors } = await tryCommand(['wear', '-'], { input: JSON.stringify(unused) })
    expect(status).toBe(2)
    expect(errors).toMatch(/^Undecided: /)
    expect(errors).toContain('use: nothing')
  })
})
