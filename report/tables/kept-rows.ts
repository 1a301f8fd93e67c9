/** Rows of a result document that was kept with a revision: what the engine of that day found, in the units of today's reader. */
import type { FigureUnit, UnitSystem } from '../../engine/index.ts'
import type { FigureEntry, FindingEntry } from './result-document.ts'
import { joined, setValue, type ValueText } from './value-text.ts'

const RAD_PER_DEGREE = Math.PI / 180

/** Who reads: in which units, and what figures are called where that is known. */
export interface KeptReader {
  readonly units: UnitSystem
  /** Titles by id; a figure that has none is called by its id. */
  readonly titles: ReadonlyMap<string, string>
}

/** A kept requirement beside what was found for it. */
export interface KeptFindingRow {
  readonly id: string
  readonly title: string
  readonly verdict: FindingEntry['verdict']
  readonly found?: ValueText
  /** `at least 7.00°` */
  readonly needed: string
  readonly why?: string
}

/** A kept figure. */
export interface KeptFigureRow {
  readonly id: string
  readonly title: string
  readonly value?: ValueText
  readonly why?: string
}

/** Kept findings in the order of their design. */
export function keptFindingRows(findings: readonly FindingEntry[], { units, titles }: KeptReader): readonly KeptFindingRow[] {
  return findings.map(({ requirement, figure, found, needed, unit, verdict, why }) => ({
    id: requirement,
    title: titles.get(figure) ?? figure,
    verdict,
    ...(found === null ? {} : { found: keptValue({ value: found, unit }, units) }),
    needed: neededWords({ needed, unit }, units),
    ...(why === undefined ? {} : { why }),
  }))
}

/** Kept figures in the order of their engine. */
export function keptFigureRows(figures: Readonly<Record<string, FigureEntry>>, reader: KeptReader): readonly KeptFigureRow[] {
  return Object.entries(figures).map(([id, { value, unit, why }]) => ({
    id,
    title: reader.titles.get(id) ?? id,
    ...(value === null ? {} : { value: keptValue({ value, unit }, reader.units) }),
    ...(why === undefined ? {} : { why }),
  }))
}

/** Documents carry degrees; every other unit is the inside one. */
function keptValue(
  { value, unit }: { readonly value: number | boolean | string; readonly unit: string },
  units: UnitSystem,
): ValueText {
  if (unit === 'deg' && typeof value === 'number') return setValue(value * RAD_PER_DEGREE, 'rad', units)
  return setValue(value, unit as FigureUnit, units)
}

function neededWords({ needed, unit }: Pick<FindingEntry, 'needed' | 'unit'>, units: UnitSystem): string {
  if ('is' in needed) return needed.is ? 'yes' : 'no'
  const [least, value] = 'atLeast' in needed ? ['at least', needed.atLeast] : ['at most', needed.atMost]
  return `${least} ${joined(keptValue({ value, unit }, units))}`
}
