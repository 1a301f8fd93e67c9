import type { Command } from 'commander'
import { exportStore, importStore } from './carry-store.ts'
import { compareRevisions } from './compare-revisions.ts'
import type { ExitStatus } from './exit-status.ts'
import { exportDesign } from './export-design.ts'
import { keepDesign } from './keep-design.ts'
import { listDesigns, listRevisions } from './list-store.ts'
import { DESIGN, REVISION, STORE } from './option-words.ts'
import type { Terminal } from './terminal.ts'

interface StoreOption {
  readonly store?: string
}
type Keep = StoreOption & { readonly who: string; readonly why: string; readonly name?: string }
type OneRevision = StoreOption & { readonly revision?: string }

const NAME = 'name of a design in the store'

/** Where the words of a command go, and what becomes of its status. */
export interface Ends {
  readonly terminal: Terminal
  readonly end: (status: ExitStatus) => void
}

/** Adds the commands of the store: what is in it, a design in and out, the whole of it in and out. */
export function addStoreCommands(program: Command, { terminal, end }: Ends): void {
  const command = (words: string, description: string) =>
    program.command(words).description(description).option('--store <FOLDER>', STORE)
  command('designs', 'list the designs that are kept in the store: revisions, verdict of the newest, draft')
    .addHelpText('after', '\nA name from the list may stand in the place of a file:\n  fingerwright verdict heron --revision 2')
    .action(({ store }: StoreOption) => listDesigns({ store, terminal }))
  command('revisions', 'list the revisions of a design: when, verdict, who said it and why')
    .argument('<NAME>', NAME)
    .action((name: string, { store }: StoreOption) => listRevisions(name, { store, terminal }))
  command('compare', 'say what differs between two revisions: values, findings, figures')
    .argument('<NAME>', NAME)
    .argument('<EARLIER>', REVISION)
    .argument('<LATER>', REVISION)
    .addHelpText('after', '\nExample\n  fingerwright compare heron 1 draft')
    .action(async (name: string, earlier: string, later: string, options: StoreOption) =>
      end(await compareRevisions({ name, earlier, later, ...options }, terminal)),
    )
  command('keep', 'keep a design file as a new revision; a revision never changes')
    .argument('<DESIGN>', DESIGN)
    .requiredOption('--who <WHO>', 'who says so: a name or a code')
    .requiredOption('--why <WHY>', 'why it is kept')
    .option('--name <NAME>', 'name in the store; that of the file when it is left out')
    .addHelpText(
      'after',
      '\nExample\n  fingerwright keep finger.json --who K1 --why "upper link 0.5 mm longer, as tried on the bench"',
    )
    .action(async (path: string, options: Keep) => end(await keepDesign({ path, ...options }, terminal)))
  command('export', 'print a design of the store as its file: the newest revision, or the draft where there is none')
    .argument('<NAME>', NAME)
    .option('--revision <N>', REVISION)
    .addHelpText('after', '\nExample\n  fingerwright export heron --revision 2 > heron-2.json')
    .action((path: string, options: OneRevision) => exportDesign({ path, ...options }, terminal))
  command('export-store', 'write the whole store as one file, to be kept or carried to another machine')
    .argument('<FILE>', 'file to write; an existing one is left as it is')
    .action((path: string, { store }: StoreOption) => exportStore(path, { store, terminal }))
  command('import-store', 'bring in a store that export-store wrote; nothing is overwritten')
    .argument('<FILE>', 'file that export-store wrote, here or on another machine')
    .addHelpText('after', '\nA design that is another than the one of its name here comes in under a free name, e.g. heron-2.')
    .action((path: string, { store }: StoreOption) => importStore(path, { store, terminal }))
}
