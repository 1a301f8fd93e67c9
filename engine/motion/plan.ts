/**
 * The order in which the parts can be placed one after the other, without iteration, once one part's turn is known.
 *
 *     lead      a part pinned to the mount, its turn given
 *     dyad      two parts pinned to each other and each to a placed pin: two circles meet
 *     pin in slot, slot on pin     one part pinned to a placed pin and held by one slot: a circle meets a line
 *     slider    a block in two parallel slots of a placed part, and a rod from it to a placed pin: a circle meets a line
 *     leftover  what is none of these, e.g. a loop round a part with three pins; Newton places it
 *
 * The plan is plain data. It is made once a mechanism and holds for every posture: which of the two meeting points is meant
 * is read from a near posture.
 */
import type { Point } from '../design/design.ts'
import { limits } from '../numbers/limits.ts'
import { nextStep } from './find-step.ts'
import type { Mechanism } from './mechanism.ts'
import { type PinSite, pinSitesOf } from './pin-site.ts'
import type { PlanStep } from './plan-step.ts'

export interface Plan {
  readonly mechanism: Mechanism
  /** The part whose turn is given, on the pin at `pivot` of the mount; absent when no part turns on the mount. */
  readonly lead?: { readonly part: number; readonly pivot: Point; readonly own: Point }
  readonly steps: readonly PlanStep[]
  /** Parts that no step places; ascending. */
  readonly leftover: readonly number[]
}

/**
 * The plan with the fewest parts left over. The drive's own part leads where it turns on the mount and does no worse than another.
 *
 * A mechanism whose equations do not leave exactly one freedom has no lead, and all its parts are left over.
 */
export function makePlan(mechanism: Mechanism): Plan {
  const sites = pinSitesOf(mechanism)
  let best = planLedBy(mechanism, sites, undefined)
  if (mechanism.columns_count !== mechanism.rows_count + 1) return best
  for (const candidate of leadCandidates(mechanism, sites)) {
    const plan = planLedBy(mechanism, sites, candidate)
    if (best.lead === undefined || plan.leftover.length < best.leftover.length) best = plan
    if (best.leftover.length === 0) break
  }
  return best
}

type Lead = NonNullable<Plan['lead']>

function leadCandidates(mechanism: Mechanism, sites: readonly PinSite[]): Lead[] {
  const { drive } = mechanism.design
  const driven = drive.kind === 'turn' && drive.against === 0 ? drive.part : -1
  const candidates = sites.flatMap((site) => {
    const onMount = site.rounds.find((round) => round.part === 0)
    if (!onMount) return []
    return site.rounds
      .filter((round) => round.part !== 0)
      .map((round): Lead => ({ part: round.part, pivot: onMount.at, own: round.at }))
  })
  const first = candidates.filter(({ part }) => part === driven)
  return [...first, ...candidates.filter(({ part }) => part !== driven)].slice(0, limits.leadCandidates)
}

function planLedBy(mechanism: Mechanism, sites: readonly PinSite[], lead: Lead | undefined): Plan {
  const placed = new Set([0])
  const steps: PlanStep[] = []
  const usedSlots = new Set<number>()
  if (lead) {
    placed.add(lead.part)
    for (let found = nextStep({ mechanism, sites, placed, usedSlots }); found; ) {
      steps.push(found.step)
      for (const part of found.parts) placed.add(part)
      for (const joint of found.slots) usedSlots.add(joint)
      found = nextStep({ mechanism, sites, placed, usedSlots })
    }
  }
  const leftover = Array.from({ length: mechanism.parts_count }, (_, part) => part).filter((part) => !placed.has(part))
  return lead ? { mechanism, lead, steps, leftover } : { mechanism, steps, leftover }
}
