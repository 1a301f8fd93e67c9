import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDesign } from '../design/read-design.ts'
import { wires } from '../design/springs/wire-rows.ts'
import { partsList } from './parts-list.ts'
import { springMass_kg } from './spring-mass.ts'

const { value: heron } = readDesign(readFileSync(join(import.meta.dirname, '../../designs/heron.json'), 'utf8'), 'heron')
const [spring] = heron?.springs ?? []

describe('the mass of a spring', () => {
  it('is that of its wire, drawn out', () => {
    // SOURCE hand: wire 1.2, outside 11.2, so mean 10; π × 10 × 8.75 + 20 = 294.89 mm; × π/4 × 1.44 = 333.51 mm³; × 7.85e-6 kg
    expect(springMass_kg(spring)).toBeCloseTo(333.51 * 7.85e-6, 7)
  })

  it('agrees with the wire cut into small pieces along its helix', () => {
    const [coils, mean, free] = [10, 8, 30]
    const steps = 20_000
    const place = (share: number) => {
      const angle = 2 * Math.PI * coils * share
      return [(mean / 2) * Math.cos(angle), (mean / 2) * Math.sin(angle), free * share]
    }
    let length = 0
    for (let step = 0; step < steps; step++) {
      const [a, b] = [place(step / steps), place((step + 1) / steps)]
      length += Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
    }
    const wire = { material: spring.wire?.material, wire_mm: 1, mean_mm: mean, coils }
    const pressed = { ...spring, kind: 'compression', freeLength_mm: free, wire } as unknown as typeof spring
    // SOURCE other-method: the length summed over straight pieces
    expect(springMass_kg(pressed)).toBeCloseTo(length * (Math.PI / 4) * 7.85e-6, 8)
  })

  it('is in the parts list where the wire is stated, and every wire of the table has a density', () => {
    const item = (heron && partsList(heron).items.find(({ kind }) => kind === 'spring')) ?? undefined
    // SOURCE property
    expect(item?.mass_kg).toBe(springMass_kg(spring))
    for (const material of wires) {
      expect(springMass_kg({ ...spring, wire: { ...spring.wire, material } } as typeof spring), material.name).toBeGreaterThan(0)
    }
    const { wire: _, ...bare } = spring
    expect(springMass_kg(bare as typeof spring)).toBeUndefined()
  })
})
