/** What gives first: the checks of strength in the order in which they would give way. */
import type { Design } from '../design/design.ts'
import { missingThickness } from '../design/missing-thickness.ts'
import type { NamedStrength } from '../strength/named-strength.ts'
import type { Found } from '../strength/strength.ts'
import type { RankedStrength, StrengthList } from './evaluation.ts'

/** Every check by its margin, the least first, and those without one that something presses. @param unknown why some state is not known */
export function strengthList(design: Design, checks: readonly NamedStrength[], unknown: string | undefined): StrengthList {
  const ranked: RankedStrength[] = []
  const open: StrengthList['open'][number][] = []
  for (const { name, words, of, strength, loadCase } of checks) {
    const figure = `strength.${name}`
    if (strength.margin === undefined) {
      if (!strength.spared) open.push({ figure, words, why: strength.why })
      continue
    }
    const { margin, state } = strength
    const { says, factor } = margin.limit
    const under = state
      ? { loadCase: state.loadCase, doing: state.doing, at: { drive: state.drive, arc_ratio: state.arc_ratio } }
      : loadCase !== undefined && { loadCase }
    ranked.push({ figure, words, margin: margin.value, says, factor, ...under, ...membersOf(design, of, strength) })
  }
  ranked.sort((one, other) => one.margin - other.margin)
  return { ranked, open, ...(unknown !== undefined && { unknown }), refused: missingThickness(design) }
}

/** Ids of what a check is looked at on; a part at a pin beside its pin. */
function membersOf(
  { pins, parts, stops, springs, screws = [] }: Design,
  { kind, index }: NamedStrength['of'],
  { part }: Found,
): Pick<RankedStrength, 'pin' | 'part' | 'stop' | 'spring' | 'screw'> {
  if (kind === 'part') return { part: parts[index].id }
  const on = part === undefined ? {} : { part }
  if (kind === 'pin') return { pin: pins[index].id, ...on }
  if (kind === 'stop') return { stop: stops[index].id, ...on }
  if (kind === 'spring') return { spring: springs[index].id, ...on }
  return { screw: screws[index].id, ...on }
}
