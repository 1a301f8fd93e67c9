import type { Problem } from '../design/problem.ts'
import { evaluate } from '../evaluate.ts'
import type { Evaluation } from '../figures/evaluation.ts'
import type { Variation } from '../variation/sources/source.ts'
import type { Conformity } from './guard-band.ts'
import type { Characteristic } from './inspection-plan.ts'
import { measuredDesign, measuredSet, type Reading, readingConformity } from './measured-set.ts'

/** One set against its drawing, and as the finger that can be built of it. */
export interface MeasuredFinger {
  readonly readings: readonly Reading[]
  /** One a reading. */
  readonly conformities: readonly Conformity[]
  /** Characteristics of the plan that nobody measured: they count as drawn. */
  readonly unmeasured_count: number
  /** Absent where no finger can be built of what was measured; `problems` says why. */
  readonly evaluation?: Evaluation
  readonly problems: readonly Problem[]
}

/** Judges one set twice: whether its readings keep what the drawing allows, and whether what was measured will hold and let go. */
export function judgeMeasured(
  variation: Variation,
  plan: readonly Characteristic[],
  readings: readonly Reading[],
): MeasuredFinger {
  const built = measuredDesign(variation, measuredSet(variation, readings))
  const found = { readings, conformities: readings.map(readingConformity), unmeasured_count: unmeasuredOf(plan, readings).length }
  return built.value === undefined
    ? { ...found, problems: built.problems }
    : { ...found, evaluation: evaluate(built.value), problems: [] }
}

/** Characteristics that nobody measured. */
export function unmeasuredOf(plan: readonly Characteristic[], readings: readonly Reading[]): readonly Characteristic[] {
  const measured = new Set(readings.map(({ characteristic }) => characteristic.id))
  return plan.filter(({ id }) => !measured.has(id))
}
