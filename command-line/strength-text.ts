import type { Evaluation } from '../engine/index.ts'
import { joined, strengthRows } from '../report/index.ts'
import { aligned } from './columns.ts'
import type { Paint } from './paint.ts'

/** Checks that are listed; all of them stand among the figures below. */
const FIRST = 10

/** What gives first, in the order in which it would: margin, how, under which load and where on the travel. */
export function strengthBlocks(evaluation: Evaluation, paint: Paint): readonly string[] {
  const rows = strengthRows(evaluation).slice(0, FIRST)
  if (rows.length === 0) return []
  const lines = aligned(
    rows.map(({ words, margin, says, factor, part, under }) => [
      { text: joined(margin), side: 'right' },
      { text: words, side: 'left', most_columns: 32 },
      { text: `${says}, factor ${joined(factor)}${part === undefined ? '' : ` (${part})`}`, side: 'left', most_columns: 30 },
      {
        text: under === undefined ? '' : `${under.loadCase}, ${under.doing}, drive at ${joined(under.drive)}`,
        side: 'left',
        most_columns: 48,
      },
    ]),
  )
  return [[paint.underline('What gives first'), ...lines].join('\n')]
}
