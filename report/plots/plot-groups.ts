/** Which series of a travel belong into one plot, and which limits are drawn across it. */
import type { FigureUnit, Series, UnitSystem } from '../../engine/index.ts'
import type { QuestionName } from '../questions/question-of.ts'
import { figureOf, numberOf } from '../tables/figure-lookup.ts'
import type { Told } from '../tables/told.ts'

/** A limit drawn across a plot. */
export interface Limit {
  readonly value: number
  readonly words: string
}

/** Series in one plot. */
export interface PlotGroup {
  readonly id: string
  readonly title: string
  readonly unit: FigureUnit
  readonly question: QuestionName
  readonly series: readonly Series[]
  readonly limits: readonly Limit[]
  /** Units of the reader; metric when absent. */
  readonly units?: UnitSystem
}

interface Kind {
  readonly id: string
  readonly title: string
  readonly question: QuestionName
  readonly matches: RegExp
}

const KINDS: readonly Kind[] = [
  { id: 'flexion', title: 'Flexion of the joints', question: 'motion', matches: /flexion/i },
  { id: 'margin', title: 'Dead-centre margin', question: 'motion', matches: /margin/i },
  { id: 'transmission', title: 'Transmission angles', question: 'motion', matches: /transmission/i },
  { id: 'return', title: 'Return reserve', question: 'hold', matches: /reserve/i },
  { id: 'close', title: 'Effort to close', question: 'hold', matches: /effortToClose/i },
  { id: 'hold', title: 'Effort to hold', question: 'hold', matches: /effortToHold/i },
  { id: 'effort', title: 'Effort', question: 'hold', matches: /effort/i },
]

/** Plots of an evaluation in the order they are read. Series of no known kind get a plot by themselves. */
export function plotGroups(evaluation: Told): readonly PlotGroup[] {
  const series = evaluation.travel?.series ?? []
  const known = KINDS.flatMap((kind) => {
    const own = series.filter((one) => kindOf(one) === kind)
    const units = [...new Set(own.map((one) => one.unit))]
    return units.map((unit) => groupOf(evaluation, kind, { unit, series: own.filter((one) => one.unit === unit) }))
  })
  const others = series.filter((one) => kindOf(one) === undefined)
  const single = others.map((one) => ({
    id: one.id,
    title: one.title,
    unit: one.unit,
    question: 'hold' as const,
    series: [one],
    limits: [],
  }))
  const { units } = evaluation
  const groups = [...known, ...single].map((group) => (units === undefined ? group : { ...group, units }))
  return groups.filter((group) => group.series.some((one) => one.values.some((value) => value !== undefined)))
}

function kindOf(series: Series): Kind | undefined {
  return KINDS.find((kind) => kind.matches.test(series.id))
}

function groupOf(evaluation: Told, kind: Kind, found: { unit: FigureUnit; series: readonly Series[] }): PlotGroup {
  const limits = kind.id === 'margin' ? marginLimits(evaluation) : []
  return { id: `${kind.id}${found.unit === 'mm' ? '-mm' : ''}`, title: kind.title, question: kind.question, limits, ...found }
}

/** Jam and slip of each toggle. */
function marginLimits(evaluation: Told): readonly Limit[] {
  const jams = evaluation.design.toggles.flatMap((toggle) => {
    const jam = numberOf(evaluation, `closed.toggle.${toggle.id}.jamAngle`)
    return jam === undefined ? [] : [{ value: jam, words: 'jams at rest' }]
  })
  const slips = evaluation.design.loadCases.flatMap((loadCase) => {
    const slip = figureOf(evaluation, `loadCase.${loadCase.id}.slipAngle`)?.value
    return typeof slip === 'number' ? [{ value: slip, words: 'slips' }] : []
  })
  return [...jams, ...slips]
}
