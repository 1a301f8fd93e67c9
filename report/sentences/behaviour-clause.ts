/** How the finger stands closed, who carries the loads, and whether it lets go: the clause that the verdict and Hold share. */

import type { Told } from '../tables/told.ts'
import { closedClause, windowClause } from './closed-clause.ts'
import { holdClause } from './hold-clause.ts'
import { returnClause } from './return-clause.ts'

/** For a finger that closes; ask `cannotCloseClause` first. */
export function behaviourClause(evaluation: Told): string {
  const standing = [closedClause(evaluation), windowClause(evaluation)].filter((clause) => clause !== undefined)
  return `${standing.join('; ')}: ${holdClause(evaluation)}; ${returnClause(evaluation)}`
}
