import { entryWho, type LotEntry, revisionNumber } from '../records/index.ts'
import { engineName, lotFile } from '../server/index.ts'
import { aligned, type Cell } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { fitting } from './fitting.ts'
import { refusalText } from './refusal-text.ts'
import { momentText } from './revision-text.ts'
import { type Terminal, WrongUse } from './terminal.ts'
import { lookInStore, type StoreAsked, saveInStore } from './use-store.ts'

const left = (text: string): Cell => ({ text, side: 'left' })
const right = (text: string): Cell => ({ text, side: 'right' })

/** Prints the lots of a design, oldest first. @throws WrongUse for a name that is not in the store */
export async function listLots(name: string, asked: StoreAsked): Promise<void> {
  const lots = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    return store.bench.lots(name)
  })
  const heading = [left('lot'), right('revision'), right('sets'), right('readings'), left('begun')]
  const none = `No lot of ${name} was begun yet: fingerwright begin-lot ${name} LOT --revision 1 --who WHO\n`
  asked.terminal.write(
    lots.length === 0 ? none : `${[...aligned([heading, ...lots.map(lotRow)]), ...importLines(lots)].join('\n')}\n`,
  )
}

/** Tables that were taken in, by the number under which each can be taken back. */
function importLines(lots: readonly LotEntry[]): readonly string[] {
  const rows = lots.flatMap(({ lot, imports }) =>
    imports.map(({ id, file, readings, who, made, withdrawn }) => {
      const taken =
        withdrawn === undefined ? '' : `taken back: ${withdrawn.reason} (${withdrawn.who}, ${momentText(withdrawn.made)})`
      return [
        right(String(id)),
        left(lot),
        left(file),
        right(String(readings)),
        left(`${momentText(made)} by ${who}`),
        left(taken),
      ]
    }),
  )
  if (rows.length === 0) return []
  const heading = [right('import'), left('lot'), left('from'), right('readings'), left('brought in'), left('')]
  return ['', ...aligned([heading, ...rows])]
}

function lotRow({ lot, revision, serials, made, who }: LotEntry): readonly Cell[] {
  const readings = serials.reduce((count, one) => count + one.readings, 0)
  return [
    left(lot),
    ...[revision, serials.length, readings].map((count) => right(String(count))),
    left(`${momentText(made)} by ${who}`),
  ]
}

/** A lot to be begun, as typed. */
export interface LotAsked {
  readonly name: string
  readonly lot: string
  readonly revision: string
  readonly who: string
  readonly note?: string
  readonly store?: string
}

/** Begins a lot. @throws WrongUse when the store cannot be used, or a word does not fit */
export async function beginLot({ name, lot, note, store, ...asked }: LotAsked, terminal: Terminal): Promise<ExitStatus> {
  const revision = Number(fitting(revisionNumber, ['--revision', asked.revision]))
  const who = fitting(entryWho, ['--who', asked.who])
  const entry = { kind: 'lot', lot, revision, ...(note !== undefined && { note }) } as const
  const answer = await saveInStore({ store, terminal }, (opened) => {
    refuseUnknown(opened, name)
    return opened.bench.keepEntries(name, { entries: [entry], who, engine: engineName })
  })
  if ('refused' in answer) {
    terminal.writeError(
      refusalText(
        `lot ${lot}`,
        answer.refused.map((problem) => ({ ...problem, place: '' })),
      ),
    )
    return exitStatus.refused
  }
  terminal.write(`Lot ${lot} is begun to revision ${revision} of ${name}; its inspection plan is frozen.\n`)
  return exitStatus.met
}

/** Prints every reading of a lot. @throws WrongUse for a lot that is not there */
export async function exportReadings(
  { name, lot }: { readonly name: string; readonly lot: string },
  asked: StoreAsked,
): Promise<void> {
  const text = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    return lotFile(store, { design: name, lot })
  })
  if (text === undefined) throw new WrongUse(`${lot}: there is no such lot; fingerwright lots ${name} lists them`)
  asked.terminal.write(text)
}
