import { type HelpingChanges, helpingChanges } from '../engine/index.ts'
import { helpingGround, helpingHeads, helpingRows, helpingSentence, joined } from '../report/index.ts'
import { documentText } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import type { DesignFile } from './design-file.ts'
import type { Paint } from './paint.ts'
import type { Terminal } from './terminal.ts'

/** Changes that are listed; `--json` has all. */
const FIRST = 10

/** Tries a step of every size of a design that was read without problems, and tells how far it is where somebody looks on. */
export function triedChanges({ bytes }: DesignFile, { tellProgress }: Terminal): HelpingChanges | undefined {
  const { value: text } = documentText(bytes)
  if (text === undefined) return undefined
  const run = helpingChanges(text)
  let step = run.next()
  while (!step.done) {
    tellProgress?.(`steps: ${step.value.done} of ${step.value.of} sizes`)
    step = run.next()
  }
  tellProgress?.('')
  return step.value
}

const left = (text: string, most_columns = 34): Cell => ({ text, side: 'left', most_columns })
const right = (text: string): Cell => ({ text, side: 'right' })

/** What helps most, in one sentence and the first rows. */
export function helpingBlocks(found: HelpingChanges, paint: Paint): readonly string[] {
  const { title, typed, step, margin, first, costs } = helpingHeads
  const rows = helpingRows(found).slice(0, FIRST)
  const cells = rows.map((row) => [
    left(row.title),
    right(row.typed),
    right(row.step),
    right(joined(row.margin)),
    left(row.first, 30),
    left(row.costs),
  ])
  const heads = [left(title), right(typed), right(step), right(margin), left(first, 30), left(costs)]
  return [
    `${paint.underline('Which change helps most')}\n${wrapped(helpingSentence(found))}`,
    ...(rows.length === 0 ? [] : [aligned([heads, ...cells]).join('\n')]),
    wrapped(helpingGround),
  ]
}
