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

/** A posture and the forces there. */
export interface ShownForces {
  readonly arc_ratio: number
  readonly question: Question
}

/** Posture and forces that show where a check has its least margin; undefined where it is no load case's. */
export function strengthPlace({ at, loadCase, doing }: RankedStrength): ShownForces | undefined {
  if (at === undefined || loadCase === undefined) return undefined
  return { arc_ratio: at.arc_ratio, question: { kind: doing === 'closing' ? 'close' : 'hold', loadCase } }
}

/** Those of what gives first among the checks that a load case decides; undefined where none is. */
export function firstToGive({ strength }: Told): ShownForces | undefined {
  for (const check of strength?.ranked ?? []) {
    const place = strengthPlace(check)
    if (place) return place
  }
  return undefined
}

const NOTHING_ASKED: StrengthList = { ranked: [], open: [], refused: [] }

/** The list for machines: as the engine has it, drive positions in degrees or mm with their unit. */
export function strengthDocument({ strength, travel }: Told): object {
  const { ranked, open, unknown } = strength ?? NOTHING_ASKED
  const rows = ranked.map(({ at, ...check }) => ({
    ...check,
    ...(at && travel && { at: { drive: documentValue(at.drive, travel.driveUnit), arc_ratio: at.arc_ratio } }),
  }))
  return { ranked: rows, open, ...(unknown !== undefined && { unknown }) }
}
