import { type Book, bookFor } from '../engine/index.ts'
import { keptBook } from '../server/index.ts'
import type { DesignFile } from './design-file.ts'
import type { StoreAsked } from './use-store.ts'
import { lookInStore } from './use-store.ts'

/** What stands of the bench book of a design that was found in the store; undefined for one from a file, which has none. */
export async function bookOf({ kept, bytes }: DesignFile, asked: StoreAsked): Promise<Book | undefined> {
  if (kept === undefined) return undefined
  const book = await lookInStore(asked, (store) => keptBook(store, kept))
  return bookFor(new TextDecoder().decode(bytes), book)
}
