import { type Checked, consequences, inspectionPlan, readVariation } from '../engine/index.ts'
import type { Store } from '../records/index.ts'
import { type DecisionAsked, outcomeRows, standingFound } from '../report/index.ts'

/** A reading of a serial number that is to be decided about: its characteristic by its number in the plan, or its place in the design. */
export interface ToDecide {
  readonly design: string
  readonly serial: string
  readonly characteristic: string
}

/** What each decision about a reading comes to, with everything else of the set as it was measured; or why there is nothing to decide. */
export function decidingOf(store: Store, { design, serial, characteristic: named }: ToDecide): Checked<DecisionAsked> {
  const history = store.bench.serial(design, serial)
  if (history === undefined)
    return {
      problems: [{ code: 'not there', place: '', found: `serial ${serial}, which is not there`, needed: 'one of its lots' }],
    }
  const variation = readVariation(store.revision(design, history.revision)?.text ?? '', design)
  if (variation.value === undefined) return { problems: variation.problems }
  const plan = inspectionPlan(variation.value)
  const open = consequences(variation.value, plan, standingFound(plan, history))
  const found = open.find(({ reading: { characteristic: one } }) => String(one.number) === named || one.id === named)
  if (found !== undefined)
    return { value: { serial, characteristic: found.reading.characteristic.id, outcomes: outcomeRows(found) } }
  const numbers = open.map(({ reading }) => reading.characteristic.number).join(', ')
  const needed = numbers === '' ? 'nothing: every reading lies within its limits' : `one of ${numbers}`
  const problem = {
    code: 'nothing to decide',
    place: 'characteristic',
    found: `${named}, which is not measured or within its limits`,
  }
  return { problems: [{ ...problem, needed }] }
}
