import pc from 'picocolors'
import { type Matter, suggestedGauge, type Variation } from '../engine/index.ts'
import {
  caution,
  checkSentence,
  conformityText,
  foundText,
  measuredFigureRows,
  measuredYieldSentence,
  outcomeRows,
  planAdvice,
  planRows,
  planSentence,
  readingRow,
  resultDocument,
} from '../report/index.ts'
import { engineName } from '../server/index.ts'
import type { JudgedSet, WeighedPlan } from './check-sets.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import type { Terminal } from './terminal.ts'

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/** The inspection plan as a person reads it in a terminal, each thing with what feels it. */
export function planText({ design }: Variation, { plan, matters }: WeighedPlan, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const rows = plan.map((characteristic, index) => {
    const [{ number, words, id, drawn, allowed, bare = '' }] = planRows([characteristic])
    const { gauge, measured, matters: feels } = planAdvice({ design, characteristic, ...matterAt(matters, index) })
    return [right(String(number)), ...[words, drawn, allowed, bare, gauge, measured, feels, id].map(left)]
  })
  const heads = [
    'characteristic',
    'drawn',
    'allowed',
    'before coating',
    'gauge',
    'measured on',
    'what feels it',
    'place in the design',
  ]
  const blocks = [
    paint.dim(design.title),
    paint.bold(wrapped(planSentence(plan.length))),
    [paint.underline('Inspection plan'), ...aligned([[right('no.'), ...heads.map(left)], ...rows])].join('\n'),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

const matterAt = (matters: WeighedPlan['matters'], index: number): { readonly matter?: Matter } => {
  const { [index]: matter } = matters
  return matter ? { matter } : {}
}

/** The plan for machines. */
export function planDocument({ design }: Variation, { plan, matters }: WeighedPlan): object {
  const characteristics = plan.map((characteristic, index) => {
    const { [index]: matter } = matters
    return { ...characteristic, suggested: suggestedGauge(characteristic, matter), ...(matter && { matters: matter }) }
  })
  return { design: design.name, engine: engineName, plan: characteristics }
}

/** One measured set: its sentences, its readings, what each decision about a size out of its limits comes to, the caution. */
export function setText({ set, spread, decisions }: JudgedSet, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const rows = set.readings.map((reading, index) => {
    const { number, words, allowed } = readingRow(reading)
    return [right(String(number)), ...[words, foundText(reading), allowed, conformityText(set.conformities[index])].map(left)]
  })
  const open = decisions.map((consequence) => {
    const lines = outcomeRows(consequence).map(({ disposition, words }) => wrapped(`${disposition}: ${words}`, '  '))
    return [paint.underline(`To decide: ${consequence.reading.characteristic.words}`), ...lines].join('\n')
  })
  const figures = spread ? measuredFigureRows(spread).map(({ title, middle, range }) => [title, middle, range].map(left)) : []
  const blocks = [
    paint.bold(wrapped(checkSentence(set))),
    ...(spread ? [wrapped(measuredYieldSentence(spread))] : []),
    ...(figures.length === 0 ? [] : [[paint.underline('Nine of ten ways that are still open'), ...aligned(figures)].join('\n')]),
    ...(rows.length === 0 ? [] : [[paint.underline('Readings'), ...aligned(rows)].join('\n')]),
    ...open,
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

/** One measured set for machines. */
export function setDocument({ set, spread, decisions }: JudgedSet): object {
  const { serial, readings, conformities, unmeasured_count, evaluation, problems } = set
  const found = readings.map((reading, index) => {
    const { characteristic, ...rest } = reading
    return { number: characteristic.number, characteristic: characteristic.id, ...rest, conformity: conformities[index] }
  })
  const answer = evaluation === undefined ? { problems } : { result: resultDocument(evaluation, engineName) }
  const counted = spread && { yield: spread.yields.all, open: spread.open, ...spread.asked }
  const toDecide = decisions.map((consequence) => ({
    characteristic: consequence.reading.characteristic.id,
    beyond: consequence.beyond,
    outcomes: outcomeRows(consequence),
  }))
  return { serial, readings: found, unmeasured: unmeasured_count, ...answer, ...counted, decisions: toDecide }
}
