import { expect, it } from 'vitest'
import type { Life, Wear, WornPlace } from '../../engine/index.ts'
import { placeWorking } from './place-working.ts'

const band = { least: 0, likely: 0, most: 0 }
const rate = (name: string, most_mm2_N: number) => ({
  name,
  least_mm2_N: most_mm2_N / 100,
  likely_mm2_N: most_mm2_N / 10,
  most_mm2_N,
  source: `${name}, invented.`,
})
const bare = { name: 'bare', moving: band, rest: band, wear: { rate: rate('steel', 1e-8) }, source: 'invented' }
const filmed = { ...bare, name: 'filmed', wear: { rate: rate('film', 1e-9), film: { depth_mm: 0.012, under: bare } } }

const hole: WornPlace = {
  at: { kind: 'pin', id: 'a' },
  part: 'arm',
  depth_mm: 0.02,
  rubbed_Nm: 0.18,
  pair: filmed,
  // SOURCE hand (1e-9 mm²/N × 180 N·mm over 3 × 6 mm²)
  asNew: { along_mm: 3, width_mm: 6, depth_mm: 1e-8 },
}
const stop: WornPlace = {
  at: { kind: 'stop', id: 'shelf' },
  depth_mm: 0.001,
  rubbed_Nm: 0.001,
  pair: bare,
  asNew: { curvature_1_mm: 0.5, width_mm: 9, volume_mm3: 1e-8 },
}
const wear = (level: Wear['level']): Wear => ({
  level,
  life_closings: 1000,
  end_closings: 2000,
  points: [],
  findings: [],
  films: [{ at: hole.at, pair: 'filmed', closings: 1500 }] as unknown as Wear['films'],
  places: [hole, stop],
  loads: [],
})
const life: Life = { most: wear('most'), likely: wear('likely'), findings: [] }

it('tells of a hole its pairs under one another, what it starts from and what became of it', () => {
  const { inputs, steps, source } = placeWorking(life, 0)
  const told = (name: string) => [...inputs, ...steps].find((one) => one.name.startsWith(name))?.value
  // SOURCE hand (1e-9 mm²/N is 1e-6 mm³ a N·m; 0.18 N·m are 180 N·mm; a thousand times 1e-8 mm are 0.01 µm)
  expect(told('most rate of filmed')).toBe('1e-6 mm³/N·m')
  expect(told('likely rate of bare')).toBe('1e-6 mm³/N·m')
  expect(told('film of filmed')).toBe(0.012)
  expect(told('a closing rubs as new')).toBe(180)
  expect(told('a thousand closings take off as new')).toBe('0.01 µm')
  expect(told('film worn through after')).toBe('1\u00a0500 closings')
  expect(told('worn at the end')).toBe('20 µm')
  expect(source).toContain('filmed: film, invented; bare: steel, invented')
})

it('tells of a stop its volume and the lens that it is gone from', () => {
  const { formulas, inputs, steps } = placeWorking(life, 1)
  expect(formulas).toHaveLength(2)
  // SOURCE hand (1/0.5 = 2 mm)
  expect(inputs.find(({ name }) => name.startsWith('radius'))?.value).toBe(2)
  expect(steps[0].value).toBe('0.00001 mm³')
  expect(steps.some(({ name }) => name.startsWith('film'))).toBe(false)
})
