import type { Command } from 'commander'
import { Option } from 'commander'
import { bookFor, readDesign, sentence } from '../engine/index.ts'
import { type BenchEntry, type EntryOf, entryWho } from '../records/index.ts'
import { type FieldRow, fieldRows, noRisk } from '../report/index.ts'
import { engineName, keptBook } from '../server/index.ts'
import { wrapped } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseUnknown } from './find-design.ts'
import { STORE } from './option-words.ts'
import type { Ends } from './store-commands.ts'
import { WrongUse } from './terminal.ts'
import { lookInStore, type StoreAsked, saveInStore } from './use-store.ts'

interface FieldOptions {
  readonly store?: string
  readonly serial?: string
  readonly sort: EntryOf<'field'>['sort']
  readonly came?: string
  readonly told?: string
  readonly found?: string
  readonly harm: EntryOf<'field'>['harm']
  readonly risk: readonly string[]
  readonly contact?: string
  readonly contactsIn?: string
  readonly who?: string
  readonly corrects?: string
  readonly reason?: string
}

const HELP = `
Names, addresses and telephone numbers stay outside of the store: --contact is a key such as C-014, --contacts-in says where the list is that holds it.
An entry never changes; --corrects N with --reason adds one that stands in the place of entry N.

Examples
  fingerwright field heron
  fingerwright field heron --serial A-001 --sort complaint --came 2031-05-01 --told "did not open once, in the cold" \\
    --harm "nobody hurt" --risk doesNotLetGo --contact C-014 --contacts-in "green book in the office" --who K1`

/** Adds the field log: what came back, and an entry of it. */
export function addFieldLog(program: Command, { terminal, end }: Ends): void {
  program
    .command('field')
    .description('what came back from the field: returns and complaints by serial number; with --told it keeps one')
    .argument('<NAME>', 'name of a design in the store')
    .option('--told <WORDS>', 'what was told, without names')
    .option('--serial <SERIAL>', 'serial number of the set')
    .addOption(new Option('--sort <SORT>', 'what came').choices(['return', 'complaint']).default('complaint'))
    .option('--came <DAY>', 'day on which it came, such as 2031-05-01')
    .option('--found <WORDS>', 'what the workshop found when it looked')
    .addOption(new Option('--harm <HARM>', 'harm').choices(['nobody hurt', 'somebody hurt', 'not known']).default('not known'))
    .option('--risk <RISK>', 'risk of the design that it belongs to; may be repeated', gathered, [])
    .option('--contact <KEY>', 'key of who told it')
    .option('--contacts-in <PLACE>', 'where the list of contacts is kept')
    .option('--who <WHO>', 'who writes it down: a name or a code')
    .option('--corrects <N>', 'number of the entry that it stands in the place of')
    .option('--reason <WHY>', 'why that one is corrected')
    .option('--store <FOLDER>', STORE)
    .addHelpText('after', HELP)
    .action(async (name: string, options: FieldOptions) => {
      const asked = { store: options.store, terminal }
      end(options.told === undefined ? await list(name, asked) : await keep(name, options, asked))
    })
}

function gathered(typed: string, before: readonly string[]): readonly string[] {
  return [...before, typed]
}

async function list(name: string, asked: StoreAsked): Promise<ExitStatus> {
  const rows = await lookInStore(asked, (store) => {
    refuseUnknown(store, name)
    const text = store.revision(name, 'newest')?.text ?? '{}'
    return fieldRows(bookFor(text, keptBook(store, name)).field, { risks: readDesign(text).value?.risks ?? [] })
  })
  const lines = rows.length === 0 ? ['Nothing has come back, as far as it was written down.'] : rows.flatMap(linesOf)
  asked.terminal.write(`${lines.join('\n')}\n`)
  return exitStatus.met
}

function linesOf({ id, serial, head, told, found, harm, risks, contact }: FieldRow): readonly string[] {
  const belongs = risks.length === 0 ? noRisk : risks.join('; ')
  const lines = [told, `found: ${found ?? 'not looked at yet'}`, `${harm}; belongs to ${belongs}`, `who told it: ${contact}`]
  return [`${id}  ${serial}, ${head}`, ...lines.map((line) => wrapped(line).replace(/^/gm, '   '))]
}

/** @throws WrongUse with every word that does not fit; nothing is kept then */
async function keep(name: string, options: FieldOptions, asked: StoreAsked): Promise<ExitStatus> {
  const who = entryWho.safeParse(needed(options.who, '--who'))
  if (!who.success) throw new WrongUse(`--who "${options.who}": ${who.error.issues[0].message}`)
  const entry = entryOf(options)
  const told = await saveInStore(asked, (store) => {
    refuseUnknown(store, name)
    const answer = store.bench.keepEntries(name, { entries: [entry], who: who.data, engine: engineName })
    if ('refused' in answer) throw new WrongUse(answer.refused.map((problem) => sentence('field log', problem)).join('\n'))
    return `Kept in the field log of ${name}.\n`
  })
  asked.terminal.write(told)
  return exitStatus.met
}

function entryOf({ corrects, reason, found, ...options }: FieldOptions): BenchEntry {
  return {
    kind: 'field',
    serial: needed(options.serial, '--serial'),
    sort: options.sort,
    came: needed(options.came, '--came'),
    told: needed(options.told, '--told'),
    ...(found !== undefined && { found }),
    harm: options.harm,
    risks: [...options.risk],
    contact: needed(options.contact, '--contact'),
    contactsIn: needed(options.contactsIn, '--contacts-in'),
    ...(corrects !== undefined && { corrects: Number(corrects) }),
    ...(reason !== undefined && { reason }),
  }
}

function needed(typed: string | undefined, option: string): string {
  if (typed === undefined) throw new WrongUse(`${option}: an entry of the field log needs it`)
  return typed
}
