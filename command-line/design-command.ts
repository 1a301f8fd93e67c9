import type { Command } from 'commander'
import { DESIGN, REVISION, STORE } from './option-words.ts'

/** A command that asks something of one design: a file, or a name in the store with a revision. @param asks what it answers, for the help */
export function designCommand(program: Command, { name, asks }: { readonly name: string; readonly asks: string }): Command {
  return program
    .command(name)
    .description(asks)
    .argument('<DESIGN>', `${DESIGN}; or the name of a design in the store`)
    .option('--revision <N>', `${REVISION}, of the store; the newest when it is left out`)
    .option('--store <FOLDER>', STORE)
}
