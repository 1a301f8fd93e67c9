/** Finds the next parts that hang on placed ones in a way that has a closed form. */
import type { PartPoint, Point } from '../design/design.ts'
import { guidedBlocks } from './guided-block.ts'
import type { Joint } from './mechanism.ts'
import { type Placing, placedSite } from './pin-site.ts'
import type { Arm, PlanStep } from './plan-step.ts'

export interface FoundStep {
  readonly step: PlanStep
  /** Parts that it places. */
  readonly parts: readonly number[]
  /** Joints whose slot it uses. */
  readonly slots: readonly number[]
}

/** Arms shorter than this share of the mechanism's scale fix no turn. */
const SHORTEST_ARM_RATIO = 1e-6

/** The next step that the placed parts allow, or undefined when none does. */
export function nextStep(placing: Placing): FoundStep | undefined {
  return heldBySlot(placing) ?? dyad(placing) ?? slider(placing)
}

/** A placed pin on which an unplaced part turns. */
interface Pivot {
  readonly pin: number
  readonly on: PartPoint
  readonly own: Point
}

function pivotsOf({ sites, placed }: Placing, part: number): Pivot[] {
  return sites.flatMap((site) => {
    const own = site.rounds.find((round) => round.part === part)
    const on = own && placedSite(site, placed)
    return own && on ? [{ pin: site.pin, on, own: own.at }] : []
  })
}

function armFrom(placing: Placing, pivot: Pivot, held: PartPoint): Arm | undefined {
  const dx = held.at.x_mm - pivot.own.x_mm
  const dy = held.at.y_mm - pivot.own.y_mm
  const length_mm = Math.hypot(dx, dy)
  if (length_mm < SHORTEST_ARM_RATIO * placing.mechanism.scale_mm) return undefined
  const reach = { x_mm: dx, y_mm: dy }
  return { part: held.part, pivot: pivot.on, own: pivot.own, length_mm, reach, bearing_rad: Math.atan2(dy, dx) }
}

/** The first arm from a placed pin to a hole of an unplaced part. */
function armTo(placing: Placing, held: PartPoint, notPin: number): { arm: Arm; pin: number } | undefined {
  for (const pivot of pivotsOf(placing, held.part)) {
    const arm = pivot.pin === notPin ? undefined : armFrom(placing, pivot, held)
    if (arm) return { arm, pin: pivot.pin }
  }
  return undefined
}

function heldBySlot(placing: Placing): FoundStep | undefined {
  for (const [index, joint] of placing.mechanism.joints.entries()) {
    if (joint.kind !== 'slot' || placing.usedSlots.has(index)) continue
    const found = placing.placed.has(joint.b) ? pinInSlot(placing, joint, index) : slotOnPin(placing, joint, index)
    if (found) return found
  }
  return undefined
}

function pinInSlot(placing: Placing, joint: Joint, index: number): FoundStep | undefined {
  const site = placing.sites[joint.pin]
  if (placedSite(site, placing.placed)) return undefined
  for (const held of site.rounds) {
    const found = armTo(placing, held, joint.pin)
    if (!found) continue
    const slot = { part: joint.b, at: joint.atB }
    const { arm, pin } = found
    const step: PlanStep = { kind: 'pin in slot', arm, slot, along_rad: joint.along_rad, pins: [pin, joint.pin] }
    return { step, parts: [held.part], slots: [index] }
  }
  return undefined
}

function slotOnPin(placing: Placing, joint: Joint, index: number): FoundStep | undefined {
  const target = placedSite(placing.sites[joint.pin], placing.placed)
  const pivot = pivotsOf(placing, joint.b).find(({ pin }) => pin !== joint.pin)
  if (!target || !pivot) return undefined
  const { along_rad } = joint
  const normal = { x: -Math.sin(along_rad), y: Math.cos(along_rad) }
  const offset_mm = normal.x * (joint.atB.x_mm - pivot.own.x_mm) + normal.y * (joint.atB.y_mm - pivot.own.y_mm)
  const on = { part: joint.b, pivot: pivot.on, own: pivot.own }
  const step: PlanStep = { kind: 'slot on pin', ...on, offset_mm, along_rad, target, pins: [pivot.pin, joint.pin] }
  return { step, parts: [joint.b], slots: [index] }
}

function dyad(placing: Placing): FoundStep | undefined {
  for (const site of placing.sites) {
    if (placedSite(site, placing.placed)) continue
    const arms = site.rounds.flatMap((held) => armTo(placing, held, site.pin) ?? [])
    const first = arms[0]
    const second = arms.find(({ pin }) => pin !== first.pin)
    if (!second) continue
    const step: PlanStep = { kind: 'dyad', first: first.arm, second: second.arm, pins: [first.pin, second.pin] }
    return { step, parts: [first.arm.part, second.arm.part], slots: [] }
  }
  return undefined
}

function slider(placing: Placing): FoundStep | undefined {
  for (const { block, slots, ...guided } of guidedBlocks(placing)) {
    for (const site of placing.sites) {
      const joint = site.rounds.find((round) => round.part === block)
      if (!joint || placedSite(site, placing.placed)) continue
      for (const held of site.rounds) {
        const found = held.part === block ? undefined : armTo(placing, held, site.pin)
        if (!found) continue
        const { arm: rod, pin } = found
        const step: PlanStep = { kind: 'slider', block, ...guided, joint: joint.at, rod, pins: [pin, site.pin] }
        return { step, parts: [block, rod.part], slots }
      }
    }
  }
  return undefined
}
