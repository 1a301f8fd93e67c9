import type { Command } from 'commander'
import pc from 'picocolors'
import { type Design, type FittingSprings, fittingSprings, readDesign } from '../engine/index.ts'
import { caution, type SpringRow, springDocument, springHeads, springRows, springSentence } from '../report/index.ts'
import { documentText, engineName } from '../server/index.ts'
import { aligned, type Cell, wrapped } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { DESIGN, REVISION, STORE } from './option-words.ts'
import { refusalText } from './refusal-text.ts'
import type { Ends } from './store-commands.ts'
import { type Terminal, WrongUse } from './terminal.ts'

interface SpringsOptions extends Omit<DesignNamed, 'path'> {
  readonly json?: boolean
}

/** Adds the search for springs that could stand in the place of one of a design. */
export function addSprings(program: Command, { terminal, end }: Ends): void {
  program
    .command('springs')
    .description('which coils of usual wire give what a spring of the design gives, in the room that the design states for it?')
    .argument('<DESIGN>', `${DESIGN}; or the name of a design in the store`)
    .argument('[SPRING]', 'id of the spring; the first one when it is left out')
    .option('--revision <N>', `${REVISION}, of the store; the newest when it is left out`)
    .option('--store <FOLDER>', STORE)
    .option('--json', 'print one JSON document instead of text, each spring in the keys of a design')
    .addHelpText('after', '\nExample\n  fingerwright springs designs/heron.json return')
    .action(async (path: string, spring: string | undefined, options: SpringsOptions) =>
      end(await findSprings({ path, ...options }, spring, terminal)),
    )
}

/** @throws WrongUse when a file cannot be opened, or the design has no such spring */
async function findSprings(
  { json, ...named }: SpringsOptions & DesignNamed,
  spring: string | undefined,
  terminal: Terminal,
): Promise<ExitStatus> {
  const file = await findDesign(named, terminal)
  const text = documentText(file.bytes)
  const read = text.problems === undefined ? readDesign(text.value, file.name) : text
  const found = read.problems === undefined ? fittingSprings(read.value, springIndex(read.value, spring)) : read
  if (found.problems !== undefined) {
    terminal.writeError(refusalText(file.shown, found.problems))
    return exitStatus.refused
  }
  const document = { design: file.name, engine: engineName, springs: springDocument(found.value) }
  terminal.write(json === true ? `${JSON.stringify(document, null, 2)}\n` : answer(found.value, terminal))
  return exitStatus.met
}

function springIndex({ springs }: Design, id: string | undefined): number {
  const index = id === undefined ? 0 : springs.findIndex((spring) => spring.id === id)
  if (springs[index] !== undefined) return index
  const known = springs.map((spring) => spring.id).join(', ')
  throw new WrongUse(known === '' ? 'the design has no spring' : `no spring "${id}" in the design; it has ${known}`)
}

const numbers: ReadonlySet<keyof SpringRow> = new Set(['diameter', 'outside', 'turns', 'set', 'life', 'least'])

function cellsOf(row: SpringRow): readonly Cell[] {
  return (Object.keys(springHeads) as (keyof SpringRow)[]).map((key) => ({
    text: row[key],
    side: numbers.has(key) ? 'right' : 'left',
  }))
}

function answer(found: FittingSprings, { colour }: Terminal): string {
  const paint = pc.createColors(colour)
  const rows = springRows(found)
  const blocks = [
    paint.bold(wrapped(springSentence(found))),
    ...(rows.length === 0 ? [] : [aligned([springHeads, ...rows].map(cellsOf)).join('\n')]),
    wrapped(caution),
  ]
  return `${blocks.join('\n\n')}\n`
}
