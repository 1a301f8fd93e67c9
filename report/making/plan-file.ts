/** The inspection plan as a file of comma-separated values. */
import { inspectionPlan, type Variation } from '../../engine/index.ts'
import { planRows } from '../checking/plan-rows.ts'
import { csvText } from './csv-text.ts'

/** One line for everything that the drawings limit, in the order in which it is measured. */
export function planFile(variation: Variation): string {
  const rows = planRows(inspectionPlan(variation)).map(({ number, id, words, drawn, allowed }) => [
    number,
    id,
    words,
    drawn,
    allowed,
  ])
  return csvText([['number', 'place', 'what', 'as drawn', 'allowed'], ...rows])
}
