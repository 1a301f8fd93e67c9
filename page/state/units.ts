/** Millimetres and newtons or inches and pounds: what is shown, never what is stored. Kept for the next visit. */
import { useSyncExternalStore } from 'react'
import type { FigureUnit, UnitSystem } from '../../engine/index.ts'
import { setValue, type ValueText } from '../../report/index.ts'
import { keepChoice, keptChoice } from './kept-choice.ts'

const KEY = 'fingerwright.units'
const listeners = new Set<() => void>()
let chosen: UnitSystem = keptChoice(KEY, ['metric', 'inch']) ?? 'metric'

/** Chooses the units that everything is shown in. */
export function chooseUnits(units: UnitSystem): void {
  chosen = units
  keepChoice(KEY, units)
  for (const listener of listeners) listener()
}

/** The units of now. */
export function useUnits(): UnitSystem {
  return useSyncExternalStore(subscribe, () => chosen)
}

/** Sets values in the units of now. */
export function useSetValue(): (value: number | boolean | string, unit: FigureUnit) => ValueText {
  const units = useUnits()
  return (value, unit) => setValue(value, unit, units)
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}
