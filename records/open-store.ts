import { existsSync, mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { loadSqlite } from './load-sqlite.ts'
import type { Store } from './store.ts'
import { onFile, StoreFault, troubles } from './store-fault.ts'
import { emptyStore } from './unkept-store.ts'

/** Where a store is, and the clock that dates what is saved. */
export interface StorePlace {
  readonly folder: string
  readonly now: () => Date
}

/** The file of the store in its folder. */
export function storeFile(folder: string): string {
  return join(folder, 'store.sqlite')
}

/**
 * Opens the store of a folder; folder and store are made when they are not there.
 *
 * @throws StoreFault when the store cannot be opened for writing
 */
export async function openStore({ folder, now }: StorePlace): Promise<Store> {
  const file = storeFile(folder)
  const opening = { Database: await loadSqlite(), file, now }
  const { sqliteStore } = await import('./sqlite-store.ts')
  onFile(folder, () => makeFolder(folder))
  return sqliteStore(opening)
}

/** Designs are made for a wearer: other users of the machine have no business here. */
function makeFolder(folder: string): void {
  if (existsSync(folder) && !statSync(folder).isDirectory()) throw new StoreFault(folder, { ...troubles.noFolder, place: '' })
  mkdirSync(folder, { recursive: true, mode: 0o700 })
}

/**
 * Opens the store of a folder as far as that can be done: to be written, else to be read, else as an empty one. `notKept` says why
 * nothing can be saved.
 */
export async function openAnyStore(place: StorePlace): Promise<Store> {
  try {
    return await openReadable(place)
  } catch (error) {
    return emptyStore(storeFile(place.folder), error)
  }
}

/**
 * Opens a store to look something up, and to save if that can be done. None is made when there is none.
 *
 * @throws StoreFault when it cannot even be read
 */
export async function findStore(place: StorePlace): Promise<Store | undefined> {
  return existsSync(storeFile(place.folder)) ? await openReadable(place) : undefined
}

async function openReadable(place: StorePlace): Promise<Store> {
  try {
    return await openStore(place)
  } catch (error) {
    if (!(error instanceof StoreFault) || !MAY_BE_READ.has(error.problem.code)) throw error
    return await readCopy(place, error)
  }
}

async function readCopy({ folder, now }: StorePlace, why: StoreFault): Promise<Store> {
  const { copiedStore } = await import('./sqlite-store.ts')
  try {
    return copiedStore({ Database: await loadSqlite(), file: storeFile(folder), now }, why)
  } catch (error) {
    // What kept it from being opened is what has to be mended.
    throw error instanceof StoreFault ? why : error
  }
}

/** Faults that leave a store readable. */
const MAY_BE_READ: ReadonlySet<string> = new Set(['read only', 'no file', 'disk full', 'disk refuses'])
