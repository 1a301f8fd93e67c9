import { homedir } from 'node:os'
import { isAbsolute, join, resolve } from 'node:path'
import { type Terminal, WrongUse } from './terminal.ts'

/**
 * The folder of the store, as an absolute path; whether it is there is for its users to find out.
 *
 * It is what `--store` names, else the environment variable FINGERWRIGHT_STORE, else `fingerwright` in the user's data folder.
 *
 * Source: XDG Base Directory Specification 0.8 (from memory): `$XDG_DATA_HOME`, unless it is empty or relative, else `~/.local/share`.
 *
 * @param option what was typed after `--store`; undefined when it was left out
 * @throws WrongUse when `--store` is given an empty name
 */
export function storeFolder(option: string | undefined, { environment }: Pick<Terminal, 'environment'>): string {
  if (option === '') throw new WrongUse('--store needs the name of a folder')
  const named = option ?? environment.FINGERWRIGHT_STORE
  if (named !== undefined && named !== '') return resolve(named)
  return join(dataFolder(environment), 'fingerwright')
}

function dataFolder(environment: Terminal['environment']): string {
  const named = environment.XDG_DATA_HOME
  return named !== undefined && isAbsolute(named) ? named : join(environment.HOME || homedir(), '.local/share')
}
