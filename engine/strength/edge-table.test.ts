import { expect, it } from 'vitest'
import { seeded } from '../sketches/seeded.ts'
import { edgeTable, leastReach } from './edge-table.ts'
import { outlineReach } from './outline-reach.ts'

it('is never above the true reach, and close to it on long straight edges', () => {
  // SOURCE property (a lower bound; 300 random stars about the point, with notches, 400 directions each)
  const dice = seeded(88)
  let closest = 0
  for (let star = 0; star < 300; star++) {
    const corners = 3 + Math.floor(dice.between(0, 12))
    const outline = Array.from({ length: corners }, (_, index) => {
      const angle = (2 * Math.PI * (index + dice.between(0, 0.9))) / corners
      const reach = dice.between(1, 9)
      return { x_mm: 3 + reach * Math.cos(angle), y_mm: -2 + reach * Math.sin(angle) }
    })
    const from = { x_mm: 3, y_mm: -2 }
    const table = edgeTable(outline, from)
    for (let look = 0; look < 400; look++) {
      const angle = dice.between(-10, 10)
      const reach = outlineReach(outline, from, { x: Math.cos(angle), y: Math.sin(angle) })
      expect(leastReach(table, angle)).toBeLessThanOrEqual(reach + 1e-12)
      if (reach > 0) closest = Math.max(closest, leastReach(table, angle) / reach)
    }
  }
  expect(closest).toBeGreaterThan(0.98)
})
