import type { Command } from 'commander'

/** Who makes an entry. */
export const WHO = 'who enters it: a name or a code'

/** Begins a command about a design of the store. */
export type Begun = (words: string, description: string) => Command

/** An entry never changes: another stands in its place, and says why. */
export function correctable(command: Command): Command {
  return command
    .requiredOption('--who <WHO>', WHO)
    .option('--corrects <N>', 'number of the entry that it stands in the place of; both stay')
    .option('--reason <WHY>', 'why that one is corrected')
}
