/** A part that hands a push on the finger's side inwards: bent about its weak axis, twisted and sheared, at its weakest section. */
import type { Design, Part, Point } from '../design/design.ts'
import { placed } from '../motion/mechanism.ts'
import type { Vector } from '../numbers/vector.ts'
import { tensionLimits } from './material-limits.ts'
import { axesOf, type Section, type Stretched, sectionsOf } from './section.ts'
import { type Leant, type LeantPush, sideMoment } from './side-moment.ts'
import { type SidePush, sideStress } from './side-section.ts'
import { foundAt, type Strength, UNLEANT, worse } from './strength.ts'
import type { StrengthBench } from './strength-bench.ts'

/**
 * Margin of a part over all its sections and all postures in which the finger is leant on. The mount is left out: its screws hold it where
 * the design does not reach.
 */
export function sidePart(bench: StrengthBench, leant: readonly Leant[], part: number): Strength {
  const { design } = bench.mechanism
  let worst: Strength | undefined
  for (const one of leant) {
    const pushes = one.pushes.filter((push) => handsOn(push, part))
    for (const push of pushes) {
      const missing = missingOf(design.parts[part])
      if (missing !== undefined) return { why: missing }
      const line = lineOf(design, part, push)
      if (line) worst = worse(worst, weakest(bench, { ...one, pushes }, { part, line }))
    }
  }
  return worst ?? UNLEANT
}

function handsOn({ chain }: LeantPush, part: number): boolean {
  return chain.some(({ outer }) => outer === part)
}

function missingOf(part: Part): string | undefined {
  if (!part.material) return `parts.${part.id} states no material`
  if (!part.across?.length) return `parts.${part.id}.across does not say where it lies across the finger`
  return part.outline.length === 0 ? `parts.${part.id} has no outline to measure sections on` : undefined
}

/** From the hinge that a part hangs on to where it takes a push: its pad, or the hinge of the next part outwards. Part frame. */
function lineOf({ parts, pins }: Design, part: number, { chain, pad }: LeantPush): Stretched | undefined {
  const holeOf = (pin: number): Point | undefined => {
    const join = pins[pin].joins.find((one) => one.part === part)
    return join && parts[part].holes[join.hole].at
  }
  const inwards = chain.find(({ outer }) => outer === part)
  const outwards = chain.find(({ inner }) => inner === part)
  const from = inwards && holeOf(inwards.pin)
  const to = outwards ? holeOf(outwards.pin) : pad
  return from && to && { from, to }
}

interface PushedLine {
  readonly part: number
  readonly line: Stretched
}

function weakest(bench: StrengthBench, leant: Leant, pushed: PushedLine): Strength {
  const own = bench.mechanism.design.parts[pushed.part]
  const widths_mm = (own.across ?? []).map(({ from_mm, to_mm }) => to_mm - from_mm)
  let worst: { readonly section: Section; readonly stress: number; readonly asked: SidePush } | undefined
  for (const section of sectionsAlong(own, pushed.line)) {
    const asked = askedOf(leant, pushed, section)
    const stress = sideStress(asked, { height_mm: section.height_mm, widths_mm })
    if (!worst || stress > worst.stress) worst = { section, stress, asked }
  }
  if (!worst || !own.material) return UNLEANT
  if (!Number.isFinite(worst.stress)) return { why: `the outline of parts.${own.id} leaves no section that could bear it` }
  const steps = [
    { name: 'bending moment out of the plane', value: Math.abs(worst.asked.bending_Nmm), unit: 'N·mm' },
    { name: 'twisting moment', value: Math.abs(worst.asked.twist_Nmm), unit: 'N·mm' },
    { name: 'height of the weakest section', value: worst.section.height_mm, unit: 'mm' },
    { name: 'stress there', value: worst.stress, unit: 'MPa' },
  ] as const
  const limits = tensionLimits(own.material, worst.stress, bench.factors)
  return foundAt({ limits, steps }, { state: leant.state, part: own.id }, `material ${own.material.name}`)
}

/** Sections of a part by where they begin and end: a memory, not a state. */
const known = new WeakMap<Point, WeakMap<Part, readonly Section[]>>()

function sectionsAlong(part: Part, line: Stretched): readonly Section[] {
  const toEnd = known.get(line.to) ?? new WeakMap<Part, readonly Section[]>()
  known.set(line.to, toEnd)
  const found = toEnd.get(part) ?? sectionsOf(part, line)
  toEnd.set(part, found)
  return found
}

/** What a section has to hand on: that of the pushes on parts further out, and of those on its own part beyond the cut. */
function askedOf({ pushes, state }: Leant, { part, line }: PushedLine, { at }: Section): SidePush {
  const axes = axesOf(line)
  if (!axes) return { bending_Nmm: 0, twist_Nmm: 0, shear_N: 0 }
  const { along, across } = axes
  const isBeyond = ({ part: own, pad }: LeantPush): boolean =>
    own !== part || (pad.x_mm - at.x_mm) * along.x + (pad.y_mm - at.y_mm) * along.y > 0
  const { moment, force_N } = sideMoment(pushes.filter(isBeyond), placed(state.posture, part, at))
  const turn = state.posture[3 * part + 2]
  return { bending_Nmm: dot(moment, turned(along, turn)), twist_Nmm: dot(moment, turned(across, turn)), shear_N: force_N }
}

function turned({ x, y }: Vector, angle: number): Vector {
  return { x: Math.cos(angle) * x - Math.sin(angle) * y, y: Math.sin(angle) * x + Math.cos(angle) * y }
}

function dot(one: Vector, other: Vector): number {
  return one.x * other.x + one.y * other.y
}
