import type { Checked } from '../engine/index.ts'
import { type BenchEntry, entryWho, type Store } from '../records/index.ts'
import { type Correcting, readCorrection } from '../report/index.ts'
import { engineName } from '../server/index.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { fitting } from './fitting.ts'
import { refusalText } from './refusal-text.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { saveInStore } from './use-store.ts'

/** Options that every entry of the bench book has. */
export interface Entering {
  readonly who: string
  readonly store?: string
  readonly corrects?: string
  readonly reason?: string
}

/** One entry that is to be kept. */
export interface OneEntry {
  /** Of a design in the store. */
  readonly name: string
  readonly options: Entering
  /** What it is, for the refusal. */
  readonly about: string
  readonly read: (store: Store) => Checked<BenchEntry>
  /** What is told when it is kept. */
  readonly said: string
}

/** Keeps one entry of the bench book, as a correction where that was asked for. @throws WrongUse when the store cannot be used */
export async function keepOne({ name, options, about, read, said }: OneEntry, terminal: Terminal): Promise<ExitStatus> {
  const who = fitting(entryWho, ['--who', options.who])
  const correcting = correctingOf(options)
  const answer = await saveInStore({ store: options.store, terminal }, (opened) => {
    refuseUnknown(opened, name)
    const entry = correcting === undefined ? read(opened) : readCorrection(read(opened), correcting)
    if (entry.problems !== undefined) return { refused: entry.problems }
    return opened.bench.keepEntries(name, { entries: [entry.value], who, engine: engineName })
  })
  if ('kept' in answer) {
    terminal.write(`${said}\n`)
    return exitStatus.met
  }
  const problems = answer.refused.map((problem) => ({ ...problem, place: problem.place.replace(/^entry \d+$/, '') }))
  terminal.writeError(refusalText(about, problems))
  return exitStatus.refused
}

/** @throws WrongUse for what is no number of an entry, and for a reason without one */
function correctingOf({ corrects, reason }: Entering): Correcting | undefined {
  if (corrects === undefined && reason === undefined) return undefined
  if (corrects === undefined || !/^[1-9]\d{0,8}$/.test(corrects))
    throw new WrongUse('--corrects takes the number of the entry that is corrected; fingerwright serial and gauges show them')
  return { corrects: Number(corrects), reason: reason ?? '' }
}
