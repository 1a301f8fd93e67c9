/**
 * Unplaced parts that two parallel slots hold to one line of a placed part.
 *
 *      ══════●═════════●══════   slots in the guide, pins on the block; or slots in the block, pins on the guide
 *            └─ block ─┘         either way the block keeps its turn against the guide
 *
 * With e the distance between the lines of the slots, measured on their normal, and l the distance of the two pins, the turn
 * τ of the part with the pins against the slots obeys l sin(τ + bearing of the pins − direction of the slots) = e.
 */
import type { PartPoint, Point } from '../design/design.ts'
import type { Joint } from './mechanism.ts'
import { type Placing, placedSite } from './pin-site.ts'
import type { SliderStep } from './plan-step.ts'

export type GuidedBlock = Omit<SliderStep, 'kind' | 'joint' | 'rod' | 'pins'> & { readonly slots: readonly number[] }

/** Slots whose directions differ by more than this, rad, are not parallel: the block would turn as it slides. */
const PARALLEL_RAD = 1e-12

/** Sine of the steepest line between two pins of a block; past it the slots hardly hold its turn. */
const STEEPEST = 0.9

interface Guided {
  readonly joint: Joint
  readonly index: number
  readonly slotted: 'block' | 'guide'
  readonly block: PartPoint
  readonly guide: PartPoint
}

/** Every block that the placed parts guide. */
export function guidedBlocks(placing: Placing): GuidedBlock[] {
  const guides = placing.mechanism.joints.flatMap((joint, index) => guidesOf(placing, joint, index))
  return guides.flatMap((one, position) =>
    guides.slice(position + 1).flatMap((other) => {
      const same = one.block.part === other.block.part && one.guide.part === other.guide.part && one.slotted === other.slotted
      return same && one.index !== other.index ? (blockBetween(one, other) ?? []) : []
    }),
  )
}

function guidesOf(placing: Placing, joint: Joint, index: number): Guided[] {
  if (joint.kind !== 'slot' || placing.usedSlots.has(index)) return []
  const site = placing.sites[joint.pin]
  const slot = { part: joint.b, at: joint.atB }
  const known = placedSite(site, placing.placed)
  if (placing.placed.has(joint.b)) {
    return known ? [] : site.rounds.map((round) => ({ joint, index, slotted: 'guide', block: round, guide: slot }))
  }
  return known ? [{ joint, index, slotted: 'block', block: slot, guide: known }] : []
}

function blockBetween(one: Guided, other: Guided): GuidedBlock | undefined {
  const along_rad = one.joint.along_rad
  if (Math.abs(Math.sin(along_rad - other.joint.along_rad)) > PARALLEL_RAD) return undefined
  const { slotted } = one
  const pins = slotted === 'guide' ? between(one.block.at, other.block.at) : between(one.guide.at, other.guide.at)
  const slots = slotted === 'guide' ? between(one.guide.at, other.guide.at) : between(one.block.at, other.block.at)
  const length = Math.hypot(pins.x_mm, pins.y_mm)
  const apart = Math.cos(along_rad) * slots.y_mm - Math.sin(along_rad) * slots.x_mm
  const sine = length > 0 ? apart / length : 1
  if (Math.abs(sine) > STEEPEST) return undefined
  const level = along_rad - Math.atan2(pins.y_mm, pins.x_mm)
  const sign = slotted === 'guide' ? 1 : -1
  const turns_rad = [sign * (level + Math.asin(sine)), sign * (level + Math.PI - Math.asin(sine))] as const
  const places = { onGuide: one.guide.at, onBlock: one.block.at, slots: [one.index, other.index] }
  return { block: one.block.part, guide: one.guide.part, slotted, along_rad, turns_rad, ...places }
}

function between(from: Point, to: Point): Point {
  return { x_mm: to.x_mm - from.x_mm, y_mm: to.y_mm - from.y_mm }
}
