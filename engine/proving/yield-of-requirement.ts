import type { Requirement } from '../design/design.ts'
import type { DesignSpread } from '../variation/spread/design-spread.ts'
import type { Yield } from '../variation/spread/yields.ts'

/** Shares of counted sets by one requirement; undefined where the run did not know it. */
export function yieldOfRequirement({ requirements, spread }: DesignSpread, { id, figure }: Requirement): Yield | undefined {
  const index = requirements.findIndex((one) => one.id === id && one.figure === figure)
  return index < 0 ? undefined : spread.yields.requirements[index]
}
