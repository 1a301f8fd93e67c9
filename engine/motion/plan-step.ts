/** Steps of a plan: one or two parts that hang on placed ones in a way that has a closed form. */
import type { PartPoint, Point } from '../design/design.ts'

/** A part turning about a placed pin, seen along the line from that pin to the place where the part is held. */
export interface Arm {
  readonly part: number
  readonly pivot: PartPoint
  /** The pivot in the part's own frame. */
  readonly own: Point
  readonly length_mm: number
  /** From the pivot to the held place in the part's own frame, and the direction of that. */
  readonly reach: Point
  readonly bearing_rad: number
}

/** Two arms that meet in one pin. */
export interface DyadStep {
  readonly kind: 'dyad'
  readonly first: Arm
  readonly second: Arm
  /** Pin of the first pivot and of the second. */
  readonly pins: readonly [number, number]
}

/** The arm's end runs in the slot of a placed part. */
export interface PinInSlotStep {
  readonly kind: 'pin in slot'
  readonly arm: Arm
  readonly slot: PartPoint
  readonly along_rad: number
  readonly pins: readonly [number, number]
}

/** A part pinned at `pivot` whose own slot runs over a placed pin. */
export interface SlotOnPinStep {
  readonly kind: 'slot on pin'
  readonly part: number
  readonly pivot: PartPoint
  readonly own: Point
  /** Distance of the slot's line from the pivot, to the left of its direction. */
  readonly offset_mm: number
  readonly along_rad: number
  readonly target: PartPoint
  readonly pins: readonly [number, number]
}

/** A block that keeps its turn against the part it slides on, and a rod from a placed pin to a pin of the block. */
export interface SliderStep {
  readonly kind: 'slider'
  readonly block: number
  readonly guide: number
  /** The two turns of the block against the guide that both slots allow. */
  readonly turns_rad: readonly [number, number]
  /** Which of the two has the slots, and their direction in its frame. */
  readonly slotted: 'block' | 'guide'
  readonly along_rad: number
  /** One place of the guide on the line of a slot, and the place of the block that it holds to that line. */
  readonly onGuide: Point
  readonly onBlock: Point
  /** The rod's pin on the block. */
  readonly joint: Point
  readonly rod: Arm
  readonly pins: readonly [number, number]
}

export type PlanStep = DyadStep | PinInSlotStep | SlotOnPinStep | SliderStep
