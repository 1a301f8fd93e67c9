import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { type Design, readDesign } from '../../engine/index.ts'
import { movableHoles, movedHoles, stepped, withHoleAt } from './design-text.ts'

const text = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

function read(written: string): Design {
  const { value } = readDesign(written, 'heron')
  if (value === undefined) throw new Error('the design was refused')
  return value
}

it('offers the holes whose place is plain millimetres, of parts that are no links', () => {
  const names = movableHoles(read(text), text).map((hole) => `${hole.partId}.${hole.holeId}`)
  // SOURCE hand (the example file: the joints stand at the origin or at named lengths, the links' holes are lengths)
  expect(names).toEqual(['mount.base', 'middle.base', 'proximal.top', 'distal.top'])
})

it('changes the place of one hole and nothing else', () => {
  const design = read(text)
  const hole = movableHoles(design, text)[0]
  const changed = withHoleAt(text, hole, { x_mm: 6.5, y_mm: 3.4 })
  // SOURCE hand (the place just given)
  expect(JSON.parse(changed).parts.mount.holes.base).toMatchObject({ x: '6.50 mm', y: '3.40 mm' })
  const restored = JSON.parse(changed)
  restored.parts.mount.holes.base = JSON.parse(text).parts.mount.holes.base
  expect(restored).toEqual(JSON.parse(text))
  expect(movedHoles(text, changed)).toEqual([{ hole: 'mount.base', from: '(6.47 mm, 3.43 mm)', to: '(6.50 mm, 3.40 mm)' }])
  expect(movedHoles(text, text)).toEqual([])
})

it('steps by a tenth of a millimetre', () => {
  const { x_mm, y_mm } = stepped({ x_mm: 6.4712, y_mm: -3.4512 })
  // SOURCE hand (rounded to 0.1)
  expect(x_mm).toBeCloseTo(6.5, 12)
  expect(y_mm).toBeCloseTo(-3.5, 12)
})
