/**
 * The way back: what a spring has to give at two positions and the room there is, and the coils that do it.
 *
 * For each wire in each diameter that is sold the rate ties the diameter of the coil to its turns; turns go up by quarters or halves, and each
 * coil is judged by the checks of any spring. Of each wire and diameter the coil with the largest least margin is kept.
 */
import { compressionCoils } from './compression-coils.ts'
import { tensionCoils } from './tension-coils.ts'
import { torsionCoils } from './torsion-coils.ts'
import type { FittingSpring, WantedSpring } from './wanted-spring.ts'

/** As many as are looked at on one page. */
const LISTED = 8

/** Springs that fit, the largest least margin first, at most eight, and how many coils were judged. A margin below zero does not hold. */
export function springsThatFit(wanted: WantedSpring): {
  readonly springs: readonly FittingSpring[]
  readonly judged_count: number
} {
  const groups = groupsOf(wanted)
  const best = groups.flatMap((group) => {
    const [first] = [...group].sort((one, other) => other.least - one.least)
    return first ? [first] : []
  })
  best.sort((one, other) => other.least - one.least)
  return { springs: best.slice(0, LISTED), judged_count: groups.reduce((sum, group) => sum + group.length, 0) }
}

function groupsOf(wanted: WantedSpring): readonly (readonly FittingSpring[])[] {
  switch (wanted.kind) {
    case 'torsion':
      return torsionCoils(wanted)
    case 'compression':
      return compressionCoils(wanted)
    case 'tension':
      return tensionCoils(wanted)
  }
}
