import { limits } from '../../engine/index.ts'

/** The bytes of a file of readings, up to one past what is taken: of a longer one the rest need not be read to refuse it. */
export async function readTableFile(file: Blob): Promise<Uint8Array> {
  return new Uint8Array(await file.slice(0, limits.tableBytes + 1).arrayBuffer())
}
