/** The parts list as rows that page, command line and files share. */
import { type Item, type PartsList, shownFigure, type UnitSystem } from '../../engine/index.ts'
import type { ValueText } from '../tables/value-text.ts'

export interface ItemRow {
  readonly number: number
  readonly title: string
  readonly perFinger: number
  readonly perSet: number
  /** Material and coating, as far as they are stated. */
  readonly material: string
  /** Of pins: `⌀ 3 × 20 mm`. */
  readonly size: string
  readonly mass?: ValueText
  readonly why?: string
}

const GRAMS_PER_KG = 1000

/** One row an item. */
export function itemRows({ items, perSet_count }: PartsList, units: UnitSystem = 'metric'): readonly ItemRow[] {
  return items.map((item) => ({
    number: item.number,
    title: item.title,
    perFinger: item.perFinger_count,
    perSet: item.perFinger_count * perSet_count,
    material: [item.material, item.coating].filter((words) => words !== undefined).join(', '),
    size: sizeText(item, units),
    ...(item.mass_kg === undefined ? {} : { mass: massText(item.mass_kg) }),
    ...(item.why === undefined ? {} : { why: item.why }),
  }))
}

/** A mass in grams, in either system of units: so it stands on a workshop's scales. */
export function massText(mass_kg: number): ValueText {
  return { number: shownFigure(mass_kg * GRAMS_PER_KG, '1').number, unit: 'g' }
}

function sizeText({ size }: Item, system: UnitSystem): string {
  if (!size) return ''
  const diameter = shownFigure(size.diameter_mm, 'mm', { system })
  if (size.length_mm === undefined) return `⌀ ${diameter.number} ${diameter.unit}`
  return `⌀ ${diameter.number} × ${shownFigure(size.length_mm, 'mm', { system }).number} ${diameter.unit}`
}
