/**
 * How each figure comes about: the idea, the formula, the source. One row a figure of the catalogue; names with an id in
 * them are matched by their ends.
 */
import type { Working, WorkingValue } from './evaluation.ts'
import type { Method } from './working-method.ts'
import { workingsOfLoadCases } from './workings-of-load-cases.ts'
import { workingsOfMotion } from './workings-of-motion.ts'
import { workingsOfReturn } from './workings-of-return.ts'
import { workingsOfStrength } from './workings-of-strength.ts'
import { workingsOfUse } from './workings-of-use.ts'

const rows: readonly Method[] = [
  ...workingsOfMotion,
  ...workingsOfReturn,
  ...workingsOfLoadCases,
  ...workingsOfStrength,
  ...workingsOfUse,
]

/** Rows by the figures that asked for them: a memory, not a state. */
const known = new Map<string, Method>()

/** The working of a figure by its name. Every name of the catalogue has one (tested). */
export function workingOf(id: string, inputs: readonly WorkingValue[], steps: readonly WorkingValue[]): Working {
  const row =
    known.get(id) ??
    rows.find(
      ({ head, tail }) => id.startsWith(head) && (tail.endsWith('*') ? id.includes(tail.slice(0, -1)) : id.endsWith(tail)),
    )
  if (!row) throw new Error(`figure ${id} has no working`)
  known.set(id, row)
  return { method: row.method, formulas: row.formulas, inputs, steps, source: row.source }
}
