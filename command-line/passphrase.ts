import { documentText, faultOfPassphrase, keepPassphrase, passphraseFile, writePassphrase } from '../server/index.ts'
import { asWrongUse, readDesignFile } from './design-file.ts'
import { storeFolder } from './store-folder.ts'
import { type Terminal, WrongUse } from './terminal.ts'

const LEFT = 'the passphrase is left as it was'

/**
 * Sets the passphrase with which others sign in: typed twice at a terminal, or one line of the standard input.
 *
 * @param store folder of the store, as typed
 * @throws WrongUse when the passphrase is not taken, or cannot be kept
 */
export async function setPassphrase(store: string | undefined, terminal: Terminal): Promise<void> {
  const folder = storeFolder(store, terminal)
  const passphrase = terminal.askHidden === undefined ? await lineOfInput(terminal) : await typedTwice(terminal.askHidden)
  const fault = faultOfPassphrase(passphrase)
  if (fault !== undefined) throw new WrongUse(`this passphrase is not taken: ${fault}; ${LEFT}`)
  const kept = await keepPassphrase(passphrase)
  try {
    writePassphrase(folder, kept)
  } catch (error) {
    throw asWrongUse(error, passphraseFile(folder))
  }
  terminal.write(`The passphrase is set: ${passphraseFile(folder)} keeps a hash of it, for you alone to read.
A server that is running keeps the old one, and everybody signed in, until it is started again.\n`)
}

async function typedTwice(askHidden: NonNullable<Terminal['askHidden']>): Promise<string> {
  const first = await askHidden('Passphrase (nothing is shown while you type): ')
  if (first === undefined) throw new WrongUse(LEFT)
  const fault = faultOfPassphrase(first)
  if (fault !== undefined) throw new WrongUse(`this passphrase is not taken: ${fault}; ${LEFT}`)
  const second = await askHidden('The same once more: ')
  if (second === undefined) throw new WrongUse(LEFT)
  if (second !== first) throw new WrongUse(`the two are not the same; ${LEFT}`)
  return first
}

async function lineOfInput(terminal: Terminal): Promise<string> {
  const { bytes } = await readDesignFile('-', terminal)
  const text = documentText(bytes)
  if (text.value === undefined) throw new WrongUse(`standard input: not a line of UTF-8 text; ${LEFT}`)
  return text.value.replace(/\r?\n$/, '')
}
