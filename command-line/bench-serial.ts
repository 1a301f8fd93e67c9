import pc from 'picocolors'
import { sentence } from '../engine/index.ts'
import type { SerialHistory } from '../records/index.ts'
import { caution, historyLines, historyRows, serialSheet } from '../report/index.ts'
import { type JudgedSerial, judgedSerial } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { type ExitStatus, exitStatus, statusOf } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { momentText } from './revision-text.ts'
import { WrongUse } from './terminal.ts'
import { lookInStore, type StoreAsked } from './use-store.ts'

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/**
 * Prints everything about one serial number, and judges it as it was measured.
 *
 * @returns the status of the set as it was measured
 * @throws WrongUse for a serial number that is not there
 */
export async function showSerial(
  { name, serial }: { readonly name: string; readonly serial: string },
  asked: StoreAsked,
): Promise<ExitStatus> {
  const found = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    return judgedSerial(store, { design: name, serial })
  })
  if (found === undefined)
    throw new WrongUse(`${serial}: there is no such serial number of ${name}; fingerwright lots ${name} lists its lots`)
  const paint = pc.createColors(asked.terminal.colour)
  const { history, set, problems } = found
  const head = `${serial}, lot ${history.lot}, revision ${history.revision}; entered ${momentText(history.made)} by ${history.who}`
  const blocks = [
    paint.dim(head),
    ...(set ? [paint.bold(wrapped(serialSheet(set).sentence))] : []),
    ...problems.map((problem) => wrapped(sentence(name, problem))),
    ...(history.readings.length === 0 ? ['Nothing was measured of it yet.'] : [aligned(readingCells(found)).join('\n')]),
    ...otherLines(history),
    wrapped(caution),
  ]
  asked.terminal.write(`${blocks.join('\n\n')}\n`)
  if (set === undefined) return exitStatus.refused
  return set.evaluation === undefined ? exitStatus.short : statusOf(set.evaluation, 'verdict')
}

function readingCells({ history, set }: JudgedSerial): readonly (readonly Cell[])[] {
  const sheet = set && serialSheet(set)
  const rows = historyRows({ history, plan: history.plan, sheet, moment: momentText }).map(
    ({ id, number, words, typed, answer, said }) => [
      ...[String(id), String(number ?? '')].map(right),
      ...[words, typed, answer, said].map(left),
    ],
  )
  return [[right('reading'), right('no.'), ...['characteristic', 'as typed', '', 'who and when'].map(left)], ...rows]
}

/** Coating, tests, decisions, signatures and what came back, oldest first. */
function otherLines(history: SerialHistory): readonly string[] {
  return historyLines(history, momentText).map(({ words, said }) => wrapped(`${words} (${said})`))
}
