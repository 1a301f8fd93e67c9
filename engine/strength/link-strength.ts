/** A link between its two pins: pulled at its slimmest section, pressed against buckling. */
import type { Part } from '../design/design.ts'
import { type TwoPinLink, twoPinLinks } from '../motion/two-pin-link.ts'
import type { Vector } from '../numbers/vector.ts'
import { column } from './column.ts'
import { tensionLimits } from './material-limits.ts'
import { outlineReach } from './outline-reach.ts'
import { partWidth } from './part-width.ts'
import type { Pressed } from './pressed.ts'
import { turnsOf } from './states-by-case.ts'
import { foundAt, type Strength } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

export interface LinkStrength {
  readonly tension: Strength
  readonly buckling: Strength
}

/** Tension and buckling of a two-pin part over all states; what is missing is said. */
export function linkStrength(bench: StrengthBench, part: number): LinkStrength {
  const { mechanism } = bench
  const link = twoPinLinks(mechanism).find((candidate) => candidate.part === part)
  const own = mechanism.design.parts[part]
  const missing = link ? missingOf(own) : 'it is no link of two pins'
  if (!link || missing !== undefined) return { tension: { why: missing ?? '' }, buckling: { why: missing ?? '' } }
  const most = mostAlong(bench, link)
  const given = { section: sectionOf(own, link), length_mm: link.length_mm }
  return {
    tension: pulled(bench, own, { ...given, most: most.pulled }),
    buckling: buckled(bench, own, { ...given, most: most.pressed }),
  }
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (partWidth(part) === undefined) return `parts.${part.id} states no thickness`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure its width on` : undefined
}

/** A link in the state that presses or pulls it most, where any does. */
interface AskedLink {
  readonly most: ForceAlong | undefined
  readonly section: { readonly width_mm: number; readonly thickness_mm: number }
  readonly length_mm: number
}

function pulled({ factors }: StrengthBench, { material }: Part, { most, section }: AskedLink): Strength {
  if (!most || !material) return { why: 'it is never pulled', spared: true }
  const { width_mm, thickness_mm } = section
  const stress_MPa = most.force_N / (width_mm * thickness_mm)
  const steps = [
    { name: 'tension', value: most.force_N, unit: 'N' },
    { name: 'slimmest width between the pins', value: width_mm, unit: 'mm' },
  ] as const
  const limits = tensionLimits(material, stress_MPa, factors)
  return foundAt({ limits, steps }, { state: most.state }, `material ${material.name}`)
}

function buckled({ factors }: StrengthBench, part: Part, { most, section, length_mm }: AskedLink): Strength {
  if (!most || !part.material) return { why: 'it is never pressed', spared: true }
  const { yield_MPa, modulus_MPa } = part.material
  if (yield_MPa === undefined) return { why: `material ${part.material.name} states no yield strength` }
  const { width_mm, thickness_mm } = section
  const bar = { area_mm2: width_mm * thickness_mm, secondMoment_mm4: secondMomentOf(part, section) }
  const critical = column({ length_mm, ...bar, modulus_MPa, yield_MPa })
  const steps = [
    { name: 'compression', value: most.force_N, unit: 'N' },
    { name: 'slimmest width between the pins', value: width_mm, unit: 'mm' },
    { name: `critical force (${critical.by})`, value: critical.force_N, unit: 'N' },
  ] as const
  const limit = {
    says: 'buckles',
    stress: most.force_N,
    unit: 'N',
    allowable: critical.force_N,
    material: part.material,
    factor: factors.ultimate,
  } as const
  return foundAt({ limits: [limit], steps }, { state: most.state }, '')
}

/** The smaller second moment of a link's section: bars that lie apart across the finger bend each by itself. mm⁴ */
function secondMomentOf({ across = [] }: Part, { width_mm, thickness_mm }: { width_mm: number; thickness_mm: number }): number {
  const bars = across.length > 0 ? across.map(({ from_mm, to_mm }) => to_mm - from_mm) : [thickness_mm]
  const outOfPlane = bars.reduce((sum, bar) => sum + (width_mm * bar ** 3) / 12, 0)
  return Math.min(outOfPlane, (thickness_mm * width_mm ** 3) / 12)
}

interface ForceAlong {
  readonly force_N: number
  readonly state: Pressed
}

/** Largest force along a link, pulled and pressed: the mean of what its two ends carry along the line of its pins. */
function mostAlong(
  { mechanism, states }: StrengthBench,
  { part, ends }: TwoPinLink,
): { readonly pulled?: ForceAlong; readonly pressed?: ForceAlong } {
  const [first, second] = ends
  const length = Math.hypot(second.at.x_mm - first.at.x_mm, second.at.y_mm - first.at.y_mm)
  const own = { x: (second.at.x_mm - first.at.x_mm) / length, y: (second.at.y_mm - first.at.y_mm) / length }
  const turns = turnsOf(states, part)
  let pulled: ForceAlong | undefined
  let pressed: ForceAlong | undefined
  for (let index = 0; index < states.length; index++) {
    const state = states[index]
    const [cos, sin] = [turns[2 * index], turns[2 * index + 1]]
    const x = cos * own.x - sin * own.y
    const y = sin * own.x + cos * own.y
    let pull = 0
    for (const { joint, outward } of ends) {
      const side = (mechanism.joints[joint].b === part ? 1 : -1) * outward
      pull += (side * (state.forces[2 * joint] * x + state.forces[2 * joint + 1] * y)) / 2
    }
    if (pull > (pulled?.force_N ?? 0)) pulled = { force_N: pull, state }
    if (-pull > (pressed?.force_N ?? 0)) pressed = { force_N: -pull, state }
  }
  return { ...(pulled && { pulled }), ...(pressed && { pressed }) }
}

/** Places between the pins at which the width is measured. */
const STATIONS = 24

/** Slimmest width across the line of the pins, and the thickness. */
function sectionOf(part: Part, { ends: [first, second], length_mm }: TwoPinLink): { width_mm: number; thickness_mm: number } {
  const along: Vector = {
    x: (second.at.x_mm - first.at.x_mm) / length_mm,
    y: (second.at.y_mm - first.at.y_mm) / length_mm,
  }
  let width_mm = Number.POSITIVE_INFINITY
  for (let station = 1; station < STATIONS; station++) {
    const reach = (station / STATIONS) * length_mm
    const at = { x_mm: first.at.x_mm + reach * along.x, y_mm: first.at.y_mm + reach * along.y }
    const here =
      outlineReach(part.outline, at, { x: -along.y, y: along.x }) + outlineReach(part.outline, at, { x: along.y, y: -along.x })
    width_mm = Math.min(width_mm, here)
  }
  return { width_mm, thickness_mm: partWidth(part) ?? 0 }
}
