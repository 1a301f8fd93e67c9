import { describe, expect, it } from 'vitest'
import type { Design } from '../design/design.ts'
import { exampleText } from '../design/edit/test-support/example-texts.ts'
import { readDesign } from '../design/read-design.ts'
import { evaluate } from '../evaluate.ts'
import { type Seeded, seeded } from '../sketches/seeded.ts'
import { inInches } from './test-support/in-inches.ts'

const metals = ['6061-T6', '7075-T6', '17-4PH H900', 'Ti-6Al-4V', '304', 'phosphor bronze']

/** Heron with other pins, metals, widths and loads; without weight, which nobody can scale. */
function otherHeron({ between }: Seeded): string {
  const { weight: _, ...document } = JSON.parse(exampleText('heron'))
  const one = <Thing>(list: readonly Thing[]): Thing => list[Math.floor(between(0, list.length))]
  const pin_mm = between(2.2, 3.4)
  document.dimensions.pinDiameter.value = `${pin_mm} mm`
  document.dimensions.holeDiameter.value = `${pin_mm + between(0.008, 0.03)} mm`
  for (const part of Object.values<Record<string, unknown>>(document.parts)) {
    if (between(0, 1) < 0.5) part.material = one(metals)
    if (between(0, 1) < 0.3) {
      delete part.coating
      delete part.racks
      delete part.masked
    }
  }
  for (const made of Object.values<Record<string, unknown>>(document.pins)) made.material = one(metals)
  for (const { forces } of Object.values<{ forces: { force: string }[] }>(document.loadCases)) {
    for (const force of forces) force.force = `${between(2, 120)} N`
  }
  return JSON.stringify(document)
}

/** The same finger with every force of it, springs, drags and stiffnesses among them, as many times as large. */
function loadedTimes(design: Design, times: number): Design {
  const loadCases = design.loadCases.map((one) => ({
    ...one,
    forces: one.forces.map((force) => ({ ...force, force_N: times * force.force_N })),
    couples: one.couples.map((couple) => ({ ...couple, couple_Nmm: times * couple.couple_Nmm })),
    sideways: one.sideways.map((push) => ({ ...push, force_N: times * push.force_N })),
    ...(one.keeper && { keeper: { ...one.keeper, allowed: times * one.keeper.allowed } }),
  }))
  const springs = design.springs.map((spring) =>
    spring.kind === 'torsion'
      ? { ...spring, rate_Nmm_rad: times * spring.rate_Nmm_rad, preload_Nmm: times * spring.preload_Nmm }
      : spring,
  )
  const parts = design.parts.map(({ stiffness_N_mm, ...part }) =>
    stiffness_N_mm === undefined ? part : { ...part, stiffness_N_mm: times * stiffness_N_mm },
  )
  const pins = design.pins.map((pin) => ({ ...pin, drag_Nmm: times * pin.drag_Nmm }))
  return { ...design, loadCases, springs, parts, pins }
}

const marginsOf = (design: Design) => new Map(evaluate(design).strength?.ranked.map(({ figure, margin }) => [figure, margin]))

describe('the margins of fingers that are drawn at random and accepted', () => {
  it.each([1, 2, 3, 4])('fall as the load rises, are numbers, and are the same in inches (%i)', (seed) => {
    const text = otherHeron(seeded(seed))
    const design = readDesign(text).value
    expect(readDesign(text).problems).toBeUndefined()
    if (!design) return
    const [once, more] = [marginsOf(design), marginsOf(loadedTimes(design, 1.25))]
    const inches = marginsOf(readDesign(inInches(text)).value!)
    expect([...once.values()].every(Number.isFinite)).toBe(true)
    expect(inches.size).toBe(once.size)
    let loaded = 0
    for (const [figure, margin] of once) {
      const [heavier, other] = [more.get(figure) ?? Number.NaN, inches.get(figure) ?? Number.NaN]
      // SOURCE property (units cancel)
      expect(Math.abs((other + 1) / (margin + 1) - 1), figure).toBeLessThan(1e-8)
      if (!/^strength\.(pin|link|part|stop)\./.test(figure)) continue
      loaded++
      // SOURCE property (a stress goes as the force, that of a line contact as its root; equilibrium itself keeps its proportions)
      const share = figure.startsWith('strength.stop.') ? Math.sqrt(1.25) : 1.25
      expect(Math.abs((margin + 1) / (heavier + 1) / share - 1), figure).toBeLessThan(1e-6)
      expect(heavier, figure).toBeLessThan(margin)
    }
    expect(loaded).toBeGreaterThan(30)
  })
})
