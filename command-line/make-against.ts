import { type CostMoved, type CountsMoved, costMoved, countsMoved, readDesign, type ShopDesign } from '../engine/index.ts'
import { documentText } from '../server/index.ts'
import { type DesignNamed, findDesign } from './find-design.ts'
import { refusalText } from './refusal-text.ts'
import type { Terminal } from './terminal.ts'

/** With what a design is compared, and what came of it. */
export interface ComparedCounts {
  readonly against: string
  readonly counts: CountsMoved
  /** In the JSON document `costs` are those of the design itself. */
  readonly costsMoved: CostMoved
}

/**
 * Compares the pieces of a design and what a set costs with a revision of it in the store, or with another design file.
 *
 * @returns undefined after every problem of a refused document was listed
 */
export async function comparedWith(
  against: string,
  { named, shop, batches }: { readonly named: DesignNamed; readonly shop: ShopDesign; readonly batches: readonly number[] },
  terminal: Terminal,
): Promise<ComparedCounts | undefined> {
  const isRevision = /^(\d+|draft)$/.test(against)
  const { bytes, name, shown } = await findDesign(
    isRevision ? { ...named, revision: against } : { path: against, store: named.store },
    terminal,
  )
  const text = documentText(bytes)
  const read = text.problems === undefined ? readDesign(text.value, name) : text
  if (read.problems === undefined) {
    const { design } = shop.variation
    const costsMoved = costMoved(read.value, design, batches)
    return { against: shown, counts: countsMoved(read.value, design), costsMoved }
  }
  terminal.writeError(refusalText(shown, read.problems))
  return undefined
}
