import { expect, it } from 'vitest'
import { tryCommand } from './test-support/tried-terminal.ts'

const none = { least: 0, likely: 0, most: 0 }
const square = (half: string) =>
  [`-${half}`, half].flatMap((x) => (x === half ? [half, `-${half}`] : [`-${half}`, half]).map((y) => [x, y]))
const plate = { material: '7075-T6', outline: square('10 mm') }

/** An arm on one pin, its lugs beside each other; 100 N pull across and along it, so that the pin is in single shear and bent. */
const hinge = {
  format: 'fingerwright-design/1',
  title: 'Hinge',
  friction: { pair: { moving: none, rest: none, source: 'invented' } },
  parts: {
    mount: { ...plate, role: 'mount', across: [['0 mm', '6 mm']], holes: { a: { x: '0 mm', y: '0 mm', diameter: '3 mm' } } },
    arm: {
      ...plate,
      role: 'proximal',
      across: [['6 mm', '12 mm']],
      holes: { a: { x: '0 mm', y: '0 mm', diameter: '3 mm' } },
      pads: { tip: ['9 mm', '0 mm'] },
      drawn: { x: '0 mm', y: '0 mm', turn: '0 deg' },
    },
  },
  pins: { a: { joins: ['mount.a', 'arm.a'], diameter: '3 mm', material: '17-4PH H900', friction: 'pair', fixedIn: 'mount' } },
  drive: { kind: 'turn', part: 'arm', against: 'mount', pin: 'a', open: '0 deg', closed: '90 deg' },
  loadCases: { pull: { forces: [{ at: 'arm.tip', force: '100 N', direction: '0 deg', frame: 'arm' }], acts: 'travel' } },
}

it('strength --changes names the step that helps most, as text and for machines', async () => {
  const input = { input: JSON.stringify(hinge) }
  const { output } = await tryCommand(['strength', '-', '--changes'], input)
  expect(output).toContain('Which change helps most')
  const said = output.replaceAll(/\s+/g, ' ')
  expect(said).toMatch(
    /The smallest margin is [\d.]+: pin a in bending\. Of steps of \d+ sizes pin a with its holes helps most: \+0\.1 mm/,
  )
  const { changes } = JSON.parse((await tryCommand(['strength', '-', '--changes', '--json'], input)).output)
  const { margin: before } = changes.first
  const [best] = changes.changes
  // SOURCE hand (bending goes as one over the cube of the diameter: (margin + 1) grows by (3.1/3)³)
  expect((best.margin + 1) / (before + 1)).toBeCloseTo((3.1 / 3) ** 3, 6)
  // Nothing of it is worked out where it was not asked for.
  expect(JSON.parse((await tryCommand(['strength', '-', '--json'], input)).output).changes).toBeUndefined()
})
