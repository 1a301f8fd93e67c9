/** What gives first, as rows: every check of strength that has a margin, the least first, and those that have none. */
import type { Question, RankedStrength, StrengthList } from '../../engine/index.ts'
import type { Told } from './told.ts'
import { documentValue, setValue, type ValueText } from './value-text.ts'

/** One check with its margin. */
export interface StrengthRow {
  /** Id of its figure. */
  readonly id: string
  /** `pin dip in bending` */
  readonly words: string
  readonly margin: ValueText
  /** `breaks`, with the factor that was asked for. */
  readonly says: string
  readonly factor: ValueText
  readonly part?: string
  /** Where the margin is least; absent where it is no load case's. */
  readonly under?: { readonly loadCase: string; readonly doing: string; readonly drive: ValueText }
}

/** In words, for sentences and rows. */
export const DOING: Readonly<Record<NonNullable<RankedStrength['doing']>, string>> = {
  closing: 'just closing',
  holding: 'just held by the drive',
  'held closed': 'held closed',
}

/** Rows in the order in which things would give way; none for a finger that does not move. */
export function strengthRows(evaluation: Told): readonly StrengthRow[] {
  return (evaluation.strength?.ranked ?? []).map((check) => {
    const under = underOf(evaluation, check)
    return {
      id: check.figure,
      words: check.words,
      margin: setValue(check.margin, '1'),
      says: check.says,
      factor: setValue(check.factor, '1'),
      ...(check.part !== undefined && { part: check.part }),
      ...(under && { under }),
    }
  })
}

function underOf({ design, travel, units }: Told, { loadCase, doing, at }: RankedStrength): StrengthRow['under'] {
  const named = design.loadCases.find(({ id }) => id === loadCase)
  if (!named || !travel || doing === undefined || at === undefined) return undefined
  return { loadCase: named.name, doing: DOING[doing], drive: setValue(at.drive, travel.driveUnit, units) }
}

/** Posture and forces that show what gives first: those of the least margin that a load case has; undefined where none has. */
export function firstToGive({ strength }: Told): { readonly arc_ratio: number; readonly question: Question } | undefined {
  const first = strength?.ranked.find(({ at, loadCase }) => at !== undefined && loadCase !== undefined)
  if (first?.at === undefined || first.loadCase === undefined) return undefined
  const kind = first.doing === 'closing' ? 'close' : 'hold'
  return { arc_ratio: first.at.arc_ratio, question: { kind, loadCase: first.loadCase } }
}

/** The list for machines: as the engine has it, drive positions in degrees or mm with their unit. */
export function strengthDocument({ strength, travel }: Told): object {
  const { ranked, open, unknown }: StrengthList = strength ?? { ranked: [], open: [] }
  const rows = ranked.map(({ at, ...check }) => ({
    ...check,
    ...(at && travel && { at: { drive: documentValue(at.drive, travel.driveUnit), arc_ratio: at.arc_ratio } }),
  }))
  return { ranked: rows, open, ...(unknown !== undefined && { unknown }) }
}
