import { describe, expect, it } from 'vitest'
import type { Part } from '../design/design.ts'
import { finger } from '../sketches/finger.ts'
import { partBody } from './part-body.ts'
import { partsList, pinLength_mm } from './parts-list.ts'

const mm = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const aluminium = { name: 'aluminium', density_kg_mm3: 2.7e-6, modulus_MPa: 70_000, source: 'invented' }
const plate: Part = {
  ...finger().parts[1],
  outline: [mm(0, 0), mm(20, 0), mm(20, 10), mm(0, 10)],
  thickness_mm: 4,
  material: aluminium,
  holes: [{ id: 'a', at: mm(5, 5), diameter_mm: 4 }],
  across: [{ from_mm: -2, to_mm: 2 }],
}

describe('the body of a part', () => {
  it('is its outline less its holes, through its thickness', () => {
    // SOURCE hand: (200 − 4π) × 4; centre (200 × 10 − 4π × 5) / (200 − 4π)
    const body = partBody(plate)
    expect(body?.volume_mm3).toBeCloseTo((200 - 4 * Math.PI) * 4, 9)
    expect(body?.centre.x_mm).toBeCloseTo((2000 - 20 * Math.PI) / (200 - 4 * Math.PI), 9)
    expect(body?.centre.y_mm).toBeCloseTo(5, 9)
  })

  it('agrees with a count of small squares, slot and all', () => {
    // SOURCE other-method: the same shape cut into squares of 0.02 mm, those whose middle lies in the material counted
    const slotted = { ...plate, holes: [{ id: 's', at: mm(12, 4), diameter_mm: 3, slot: { length_mm: 5, along_rad: 0 } }] }
    let area = 0
    let x = 0
    const step = 0.02
    for (let u = step / 2; u < 20; u += step) {
      for (let v = step / 2; v < 10; v += step) {
        const along = Math.max(-2.5, Math.min(2.5, u - 12))
        if ((u - 12 - along) ** 2 + (v - 4) ** 2 < 1.5 ** 2) continue
        area += step * step
        x += u * step * step
      }
    }
    const body = partBody(slotted)
    expect((body?.volume_mm3 ?? 0) / 4).toBeCloseTo(area, 1)
    expect(body?.centre.x_mm).toBeCloseTo(x / area, 3)
  })

  it('does not exist without outline or thickness', () => {
    const { thickness_mm: _, ...thin } = plate
    // SOURCE hand
    expect(partBody(thin)).toBeUndefined()
    expect(partBody({ ...plate, outline: [] })).toBeUndefined()
  })
})

describe('the parts list', () => {
  const design = finger()
  const parts = design.parts.map((part, index) => (index === 1 ? plate : part))

  it('numbers every part, pin, spring and bought item', () => {
    const bought = [{ id: 'washer', title: 'washer', quantity: 4, each: 1, mass_kg: 1e-4 }]
    const list = partsList({ ...design, bought })
    // SOURCE hand
    expect(list.items.map(({ number }) => number)).toEqual(list.items.map((_, index) => index + 1))
    expect(list.items.at(-1)).toMatchObject({ kind: 'bought', perFinger_count: 4 })
    expect(list.items).toHaveLength(design.parts.length + design.pins.length + 1)
  })

  it('weighs what it can, and says what it cannot', () => {
    const list = partsList({ ...design, parts })
    const item = list.items[1]
    // SOURCE hand: (200 − 4π) × 4 mm³ at 2.7e-6 kg/mm³
    expect(item.mass_kg).toBeCloseTo((200 - 4 * Math.PI) * 4 * 2.7e-6, 12)
    expect(list.unweighed).toContain(design.pins[0].id)
    expect(list.items.every(({ mass_kg, why }) => (mass_kg === undefined) !== (why === undefined))).toBe(true)
  })

  it('takes a pin from outermost face to outermost face', () => {
    const wide: readonly Part[] = parts.map((part) => ({ ...part, across: [{ from_mm: -5, to_mm: 3 }] }))
    const { across: _, ...unplaced } = parts[0]
    // SOURCE hand
    expect(pinLength_mm(design.pins[0], wide)).toBe(8)
    expect(pinLength_mm(design.pins[0], [unplaced, ...wide.slice(1)])).toBeUndefined()
  })
})
