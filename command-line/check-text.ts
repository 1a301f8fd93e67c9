import pc from 'picocolors'
import type { Characteristic, Variation } from '../engine/index.ts'
import { type CheckedSet, caution, checkSentence, conformityText, foundText, planRows, resultDocument } from '../report/index.ts'
import { engineName } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import type { Terminal } from './terminal.ts'

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/** The inspection plan as a person reads it in a terminal. */
export function planText({ design }: Variation, plan: readonly Characteristic[], { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const rows = planRows(plan).map(({ number, words, id, drawn, allowed }) => [
    right(String(number)),
    left(words),
    left(drawn),
    left(allowed),
    left(id),
  ])
  const heading = [right('no.'), left('characteristic'), left('drawn'), left('allowed'), left('place in the design')]
  const blocks = [
    paint.dim(design.title),
    paint.bold(wrapped(`${plan.length} sizes and places are to be measured of every set.`)),
    [paint.underline('Inspection plan'), ...aligned([heading, ...rows])].join('\n'),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

/** One measured set: its sentence, its readings, the caution. */
export function setText(set: CheckedSet, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const rows = set.readings.map((reading, index) => {
    const [row] = planRows([reading.characteristic])
    return [
      right(String(row.number)),
      left(row.words),
      left(foundText(reading)),
      left(row.allowed),
      left(conformityText(set.conformities[index])),
    ]
  })
  const blocks = [
    paint.bold(wrapped(checkSentence(set))),
    ...(rows.length === 0 ? [] : [[paint.underline('Readings'), ...aligned(rows)].join('\n')]),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}

/** One measured set for machines. */
export function setDocument({ serial, readings, conformities, unmeasured_count, evaluation, problems }: CheckedSet): object {
  const found = readings.map((reading, index) => {
    const { characteristic, ...rest } = reading
    return { number: characteristic.number, characteristic: characteristic.id, ...rest, conformity: conformities[index] }
  })
  const answer = evaluation === undefined ? { problems } : { result: resultDocument(evaluation, engineName) }
  return { serial, readings: found, unmeasured: unmeasured_count, ...answer }
}
