import type { Store } from './store.ts'
import { StoreFault } from './store-fault.ts'

/**
 * A store whose saves are all refused with the same reason; what can be read stays readable.
 *
 * @param why what keeps it from being written
 */
export function unkept(store: Store, why: StoreFault): Store {
  const refuse = (): never => {
    throw why
  }
  return {
    ...store,
    notKept: why.message,
    keepDraft: refuse,
    keepRevision: refuse,
    bringIn: refuse,
    bench: { ...store.bench, keepEntries: refuse },
  }
}

/**
 * A store that could not be opened at all: there is nothing in it, and every save says why it is not kept.
 *
 * @param why the `StoreFault` of the opening; any other fault is thrown, because it is ours
 */
export function emptyStore(file: string, why: unknown): Store {
  if (!(why instanceof StoreFault)) throw why
  const nothing = (): never[] => []
  const none = () => undefined
  const refuse = (): never => {
    throw why
  }
  const store: Store = {
    file,
    notes: [],
    designs: nothing,
    draft: none,
    revisions: nothing,
    revision: none,
    keepDraft: refuse,
    keepRevision: refuse,
    copyTo: refuse,
    bringIn: refuse,
    bench: {
      gauges: nothing,
      calibrations: nothing,
      sets: none,
      lots: nothing,
      plan: none,
      serial: none,
      readings: none,
      photo: none,
      field: nothing,
      tests: nothing,
      keepEntries: refuse,
    },
    close: none,
  }
  return unkept(store, why)
}
