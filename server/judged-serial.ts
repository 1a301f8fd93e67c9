import { inspectionPlan, judgeMeasured, type Problem, readVariation } from '../engine/index.ts'
import type { SerialHistory, Store } from '../records/index.ts'
import { type CheckedSet, standingFound } from '../report/index.ts'

/** What one serial number is, and will do: its history, its readings that stand, and the set judged as it was measured. */
export interface JudgedSerial {
  readonly history: SerialHistory
  /** Absent where its revision can no longer be read; `problems` says why. */
  readonly set?: CheckedSet
  readonly problems: readonly Problem[]
}

/**
 * Judges a serial number of the store by the revision of its lot, with its readings and the coater's certificate that stand.
 *
 * @returns undefined when there is no such serial number
 */
export function judgedSerial(
  store: Store,
  { design, serial }: { readonly design: string; readonly serial: string },
): JudgedSerial | undefined {
  const history = store.bench.serial(design, serial)
  if (history === undefined) return undefined
  const variation = readVariation(store.revision(design, history.revision)?.text ?? '', design)
  if (variation.value === undefined) return { history, problems: variation.problems }
  const plan = inspectionPlan(variation.value)
  const readings = standingFound(plan, history)
  return { history, set: { serial, ...judgeMeasured(variation.value, plan, readings) }, problems: [] }
}
