import { type DesignNamed, findStored } from './find-design.ts'
import type { Terminal } from './terminal.ts'

/** Prints the document of a design letter for letter, to be written to a file. */
export async function exportDesign(named: DesignNamed, terminal: Terminal): Promise<void> {
  const { bytes } = await findStored(named, terminal)
  terminal.write(Buffer.from(bytes).toString('utf8'))
}
