/** Springs whose wire is known, over the travel, under the names of their figures. */
import { closingsOver } from '../design/closings.ts'
import type { NamedStrength } from '../strength/named-strength.ts'
import { springWay } from '../strength/spring-range.ts'
import { SPRING_CHECKS, type SpringCheckName, springStrength } from '../strength/spring-strength.ts'
import type { Survey } from './survey.ts'

const WORDS: Readonly<Record<SpringCheckName, string>> = {
  set: 'by a set',
  fatigue: 'by breaking in use',
  room: 'for want of room',
  buckling: 'by buckling',
  hook: 'at its hook',
}

/** Checks of the springs: no load case decides them, for a spring is moved by the finger alone. */
export function springChecks({ design, bench, nodes }: Survey): readonly NamedStrength[] {
  const cycles = design.use && closingsOver(design.use)
  const postures = nodes.map(({ posture }) => posture)
  return design.springs.flatMap((spring, index): readonly NamedStrength[] => {
    if (!spring.wire) return []
    const checks = springStrength(spring, springWay(spring, postures, bench.drawn), cycles)
    return SPRING_CHECKS[spring.kind].flatMap((name) => {
      const strength = checks[name]
      if (!strength) return []
      const words = `spring ${spring.id} ${WORDS[name]}`
      return [{ name: `spring.${spring.id}.${name}`, words, of: { kind: 'spring', index }, strength, standsAlone: true }]
    })
  })
}
