import { closeSync, fsyncSync, mkdirSync, openSync, readFileSync, renameSync, rmSync, statSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { type KeptPassphrase, keptPassphrase } from './passphrase.ts'

/** Stands beside the store and not in it, so that a store handed on takes no passphrase with it. */
const NAME = 'passphrase.json'

/** Readable and writable by its owner only. */
const OWNER_ONLY = 0o600
const OWNER_ONLY_FOLDER = 0o700

/** Bits that let others than the owner in. */
const OTHERS = 0o077

/** A kept passphrase that must not be relied on; the message says why, and what to do. */
export class UnfitPassphrase extends Error {}

/** Where the passphrase of a store is kept. */
export function passphraseFile(storeFolder: string): string {
  return join(storeFolder, NAME)
}

/**
 * The passphrase that was set for a store.
 *
 * @returns undefined when none was set
 * @throws UnfitPassphrase when others can read the file, or it is not one of ours; an error of the file system when it cannot be read
 */
export function readPassphrase(storeFolder: string): KeptPassphrase | undefined {
  const file = passphraseFile(storeFolder)
  const status = statSync(file, { throwIfNoEntry: false })
  if (status === undefined) return undefined
  // Windows has no such bits: there the folder of the user is closed to others by itself.
  if (process.platform !== 'win32' && (status.mode & OTHERS) !== 0) {
    throw new UnfitPassphrase(`${file}: others on this machine can read it; close it with chmod 600, and set a new passphrase`)
  }
  const read = keptPassphrase.safeParse(parsed(readFileSync(file, 'utf8')))
  if (!read.success) throw new UnfitPassphrase(`${file}: this is no kept passphrase; set a new one with fingerwright passphrase`)
  return read.data
}

/**
 * Keeps a passphrase for a store, in place of the one before. The file is whole or not there at any moment.
 *
 * @throws an error of the file system when the folder cannot be made or written
 */
export function writePassphrase(storeFolder: string, kept: KeptPassphrase): void {
  mkdirSync(storeFolder, { recursive: true, mode: OWNER_ONLY_FOLDER })
  const file = passphraseFile(storeFolder)
  const fresh = `${file}.new`
  // What a broken-off attempt left behind may have other rights than a new file gets.
  rmSync(fresh, { force: true })
  const open = openSync(fresh, 'wx', OWNER_ONLY)
  try {
    writeSync(open, `${JSON.stringify(kept, null, 2)}\n`)
    fsyncSync(open)
  } finally {
    closeSync(open)
  }
  renameSync(fresh, file)
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}
