/** One row a load: who carries it, and what the wearer has to give to close against it, to hold it and to let it go. */
import { loadWords } from '../sentences/hold-clause.ts'
import { figureOf } from './figure-lookup.ts'
import type { Told } from './told.ts'
import { setValue, type ValueText } from './value-text.ts'

/** A load with its answers; a cell without a value carries the reason. */
export interface LoadRow {
  readonly id: string
  readonly name: string
  /** `60 N`; empty where the load has no force in the design. */
  readonly load: string
  readonly heldBy: LoadCell
  readonly toClose: LoadCell
  readonly toHold: LoadCell
  readonly toLetGo: LoadCell
  readonly keeper: LoadCell
}

/** Either a value or why there is none; both absent where the design does not ask for it. */
export interface LoadCell {
  readonly value?: ValueText
  readonly why?: string
}

/** Every load case of the design in its order. */
export function loadRows(evaluation: Told): readonly LoadRow[] {
  return evaluation.design.loadCases.map((loadCase) => {
    const cell = (name: string): LoadCell => cellOf(evaluation, `loadCase.${loadCase.id}.${name}`)
    const effort = (name: string): LoadCell => effortCell(evaluation, `loadCase.${loadCase.id}.${name}`)
    return {
      id: loadCase.id,
      name: loadCase.name,
      load: loadWords(evaluation, loadCase),
      heldBy: cell('heldBy'),
      toClose: effort('effortToClose'),
      toHold: effort('effortToHold'),
      toLetGo: effort('letGoUnderLoadEffort'),
      keeper: cell('sustainingLoad'),
    }
  })
}

/** An effort that is nothing or negative is none that the wearer has to give. */
function effortCell(evaluation: Told, id: string): LoadCell {
  const value = figureOf(evaluation, id)?.value
  return typeof value === 'number' && value <= 0 ? { value: { number: 'none needed', unit: '' } } : cellOf(evaluation, id)
}

function cellOf(evaluation: Told, id: string): LoadCell {
  const figure = figureOf(evaluation, id)
  if (figure?.value !== undefined) return { value: setValue(figure.value, figure.unit, evaluation.units) }
  return figure?.why === undefined ? {} : { why: figure.why }
}
