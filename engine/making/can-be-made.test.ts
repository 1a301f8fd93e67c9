import { describe, expect, it } from 'vitest'
import type { Part } from '../design/design.ts'
import { finger } from '../sketches/finger.ts'
import { partDoubts } from './part-doubts.ts'
import { pinDoubts, reamerDoubts } from './tool-doubts.ts'
import { twinDoubts } from './twin-doubts.ts'

const mm = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const base = finger().parts[1]
const plate: Part = {
  ...base,
  id: 'plate',
  outline: [mm(0, 0), mm(20, 0), mm(20, 10), mm(0, 10)],
  thickness_mm: 8,
  across: [],
  holes: [{ id: 'a', at: mm(5, 5), diameter_mm: 4 }],
}
const found = (part: Part): readonly string[] => partDoubts(part).map((doubt) => `${doubt.place}: ${doubt.found}`)

describe('the shape of a part', () => {
  it('is doubted at an inside corner that a cutter leaves metal in, not at one that is blunt', () => {
    const notched = { ...plate, outline: [mm(0, 0), mm(20, 0), mm(20, 10), mm(10, 10), mm(10, 8), mm(0, 8)] }
    // SOURCE hand: 8 mm deep asks for a radius of 8 / (2 × 4) = 1; in a right angle it leaves √2 − 1 = 0.41
    expect(found(notched)).toEqual(['parts.plate.outline.4: an inside corner without a radius in metal 8 mm deep'])
    expect(partDoubts(notched)[0].needed).toContain('1 mm radius, which leaves 0.41 mm')
    // SOURCE hand: turned by 0.4 rad it leaves 1 / cos 0.2 − 1 = 0.020
    const blunt = { ...plate, outline: [mm(0, 0), mm(20, 0), mm(20, 10), mm(10, 8), mm(0, 8.1)] }
    expect(found(blunt)).toEqual([])
    expect(found({ ...notched, outline: notched.outline.toReversed() })).toHaveLength(1)
  })

  it('is doubted at a thin wall to the outline or to another hole, just below the bound and not at it', () => {
    const at = (x: number) => ({ ...plate, holes: [{ id: 'a', at: mm(x, 5), diameter_mm: 4 }] })
    // SOURCE hand: 2.79 − 2 is 0.79, 2.8 − 2 is 0.8
    expect(found(at(2.79))).toEqual(['parts.plate.holes.a: a wall of 0.79 mm between the hole and the outline'])
    expect(found(at(2.8000001))).toEqual([])
    const slot = { id: 'b', at: mm(12, 5), diameter_mm: 2, slot: { length_mm: 6.5, along_rad: 0 } }
    // SOURCE hand: 12 − 3.25 − 1 is 7.75, 5 + 2 is 7
    expect(found({ ...plate, holes: [...plate.holes, slot] })).toEqual([
      'parts.plate.holes.a: a wall of 0.75 mm between the hole and hole b',
    ])
  })

  it('is doubted where a hole is deeper than five diameters in its thickest slice, and where zones have no datum', () => {
    const deep = {
      ...plate,
      across: [
        { from_mm: 0, to_mm: 3 },
        { from_mm: 5, to_mm: 26 },
      ],
    }
    // SOURCE hand: 21 > 5 × 4
    expect(found(deep)).toEqual(['parts.plate.holes.a: a hole of 4 mm through 21 mm'])
    const zoned = { ...plate, holes: [{ ...plate.holes[0], positionZone_mm: 0.02 }] }
    expect(found(zoned)).toEqual(['parts.plate.holes: zones of position that are measured from no hole'])
  })
})

describe('tools and pins', () => {
  const size = (nominal_mm: number, least: number, most: number) => ({ nominal_mm, limits: { least, most } })
  const drawn = (least: number, most: number) => {
    const place = { x: { nominal_mm: 5 }, y: { nominal_mm: 5 } }
    return { part: plate, holes: [{ hole: plate.holes[0], ...place, diameter: size(4, least, most) }] }
  }

  it('are there when a step of 0.01 mm lies within the limits', () => {
    // SOURCE hand
    expect(reamerDoubts(drawn(4.011, 4.019))).toHaveLength(1)
    expect(reamerDoubts(drawn(4.011, 4.02))).toEqual([])
    expect(reamerDoubts(drawn(4.02, 4.025))).toEqual([])
  })

  it('are bought when the limits hold a zone that is sold', () => {
    const pin = { ...finger().pins[0], diameter_mm: 3 }
    // SOURCE standard: ISO 286-2, h8 of 3 mm is 0 to −14 µm, m6 +2 to +8 µm
    expect(pinDoubts({ pin, diameter: size(3, 2.986, 3) })).toEqual([])
    expect(pinDoubts({ pin, diameter: size(3, 3.001, 3.01) })).toEqual([])
    expect(pinDoubts({ pin, diameter: size(3, 2.987, 3) })[0].found).toContain('h8 is 2.986 to 3 mm')
    expect(pinDoubts({ pin: { ...pin, diameter_mm: 3.2 }, diameter: { nominal_mm: 3.2 } })[0].needed).toContain('3 mm')
  })
})

describe('parts that are taken for one another', () => {
  const lame: Part = { ...plate, outline: [mm(0, 0), mm(20, 0), mm(17, 10), mm(0, 8)] }
  const turned = (part: Part, angle: number, over: 1 | -1): Part => {
    const move = ({ x_mm, y_mm }: { x_mm: number; y_mm: number }) => {
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
      return mm(7 + x_mm * cos - over * y_mm * sin, x_mm * sin + over * y_mm * cos)
    }
    const outline = part.outline.map(move)
    const corners = over === 1 ? [...outline.slice(2), ...outline.slice(0, 2)] : outline.toReversed()
    return {
      ...part,
      id: 'other',
      name: 'the other',
      outline: corners,
      holes: part.holes.map((hole) => ({ ...hole, at: move(hole.at) })),
    }
  }

  it('are mirror images in any position, and not the same part turned', () => {
    // SOURCE property
    expect(twinDoubts([lame, turned(lame, 0.7, -1)])[0].found).toBe('a part that is the mirror image of the other')
    expect(twinDoubts([lame, turned(lame, 0.7, 1)])).toEqual([])
  })

  it('are alike when they differ by less than half a millimetre', () => {
    const moved = (by: number) => ({ ...lame, id: 'other', name: 'the other', holes: [{ ...lame.holes[0], at: mm(5 + by, 5) }] })
    // SOURCE hand
    expect(twinDoubts([lame, moved(0.3)])[0].found).toBe('a part that differs from the other by 0.30 mm only')
    expect(twinDoubts([lame, moved(0.6)])).toEqual([])
  })
})
