/** The store's only door: designs, their revisions and drafts in an SQLite file. The only SQL of the project is behind it. */
export { digest } from './digest.ts'
export { freeName } from './free-name.ts'
export { storeLimits } from './limits.ts'
export { findStore, openAnyStore, openStore, type StorePlace, storeFile } from './open-store.ts'
export type * from './store.ts'
export { StoreFault } from './store-fault.ts'
export { documentWords, newName, revisionNumber, step, who, why } from './store-rules.ts'
export { emptyStore } from './unkept-store.ts'
