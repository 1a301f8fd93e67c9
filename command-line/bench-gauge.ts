import { entryWho } from '../records/index.ts'
import { readGaugeEntry } from '../report/index.ts'
import { engineName } from '../server/index.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { fitting } from './fitting.ts'
import { refusalText } from './refusal-text.ts'
import type { Terminal } from './terminal.ts'
import { saveInStore } from './use-store.ts'

/** A gauge to be entered, as typed. */
export interface GaugeAsked {
  readonly name: string
  readonly gauge: string
  readonly resolution: string
  readonly uncertainty: string
  readonly calibrated: string
  readonly who: string
  readonly store?: string
}

/** Enters a gauge, or its next calibration. @throws WrongUse when the store cannot be used */
export async function enterGauge({ name, store, who, ...typed }: GaugeAsked, terminal: Terminal): Promise<ExitStatus> {
  const said = fitting(entryWho, ['--who', who])
  const read = readGaugeEntry(typed)
  const answer =
    read.problems === undefined
      ? await saveInStore({ store, terminal }, (opened) => {
          refuseUnknown(opened, name)
          return opened.bench.keepEntries(name, { entries: [read.value], who: said, engine: engineName })
        })
      : { refused: read.problems }
  if ('refused' in answer) {
    terminal.writeError(refusalText(`gauge ${typed.gauge}`, answer.refused))
    return exitStatus.refused
  }
  terminal.write(`${typed.gauge} is kept as calibrated on ${typed.calibrated}.\n`)
  return exitStatus.met
}
