/** How a finger lets go: its jams, its state of rest at let-go, and the least reserve of its way back. */
import { findJam, type Jam, type JamKind, type SurveyedNode } from '../forces/jam.ts'
import { atLetGo, type LetGo, statedStiffness } from '../forces/states.ts'
import { once } from '../numbers/once.ts'
import type { Survey } from './survey.ts'

/** Each is worked out when it is first read. */
export interface ReturnFound {
  readonly jam: Jam
  readonly runJam: Jam
  /** Absent where no state of rest was found at let-go. */
  readonly letGo: LetGo | undefined
  /** Index of the posture with the least reserve from rest. */
  readonly worst: number | undefined
  readonly letsGo: boolean | undefined
  readonly least: Readonly<Record<JamKind, Least | undefined>>
}

/** The least of the postures, in their order. */
export interface Least {
  readonly index: number
  readonly value: number
}

/** Looks for all of it, each when it is first read. */
export function returnFound(survey: Survey): ReturnFound {
  const { path, bench } = survey
  const jamOf = (kind: JamKind): (() => Jam) =>
    once(() => {
      const surveyed = survey.nodes.map((node, index): SurveyedNode => ({ node, reserve: survey.reserves[index]?.[kind] }))
      return findJam(bench, path, kind, surveyed)
    })
  const [jam, runJam] = [jamOf('fromRest'), jamOf('moving')]
  const letGo = once(() => atLetGo(survey.closed, { clearance: true, stiffnessOf: statedStiffness(path) }))
  const least = once((): ReturnFound['least'] => {
    const atEnd = letGo()
    const leastIn = (kind: JamKind): Least | undefined =>
      leastOf([...survey.reserves.map((reserve) => reserve?.[kind]), ...(atEnd ? [atEnd.reserve[kind]?.amplitude] : [])])
    return { fromRest: leastIn('fromRest'), moving: leastIn('moving') }
  })
  return {
    get jam() {
      return jam()
    },
    get runJam() {
      return runJam()
    },
    get letGo() {
      return letGo()
    },
    get least() {
      return least()
    },
    get worst() {
      const { fromRest } = least()
      return fromRest && Math.min(fromRest.index, survey.reserves.length - 1)
    },
    get letsGo() {
      const { fromRest } = least()
      return fromRest && fromRest.value > 0
    },
  }
}

/** Least of a list that may have gaps; undefined as a whole when one is missing. */
export function leastOf(values: readonly (number | undefined)[]): Least | undefined {
  let least: Least | undefined
  for (const [index, value] of values.entries()) {
    if (value === undefined) return undefined
    if (!least || value < least.value) least = { index, value }
  }
  return least
}
