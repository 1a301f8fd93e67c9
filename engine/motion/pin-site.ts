/** Each pin with the round holes that share its centre: a pin through three parts is one site, whichever part it is fixed in. */
import type { PartPoint } from '../design/design.ts'
import type { Mechanism } from './mechanism.ts'

export interface PinSite {
  readonly pin: number
  readonly rounds: readonly PartPoint[]
}

/** What the search for the next step knows. */
export interface Placing {
  readonly mechanism: Mechanism
  readonly sites: readonly PinSite[]
  readonly placed: ReadonlySet<number>
  /** Joints whose slot has already placed a part. */
  readonly usedSlots: ReadonlySet<number>
}

/** One site a pin, in the order of the design. Slots are no part of it. */
export function pinSitesOf(mechanism: Mechanism): PinSite[] {
  return mechanism.design.pins.map((_, pin) => {
    const joints = mechanism.joints.filter((joint) => joint.pin === pin)
    const carrier = joints.slice(0, 1).map((joint) => ({ part: joint.a, at: joint.atA }))
    const others = joints.filter((joint) => joint.kind === 'pin').map((joint) => ({ part: joint.b, at: joint.atB }))
    return { pin, rounds: [...carrier, ...others] }
  })
}

/** A round hole of the site in a part that is placed already: the pin's centre is known there. */
export function placedSite(site: PinSite, placed: ReadonlySet<number>): PartPoint | undefined {
  return site.rounds.find((round) => placed.has(round.part))
}
