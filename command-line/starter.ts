import { writeFile } from 'node:fs/promises'
import { type Command, Option } from 'commander'
import { changeDocument, readDesign, type StarterSet, starterRequirements, starterRisks } from '../engine/index.ts'
import { starterWords } from '../report/index.ts'
import { documentText } from '../server/index.ts'
import { designCommand } from './design-command.ts'
import { asWrongUse } from './design-file.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import type { Terminal } from './terminal.ts'

const SETS = { requirements: starterRequirements, risks: starterRisks } satisfies Record<
  string,
  (text: string) => StarterSet | undefined
>

interface StarterOptions extends Omit<DesignNamed, 'path'> {
  readonly out: string
  readonly only?: keyof typeof SETS
}

const HELP = `
Every row says that it is a starting point to be reviewed. What stands in the design is not written over, nothing is added twice, and the file named by --out
must not exist.

Example
  fingerwright starter finger.json --out finger-asked.json`

/** Adds the starting points of Prove: what is usually asked of such a finger, and what usually may go wrong. */
export function addStarter(program: Command, { terminal, end }: Ends): void {
  designCommand(program, {
    name: 'starter',
    asks: 'write the design with what is usually asked of such a finger, and the usual risks',
  })
    .requiredOption('--out <FILE.json>', 'file to write')
    .addOption(new Option('--only <SET>', 'one of the two sets').choices(Object.keys(SETS)))
    .addHelpText('after', HELP)
    .action(async (path: string, options: StarterOptions) => end(await starter({ path, ...options }, terminal)))
}

/** @throws WrongUse when a file cannot be opened or written */
async function starter({ out, only, ...named }: StarterOptions & DesignNamed, terminal: Terminal): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readDesign(text.value, file.name) : text
  if (text.problems !== undefined || read.problems !== undefined) {
    terminal.writeError(refusalText(file.shown, text.problems ?? read.problems ?? []))
    return exitStatus.refused
  }
  const added: string[] = []
  let grown = text.value
  for (const name of only === undefined ? (['requirements', 'risks'] as const) : [only]) {
    const set = SETS[name](grown)
    if (set === undefined) continue
    grown = changeDocument(grown, set.changes)
    added.push(starterWords(set))
  }
  await writeFile(out, grown, { flag: 'wx' }).catch((error: unknown) => {
    throw asWrongUse(error, out)
  })
  terminal.write(
    added.length === 0
      ? `${out} is written; nothing was left to add.\n`
      : `${out} is written, with ${added.join(', ')}, to be reviewed.\n`,
  )
  return exitStatus.met
}
