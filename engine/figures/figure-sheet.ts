/** Collects the figures of one evaluation; names, units and titles come from the catalogue only. */
import type { Design } from '../design/design.ts'
import { type FigureName, figureNames } from '../design/figure-names.ts'
import type { Figure, FigureUnit, Working, WorkingValue } from './evaluation.ts'
import { workingOf } from './workings.ts'

export interface FigureEntry {
  /** Left out when the figure does not exist; then `why` says so. */
  readonly value?: number | boolean | string | undefined
  readonly why?: string | undefined
  readonly beyond?: Figure['beyond']
  readonly noMoreThan?: number
  readonly inputs?: WorkingLines
  readonly steps?: WorkingLines
}

/** Lines of a working, or what writes them down when somebody reads it. */
export type WorkingLines = readonly WorkingValue[] | (() => readonly WorkingValue[])

export interface FigureSheet {
  readonly add: (id: string, entry: FigureEntry) => void
  /** Whether the design has a figure of this name. */
  readonly has: (id: string) => boolean
  /** Whether any of these figures is asked for; work for those that are not may be left out. Adding them all the same does nothing. */
  readonly asks: (...ids: readonly string[]) => boolean
  /** Whether any figure is asked for whose name begins so. */
  readonly asksUnder: (head: string) => boolean
  readonly figures: Figure[]
  /** How the figures come about, by their names; they are put together when somebody wants to read them. */
  readonly workings: () => ReadonlyMap<string, Working>
}

/**
 * An empty sheet for a design. Adding a name that the catalogue lacks, or a number that is not finite, is our own fault and throws.
 *
 * @param asked names of the figures that are wanted; all of the design's, when left out
 */
export function figureSheet(design: Design, asked?: ReadonlySet<string>): FigureSheet {
  const names = new Map<string, FigureName>(figureNames(design).map((name) => [name.id, name]))
  const figures: Figure[] = []
  const entries = new Map<string, FigureEntry>()
  const asks = (...ids: readonly string[]): boolean => asked === undefined || ids.some((id) => asked.has(id))
  const asksUnder = (head: string): boolean => asked === undefined || [...asked].some((id) => id.startsWith(head))
  const add = (id: string, entry: FigureEntry): void => {
    const name = names.get(id)
    if (!name) throw new Error(`figure ${id} is not in the catalogue`)
    if (!asks(id)) return
    if (typeof entry.value === 'number' && !Number.isFinite(entry.value)) throw new Error(`figure ${id} is not finite`)
    const { unit, title } = name
    entries.set(id, entry)
    if (entry.value !== undefined) figures.push({ id, title, unit, value: entry.value })
    else {
      const why = entry.why ?? 'no equilibrium was found'
      const { beyond, noMoreThan } = entry
      figures.push({ id, title, unit, why, ...(beyond && { beyond }), ...(noMoreThan !== undefined && { noMoreThan }) })
    }
  }
  const workings = (): ReadonlyMap<string, Working> =>
    new Map([...entries].map(([id, { inputs, steps }]) => [id, workingOf(id, writtenLines(inputs), writtenLines(steps))]))
  return { add, has: (id) => names.has(id), asks, asksUnder, figures, workings }
}

/** The lines themselves; none where there are none. */
export function writtenLines(lines: WorkingLines = []): readonly WorkingValue[] {
  return typeof lines === 'function' ? lines() : lines
}

/** One line of a working. */
export function line(name: string, value: WorkingValue['value'], unit: FigureUnit, from?: string): WorkingValue {
  return from === undefined ? { name, value, unit } : { name, value, unit, from }
}
