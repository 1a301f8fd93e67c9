import { findStore, openStore, type Store, StoreFault, storeFile } from '../records/index.ts'
import { storeFolder } from './store-folder.ts'
import { type Terminal, WrongUse } from './terminal.ts'

/** The store that was meant, as typed after `--store`, and who wants to know. */
export interface StoreAsked {
  readonly store: string | undefined
  readonly terminal: Terminal
}

/**
 * Looks something up in the store and closes it again.
 *
 * @throws WrongUse when there is no store, or it cannot be read
 */
export async function lookInStore<Found>({ store, terminal }: StoreAsked, look: (store: Store) => Found): Promise<Found> {
  const place = { folder: storeFolder(store, terminal), now: terminal.now }
  return asUsed(async () => {
    const opened = await findStore(place)
    if (opened !== undefined) return use(opened, { look, terminal })
    const wayOut = 'Saving on the page and fingerwright keep make one; --store names another folder'
    throw new WrongUse(`${storeFile(place.folder)}: there is no store yet. ${wayOut}`)
  })
}

/**
 * Saves something in the store, which is made when it is not there, and closes it again.
 *
 * @throws WrongUse when it cannot be written; nothing was saved then
 */
export async function saveInStore<Saved>({ store, terminal }: StoreAsked, save: (store: Store) => Saved): Promise<Saved> {
  const place = { folder: storeFolder(store, terminal), now: terminal.now }
  return asUsed(async () => use(await openStore(place), { look: save, terminal }))
}

interface Use<Result> {
  readonly look: (store: Store) => Result
  readonly terminal: Terminal
}

function use<Result>(store: Store, { look, terminal }: Use<Result>): Result {
  for (const note of store.notes) terminal.writeError(`${note}\n`)
  try {
    return look(store)
  } finally {
    store.close()
  }
}

/** What is wrong with a store is for the user to mend; any other fault stays as it is. */
async function asUsed<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work()
  } catch (error) {
    throw error instanceof StoreFault ? new WrongUse(error.message) : error
  }
}
