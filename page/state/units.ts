/** Millimetres and newtons or inches and pounds: what is shown, never what is stored. Kept for the next visit. */
import type { FigureUnit, UnitSystem } from '../../engine/index.ts'
import { setValue, type ValueText } from '../../report/index.ts'
import { keepChoice, keptChoice } from './kept-choice.ts'
import { sharedState, useShared } from './shared-state.ts'

const KEY = 'fingerwright.units'
const chosen = sharedState<UnitSystem>(keptChoice(KEY, ['metric', 'inch']) ?? 'metric')

/** Chooses the units that everything is shown in. */
export function chooseUnits(units: UnitSystem): void {
  chosen.set(units)
  keepChoice(KEY, units)
}

/** The units of now. */
export function useUnits(): UnitSystem {
  return useShared(chosen)
}

/** Sets values in the units of now. */
export function useSetValue(): (value: number | boolean | string, unit: FigureUnit) => ValueText {
  const units = useUnits()
  return (value, unit) => setValue(value, unit, units)
}
