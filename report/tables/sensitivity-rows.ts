/** What a step of each input does, as rows that can be printed: those first that take most of a requirement's margin. */
import { type Evaluation, type Figure, isMoved, type Sensitivity, shownFigure, type UnitSystem } from '../../engine/index.ts'
import { marks } from './marks.ts'
import type { ValueText } from './value-text.ts'

/** What one step does to one figure. */
export interface SensitivityCell {
  readonly figure: string
  readonly title: string
  /** Signed change, of a step up; of yes or no and words what it becomes. */
  readonly change: ValueText
  /** `up only` or `down only` where the other side has no value. */
  readonly side?: string
}

/** One input with all that a step of it moves. */
export interface SensitivityRow {
  readonly place: Sensitivity['input']['place']
  readonly title: string
  readonly typed: string
  readonly step: string
  /** `81 % of pipFlexion`: what the step takes of the margin that is nearest to be used up. */
  readonly takes?: string
  readonly cells: readonly SensitivityCell[]
  /** Why one of the steps cannot be made. */
  readonly refused: readonly string[]
}

/** A figure that moves by less than this share of a margin is not worth a word. */
const shareLeast = 0.0005

/** Rows for all inputs that were found, those that move nothing last. @param evaluation of the design itself */
export function sensitivityRows(
  found: readonly Sensitivity[],
  evaluation: Evaluation,
  units: UnitSystem = 'metric',
): readonly SensitivityRow[] {
  const figures = new Map(evaluation.figures.map((figure) => [figure.id, figure]))
  const inOrder = [...found].sort((one, other) => (other.takes?.share ?? 0) - (one.takes?.share ?? 0))
  const rows = inOrder.map((sensitivity) => rowOf(sensitivity, figures, units))
  return [...rows.filter(({ cells }) => cells.length > 0), ...rows.filter(({ cells }) => cells.length === 0)]
}

function rowOf(
  { input, changes, refused, takes }: Sensitivity,
  figures: ReadonlyMap<string, Figure>,
  units: UnitSystem,
): SensitivityRow {
  const { place, title, typed, step } = input
  const sides = [
    ['up', refused.up],
    ['down', refused.down],
  ] as const
  return {
    place,
    title,
    typed,
    step,
    ...(takes && takes.share >= shareLeast && { takes: `${shareText(takes.share)} of ${takes.requirement}` }),
    cells: changes.flatMap((change) => cellOf(change, figures.get(change.figure), units)),
    refused: sides.flatMap(([side, problems]) => (problems === undefined ? [] : [`${side}: ${problems[0].found}`])),
  }
}

function shareText(share: number): string {
  return `${shownFigure(100 * share, '1', { digits: 2 }).number} %`
}

function cellOf(
  { figure: id, change, onlySide, becomes }: Sensitivity['changes'][number],
  figure: Figure | undefined,
  units: UnitSystem,
): readonly SensitivityCell[] {
  if (figure === undefined) return []
  const { title, unit, value: before } = figure
  if (becomes !== undefined) return [{ figure: id, title, change: { number: becomesText(becomes), unit: '' } }]
  if (change === undefined || typeof before !== 'number') return []
  if (!isMoved({ figure: id, title, unit, before, after: before + change, change })) return []
  const shown = shownFigure(change, unit, { system: units })
  const signed = { number: change > 0 ? `+${shown.number}` : shown.number, unit: shown.unit }
  return [{ figure: id, title, change: signed, ...(onlySide !== undefined && { side: `${onlySide} only` }) }]
}

/** `no on the way up`; what is not known any more is said as undecided. */
function becomesText(becomes: NonNullable<Sensitivity['changes'][number]['becomes']>): string {
  return becomes
    .map(({ side, value }) => `${side}: ${value === undefined ? marks.undecided.word : shownFigure(value, 'words').number}`)
    .join(', ')
}
