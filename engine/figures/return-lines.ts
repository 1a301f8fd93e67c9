/** Inputs that figures of letting go have in common. */
import { pairsInUse } from '../design/pairs-in-use.ts'
import type { WorkingValue } from './evaluation.ts'
import { line } from './figure-sheet.ts'
import type { Survey } from './survey.ts'

/** Why there is no figure where forces of rest are missing. */
export const NO_REST = 'no equilibrium was found at every posture'

/** Friction of every pair, at its most. */
export function frictionLines({ design }: Survey, state: 'moving' | 'rest'): WorkingValue[] {
  return pairsInUse(design).map((pair) =>
    line(`${state === 'rest' ? 'at rest' : 'moving'}, most: ${pair.name}`, pair[state].most, '1', `friction.${pair.name}`),
  )
}

/** What each spring is set to. */
export function springLines({ design }: Survey): WorkingValue[] {
  return design.springs.map((spring) =>
    spring.kind === 'torsion'
      ? line(`preload of ${spring.id}`, spring.preload_Nmm, 'N·mm', `springs.${spring.id}.preload`)
      : line(`free length of ${spring.id}`, spring.freeLength_mm, 'mm', `springs.${spring.id}.freeLength`),
  )
}
