import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'

const heron = readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8')

function overlapsOf(text: string) {
  const { value } = readDesign(text, 'heron')
  if (value === undefined) throw new Error('the design was refused')
  const evaluation = evaluate(value)
  const depth = evaluation.figures.find(({ id }) => id === 'motion.collisionDepth')?.value
  const names = evaluation.travel?.overlaps.map(({ parts }) => parts.map((part) => value.parts[part].id).join(' and '))
  return { overlaps: evaluation.travel?.overlaps ?? [], depth, names }
}

it('finds no two parts of the example finger in one place', () => {
  expect(overlapsOf(heron)).toMatchObject({ overlaps: [], depth: 0 })
})

it('names two parts that lie side by side and run into each other, with the place and the depth that the figure has', () => {
  // The phalanges' plates are moved to where the mount's are.
  const clashing = heron.replaceAll('[["-10 mm", "-5.5 mm"], ["5.5 mm", "10 mm"]]', '[["-5.5 mm", "-1 mm"], ["1 mm", "5.5 mm"]]')
  const { overlaps, depth, names } = overlapsOf(clashing)
  expect(names).toContain('mount and proximal')
  // SOURCE property: the deepest pair comes first, and the figure is its depth
  expect(overlaps[0].depth_mm).toBe(depth)
  expect(overlaps.map(({ depth_mm }) => depth_mm)).toEqual(overlaps.map(({ depth_mm }) => depth_mm).sort((a, b) => b - a))
  for (const { first_ratio, deepest_ratio } of overlaps) expect(first_ratio).toBeLessThanOrEqual(deepest_ratio)
})
