import { expect, it } from 'vitest'
import type { Part } from './design.ts'
import { partMass } from './mass.ts'
import { polygon } from './polygon.ts'
import { tableMaterials } from './read-materials.ts'

const point = (x_mm: number, y_mm: number) => ({ x_mm, y_mm })
const square = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
const bare: Part = { id: 'plate', name: 'plate', role: 'link', outline: [], holes: [], edges: [], pads: [] }
const material = { name: 'x', density_kg_mm3: 2.7e-6, modulus_MPa: 70_000, source: 'x' }

it('finds area and centre of a polygon, whichever way around and wherever it lies', () => {
  // SOURCE hand (10 · 10 = 100, centre 5, 5; triangle 0-0, 6-0, 0-3: area 9, centre 2, 1; moved by 100, −50)
  expect(polygon(square)).toEqual({ area_mm2: 100, centre: point(5, 5) })
  expect(polygon(square.toReversed())).toEqual({ area_mm2: 100, centre: point(5, 5) })
  const triangle = [point(0, 0), point(6, 0), point(0, 3)]
  expect(polygon(triangle)).toEqual({ area_mm2: 9, centre: point(2, 1) })
  const moved = polygon(triangle.map(({ x_mm, y_mm }) => point(x_mm + 100, y_mm - 50)))
  expect(moved.centre.x_mm).toBeCloseTo(102, 12)
  expect(moved.centre.y_mm).toBeCloseTo(-49, 12)
})

it('takes the mass as declared, else that of the plate', () => {
  // SOURCE hand (100 mm² · 5 mm · 2.7e-6 kg/mm³ = 1.35e-3 kg)
  const plate = { ...bare, outline: square, thickness_mm: 5, material }
  expect(partMass(plate)).toEqual({ mass_kg: expect.closeTo(1.35e-3, 15), centreOfMass: point(5, 5) })
  expect(partMass({ ...plate, mass_kg: 0.002 })).toEqual({ mass_kg: 0.002, centreOfMass: point(5, 5) })
  expect(partMass({ ...plate, centreOfMass: point(1, 2) })?.centreOfMass).toEqual(point(1, 2))
  expect(partMass({ ...bare, mass_kg: 0 })).toEqual({ mass_kg: 0, centreOfMass: point(0, 0) })
})

it('says that it is not known when too little is declared', () => {
  expect(partMass(bare)).toBeUndefined()
  expect(partMass({ ...bare, mass_kg: 0.001 })).toBeUndefined()
  expect(partMass({ ...bare, outline: square, thickness_mm: 5 })).toBeUndefined()
  expect(partMass({ ...bare, outline: square, material })).toBeUndefined()
  expect(partMass({ ...bare, thickness_mm: 5, material })).toBeUndefined()
})

it('has a table of materials in inside units, each with its source', () => {
  // SOURCE book (MIL-HDBK-5J, 2003: 6061 density 0.098 lb/in³ = 2713 kg/m³, table 3.6.2.0(b1); Ti-6Al-4V bar 16.9e3 ksi =
  // 116.5 GPa, table 5.4.1.0(b); both as transcribed with page numbers; 17-4PH 28.5e3 ksi = 196.5 GPa from memory)
  expect((tableMaterials.get('6061-T6')?.density_kg_mm3 ?? 0) * 1e9).toBeCloseTo(2713, 0)
  expect((tableMaterials.get('Ti-6Al-4V')?.modulus_MPa ?? 0) / 1000).toBeCloseTo(116.5, 1)
  expect((tableMaterials.get('17-4PH H900')?.modulus_MPa ?? 0) / 1000).toBeCloseTo(196.5, 1)
  expect([...tableMaterials.values()].filter(({ source }) => source.length < 20)).toEqual([])
})

it('has strengths in the order that nature asks for', () => {
  // SOURCE book (MIL-HDBK-5J, 2003, from memory: 7075-T6 bar 66 and 77 ksi = 455 and 531 MPa, shear 46 ksi = 317 MPa; bearing 123 ksi =
  // 848 MPa; 17-4PH H900 170 and 190 ksi = 1172 and 1310 MPa)
  const aluminium = tableMaterials.get('7075-T6')
  const found = [aluminium?.yield_MPa, aluminium?.ultimate_MPa, aluminium?.shear_MPa, aluminium?.bearingUltimate_MPa]
  expect(found.map((value) => Math.round(value ?? 0))).toEqual([455, 531, 317, 848])
  expect(Math.round(tableMaterials.get('17-4PH H900')?.yield_MPa ?? 0)).toBe(1172)
  // SOURCE standard (ASTM B139, table of mechanical properties, read in two suppliers' reprints: C51000 hard rod 1/4 to 1/2 in, 70 ksi = 483 MPa)
  expect(Math.round(tableMaterials.get('phosphor bronze')?.ultimate_MPa ?? 0)).toBe(483)
})

it.each([
  // SOURCE book (MIL-HDBK-5J, 2003, table 3.6.2.0(b), from memory: 35, 42, 27 and in a hole 56 and 88 ksi)
  { name: '6061-T6', found: [241, 290, 186, 386, 607] },
  // SOURCE book (MIL-HDBK-5J, 2003, table 3.7.6.0, from memory: 66, 77, 46 and in a hole 92 and 123 ksi)
  { name: '7075-T6', found: [455, 531, 317, 634, 848] },
  // SOURCE book (MIL-HDBK-5J, 2003, table 2.6.9.0, from memory: 170, 190 and 123 ksi)
  { name: '17-4PH H900', found: [1172, 1310, 848] },
  // SOURCE book (MIL-HDBK-5J, 2003, table 5.4.1.0, from memory: 120 and 130 ksi)
  { name: 'Ti-6Al-4V', found: [827, 896] },
  // SOURCE standard (ASTM A240 and A276, minima of annealed 304 and 316, from memory)
  { name: '304', found: [205, 515] },
  { name: '316', found: [205, 515] },
])('$name bears what its source says', ({ name, found }) => {
  const row = tableMaterials.get(name)
  const strengths = [row?.yield_MPa, row?.ultimate_MPa, row?.shear_MPa, row?.bearingYield_MPa, row?.bearingUltimate_MPa]
  expect(strengths.flatMap((strength) => (strength === undefined ? [] : [Math.round(strength)]))).toEqual(found)
})

it.each([...tableMaterials])('has a plausible row for %s', (_, row) => {
  const { yield_MPa = 0, ultimate_MPa = yield_MPa, shear_MPa, bearingYield_MPa, bearingUltimate_MPa, fatigue_MPa } = row
  // SOURCE property (a material yields before it breaks, shears below its tension, bears more in a hole than in a bar, and tires below half)
  expect(row.yield_MPa === undefined).toBe(row.ultimate_MPa === undefined)
  expect(ultimate_MPa).toBeGreaterThanOrEqual(yield_MPa)
  expect(shear_MPa ?? 0.6 * ultimate_MPa).toBeGreaterThanOrEqual(ultimate_MPa / Math.sqrt(3))
  expect(shear_MPa ?? 0).toBeLessThanOrEqual(0.7 * ultimate_MPa)
  expect(bearingYield_MPa ?? yield_MPa).toBeGreaterThanOrEqual(yield_MPa)
  expect(bearingUltimate_MPa ?? ultimate_MPa).toBeGreaterThanOrEqual(ultimate_MPa)
  expect(fatigue_MPa ?? 0).toBeLessThanOrEqual(0.6 * ultimate_MPa)
  // SOURCE property (no metal or plastic of a workshop is lighter than water or heavier than lead, softer than 2 or stiffer than 250 GPa)
  expect(row.density_kg_mm3).toBeGreaterThan(1e-6)
  expect(row.density_kg_mm3).toBeLessThan(11.4e-6)
  expect(row.modulus_MPa).toBeGreaterThan(2e3)
  expect(row.modulus_MPa).toBeLessThan(250e3)
  expect(row.poisson ?? 0.3).toBeGreaterThan(0.2)
  expect(row.poisson ?? 0.3).toBeLessThan(0.5)
})
