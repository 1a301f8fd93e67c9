import { createRequire } from 'node:module'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Part } from '../../engine/index.ts'
import { inventedDesign } from '../test-support/invented-finger.ts'
import { type FlatBody, partBodies, pinBody } from './flat-body.ts'
import { stepFile } from './step-file.ts'
import { stepReal, stepString } from './step-text.ts'

// SOURCE other-method: a geometric kernel that reads STEP files (replicad, on OpenCascade) measures what was written.
let kernel: typeof import('replicad')

beforeAll(async () => {
  const wasm = createRequire(import.meta.url).resolve('replicad-opencascadejs/wasm')
  const { default: start } = await import('replicad-opencascadejs')
  kernel = await import('replicad')
  kernel.setOC(await start({ locateFile: () => wasm }))
})

async function measured(bodies: readonly FlatBody[]) {
  const solid = await kernel.importSTEP(new Blob([stepFile('tried', bodies)]))
  const { volume, centerOfMass } = kernel.measureShapeVolumeProperties(
    solid as Parameters<typeof kernel.measureShapeVolumeProperties>[0],
  )
  return { kind: solid.constructor.name, faces: solid.faces, volume, centre: centerOfMass }
}

const mm = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const plate: Part = {
  ...inventedDesign.parts[1],
  outline: [mm(0, 0), mm(0, 10), mm(30, 10), mm(30, 0)],
  across: [{ from_mm: -1, to_mm: 3 }],
  holes: [{ id: 'round', at: mm(6, 4), diameter_mm: 3 }],
}

describe('a STEP file, read by another kernel', () => {
  it('has the volume and the centre of a plate with a hole', async () => {
    const { kind, volume, centre } = await measured(partBodies(plate))
    // SOURCE hand: (300 − 2.25π) × 4, centre (300 × 15 − 2.25π × 6) / (300 − 2.25π), height (−1 + 3) / 2
    const area = 300 - 2.25 * Math.PI
    expect(kind).toBe('Solid')
    expect(volume).toBeCloseTo(4 * area, 6)
    expect(centre[0]).toBeCloseTo((4500 - 13.5 * Math.PI) / area, 6)
    expect(centre[1]).toBeCloseTo((1500 - 9 * Math.PI) / area, 6)
    expect(centre[2]).toBeCloseTo(1, 6)
  })

  it('has its holes where the part has them, through its whole thickness', async () => {
    const { faces } = await measured(partBodies(plate))
    const arcs = faces.flatMap((face) => face.edges).filter((edge) => edge.geomType === 'CIRCLE')
    const middles = arcs.map(({ startPoint, endPoint }) => [(startPoint.x + endPoint.x) / 2, (startPoint.y + endPoint.y) / 2])
    // SOURCE hand: each edge is half a circle, so that its ends lie opposite; two faces see each of them
    expect(middles).toHaveLength(8)
    for (const [x, y] of middles) {
      expect(x).toBeCloseTo(6, 6)
      expect(y).toBeCloseTo(4, 6)
    }
    expect([...new Set(arcs.map(({ startPoint }) => Math.round(startPoint.z)))].sort()).toEqual([-1, 3])
  })

  it('holds a slot at an angle, and both plates of a fork', async () => {
    const slot = { id: 'slot', at: mm(15, 5), diameter_mm: 2, slot: { length_mm: 6, along_rad: 0.7 } }
    const fork = partBodies({ ...plate, holes: [slot], across: [...(plate.across ?? []), { from_mm: 5, to_mm: 7 }] })
    // SOURCE hand: (300 − π − 12) × (4 + 2); the middle of outline and slot is one
    const { volume, centre } = await measured(fork)
    expect(volume).toBeCloseTo((288 - Math.PI) * 6, 6)
    expect(centre[0]).toBeCloseTo(15, 6)
    expect(centre[1]).toBeCloseTo(5, 6)
  })

  it('has a pin as a cylinder', async () => {
    const { volume, faces } = await measured([pinBody(inventedDesign.pins[0], 20)])
    // SOURCE hand: π/4 × 3² × 20; two halves of the round and two ends
    expect(volume).toBeCloseTo(45 * Math.PI, 6)
    expect(faces).toHaveLength(4)
  })

  it('is the same for the same part, and has nothing to draw without an outline', () => {
    // SOURCE property
    expect(stepFile('plate', partBodies(plate))).toBe(stepFile('plate', partBodies({ ...plate })))
    expect(partBodies({ ...plate, outline: [] })).toEqual([])
  })
})

describe('the encoding', () => {
  it('writes reals with a point and texts in ASCII', () => {
    // SOURCE standard: ISO 10303-21, section 6.4 (encoding of the simple data types), from memory
    expect([1, -0.5, 1e-7, 2.5e21, -0].map(stepReal)).toEqual(['1.', '-0.5', '1.E-7', '2.5E21', '0.'])
    expect(stepString("pin's ⌀")).toBe("'pin''s \\X2\\2300\\X0\\'")
    expect(() => stepReal(Number.NaN)).toThrow('NaN')
  })
})
