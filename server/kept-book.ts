import type { KeptField, Store, TestOfSet } from '../records/index.ts'

/** What the bench book of a design holds that its proof rests on. */
export interface KeptBook {
  /** Whole sets that were entered with a serial number. */
  readonly sets: number
  readonly tests: readonly TestOfSet[]
  readonly field: readonly KeptField[]
  /** Texts of the revisions that tested sets were made to. */
  readonly revisions: readonly { readonly number: number; readonly text: string }[]
}

/** Everything of the bench book that a proof rests on; empty for a design that is not in the store. */
export function keptBook(store: Store, design: string): KeptBook {
  const tests = store.bench.tests(design)
  const numbers = [...new Set(tests.map(({ revision }) => revision))]
  const serials = store.bench.lots(design).flatMap((lot) => lot.serials)
  return {
    sets: serials.filter(({ piece }) => piece === undefined).length,
    tests,
    field: store.bench.field(design),
    revisions: numbers.map((number) => ({ number, text: store.revision(design, number)?.text ?? '' })),
  }
}
