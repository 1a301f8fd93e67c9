/** A design with its sources of variation as a problem for counting. */
import type { Design, Requirement } from '../../design/design.ts'
import { figureNames } from '../../design/figure-names.ts'
import { type AskedEvaluation, askedFigures, evaluateAsked } from '../../evaluate-asked.ts'
import type { Figure, Finding, Verdict } from '../../figures/evaluation.ts'
import { valuesOf } from '../sources/law.ts'
import type { Source, Variation } from '../sources/source.ts'
import { forWearers } from './for-wearers.ts'
import { failureOf, setsOf } from './sets-of.ts'
import type { JudgedSet, SetFailure, SpreadProblem, WatchedRequirement, WatchedWindow } from './spread-problem.ts'

/**
 * The problem of a design.
 *
 * @param of whose variation is counted: the sets, for the wearer as stated; or the wearers, for the set as drawn
 */
export function designProblem(variation: Variation, of: Source['of'] = 'sets'): SpreadProblem {
  return problemWith(of === 'wearers' ? forWearers(variation) : variation, of, 0)
}

function problemWith(variation: Variation, of: Source['of'], setBack_mm: number): SpreadProblem {
  const { design } = variation
  const { sources, setAt } = setsOf(variation, of)
  const ids = watchedIds(design)
  const asked = askedFigures(design, ids)
  const endsBy = evaluateAsked(design, asked).endsBy
  const names = new Map(figureNames(design).map((name) => [name.id, name]))
  const window = windowOf(design, ids)
  const fillValues = valuesOf(sources)
  const judge = (values: ArrayLike<number>): JudgedSet => {
    const set = setAt(values)
    if (set === undefined) return failed(design, ids.length, 'cannot be built')
    const found = evaluateAsked(stopSetBack(set, setBack_mm), asked)
    return judged(found, { ids, endsBy, requirements_count: design.requirements.length })
  }
  const movedStop = endsBy === 'stop' ? (by_mm: number) => problemWith(variation, of, setBack_mm + by_mm) : undefined
  return {
    sources,
    figures: ids.map((id) => ({ id, title: names.get(id)?.title ?? id, unit: names.get(id)?.unit ?? '1' })),
    requirements: design.requirements.map((requirement) => watched(requirement, ids)),
    ...(window && { window: { ...window, ...(movedStop && { stopSetBack: movedStop }) } }),
    valuesAt: (normals) => {
      const values = new Float64Array(sources.length)
      fillValues(normals, values)
      return values
    },
    judge,
  }
}

/** A number that says how far a yes or no is from turning. */
const behindYesOrNo: Readonly<Record<string, { readonly figure: string; readonly bound: number }>> = {
  'return.letsGo': { figure: 'return.reserveFromRest', bound: 0 },
}

function watchedIds(design: Design): readonly string[] {
  const required = design.requirements.map(({ figure }) => figure)
  const behind = required.flatMap((id) => (behindYesOrNo[id] ? [behindYesOrNo[id].figure] : []))
  const existing = new Set(figureNames(design).map(({ id }) => id))
  return [...new Set([...required, ...behind, ...windowIds(design)])].filter((id) => existing.has(id))
}

/** Margin and jam of the first toggle, and the slip of the first load case that has a keeper. */
function windowIds(design: Design): readonly string[] {
  const toggle = design.toggles[0]
  const kept = design.loadCases.find(({ keeper }) => keeper !== undefined)
  if (!toggle || !kept) return []
  const head = `closed.toggle.${toggle.id}`
  return [`${head}.deadCentreMargin`, `${head}.jamAngle`, `loadCase.${kept.id}.slipAngle`]
}

function windowOf(design: Design, ids: readonly string[]): WatchedWindow | undefined {
  const wanted = windowIds(design)
  if (wanted.length === 0) return undefined
  const [margin, jam, slip] = wanted.map((id) => ids.indexOf(id))
  return { margin, jam, slip, loadCase: design.loadCases.find(({ keeper }) => keeper !== undefined)?.name ?? '' }
}

function watched({ id, figure, bound }: Requirement, ids: readonly string[]): WatchedRequirement {
  const behind = behindYesOrNo[figure]
  if (bound.kind !== 'is') {
    const sense = bound.kind === 'atLeast' ? 1 : -1
    return { id, margin: { figure: ids.indexOf(figure), bound: bound.value, sense } }
  }
  if (!behind) return { id }
  return { id, margin: { figure: ids.indexOf(behind.figure), bound: behind.bound, sense: bound.value ? 1 : -1 } }
}

interface Judging {
  readonly ids: readonly string[]
  /** What ends the travel of the design itself. */
  readonly endsBy: AskedEvaluation['endsBy']
  readonly requirements_count: number
}

function judged({ figures, findings, endsBy }: AskedEvaluation, asked: Judging): JudgedSet {
  const byId = new Map(figures.map((figure) => [figure.id, figure]))
  const values = Float64Array.from(asked.ids, (id) => numberOf(byId.get(id)))
  const failure = failureOf(endsBy, asked.endsBy)
  if (failure === undefined) return { values, verdicts: findings.map(({ verdict }) => verdict) }
  return { values, failure, verdicts: findings.map((finding) => verdictIn(finding, failure)) }
}

/** What a set that fails can still meet: what is asked of its motion, where that could be worked out. */
function verdictIn({ requirement, verdict, figure }: Finding, failure: SetFailure): Verdict {
  const [head] = requirement.figure.split('.')
  const isMotion = head === 'motion' || head === 'open' || head === 'drive'
  return failure === 'does not close' && isMotion && figure?.value !== undefined ? verdict : 'short'
}

function failed({ requirements }: Design, figures_count: number, failure: SetFailure): JudgedSet {
  return { values: new Float64Array(figures_count).fill(Number.NaN), verdicts: requirements.map(() => 'short'), failure }
}

function numberOf(figure: Figure | undefined): number {
  if (typeof figure?.value === 'boolean') return figure.value ? 1 : 0
  return typeof figure?.value === 'number' ? figure.value : Number.NaN
}

function stopSetBack(design: Design, by_mm: number): Design {
  if (by_mm === 0) return design
  return { ...design, stops: design.stops.map((stop) => ({ ...stop, gap_mm: stop.gap_mm + by_mm })) }
}
