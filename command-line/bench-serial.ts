import pc from 'picocolors'
import { type Characteristic, sentence } from '../engine/index.ts'
import type { KeptReading, SerialHistory } from '../records/index.ts'
import { cameBackWords, caution, certificateWords, conformityText, planRows, serialSheet, testWords } from '../report/index.ts'
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
  const answers = new Map(set === undefined ? [] : serialSheet(set).rows.map((row) => [row.id, conformityText(row.conformity)]))
  const rows = history.readings.map((reading) => {
    const planned = history.plan.find(({ id }) => id === reading.characteristic)
    const answer =
      reading.correctedBy === undefined ? (answers.get(reading.characteristic) ?? '') : `corrected by ${reading.correctedBy}`
    const words = planned === undefined ? reading.characteristic : wordsOf(planned)
    return [
      right(String(reading.id)),
      right(String(planned?.number ?? '')),
      ...[words, typedWords(reading), answer, saidWords(reading)].map(left),
    ]
  })
  return [[right('reading'), right('no.'), ...['characteristic', 'as typed', '', 'who and when'].map(left)], ...rows]
}

const wordsOf = (characteristic: Characteristic): string => planRows([characteristic])[0].words

const typedWords = ({ found, x, y, visit }: KeptReading): string =>
  `${found ?? (x === undefined ? 'taken back' : `x ${x}, y ${y}`)}${visit === 'finished' ? '' : `, ${visit}`}`

function saidWords({ by, date, gauge, file, corrects, reason, who, made }: KeptReading): string {
  const measured = `measured${by === undefined ? '' : ` by ${by}`}${date === undefined ? '' : ` on ${date}`}`
  return [
    ...(by === undefined && date === undefined ? [] : [measured]),
    ...(gauge === undefined ? [] : [gauge]),
    ...(reason === undefined ? [] : [`corrects ${corrects}: ${reason}`]),
    `entered ${momentText(made)} by ${who}${file === undefined ? '' : ` from ${file}`}`,
  ].join('; ')
}

/** Coating, tests, decisions, signatures and what came back, oldest first. */
function otherLines({ certificates, tests, decisions, signOffs, field }: SerialHistory): readonly string[] {
  const lines = [
    ...certificates.map((one) => ({ ...one, words: certificateWords(one) })),
    ...tests.map((one) => ({ ...one, words: testWords(one) })),
    ...decisions.map((one) => ({
      ...one,
      words: `Decided: ${one.decision}, because ${one.why}. As calculated: ${one.consequence}`,
    })),
    ...signOffs.map((one) => ({ ...one, words: `Signed off. ${one.statement}` })),
    ...field.map((one) => ({ ...one, words: cameBackWords(one) })),
  ].toSorted((one, other) => one.made.localeCompare(other.made))
  return lines.map(({ words, who, made }) => wrapped(`${words} (${who}, ${momentText(made)})`))
}
