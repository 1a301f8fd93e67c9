import type { Store } from '../records/index.ts'
import { readingsFile } from '../report/index.ts'

/** Every reading of a lot as comma-separated values; undefined for a lot that is not there. */
export function lotFile(store: Store, { design, lot }: { readonly design: string; readonly lot: string }): string | undefined {
  const readings = store.bench.readings(design, lot)
  const begun = store.bench.lots(design).find((one) => one.lot === lot)
  return readings && begun && readingsFile(readings, store.bench.plan(design, begun.revision) ?? [])
}
