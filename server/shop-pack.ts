/** Everything that goes to the shop in one zip, with a list of checksums by which the shop sees that nothing was lost on the way. */
import { createHash } from 'node:crypto'
import { type Zippable, zipSync } from 'fflate'
import type { ShopDesign } from '../engine/index.ts'
import { type DrawingsAsked, shopFiles } from '../report/index.ts'
import { TypesetFault, type Typesetter } from '../typesetting/index.ts'

/** A file of a pack. */
export interface PackedFile {
  readonly name: string
  readonly bytes: Uint8Array<ArrayBuffer>
}

/** The files, all of them in one zip, and what has no file and why. The same design gives the same bytes. */
export interface ShopPack {
  readonly files: readonly PackedFile[]
  readonly zip: Uint8Array<ArrayBuffer>
  readonly left: readonly string[]
}

/** The earliest moment that a zip can tell: files of a pack have no time of their own. Read in local time, as a zip writes it. */
const NO_TIME = new Date(1980, 0, 1)

/** How a pack is made. */
export interface PackAsked {
  /** Where there is none, or it does not load here, the pack goes without the PDF and says so. */
  readonly typeset?: Typesetter | undefined
  readonly drawings?: DrawingsAsked | undefined
}

/** @param shop as it goes to the shop */
export async function shopPack(shop: ShopDesign, { typeset, drawings: asked }: PackAsked): Promise<ShopPack> {
  const { files: texts, drawings, left } = shopFiles(shop, asked)
  const pdf = await typesetDrawings(() => typeset?.([drawings]))
  const files: PackedFile[] = [
    ...texts.map(({ name, text }) => ({ name, bytes: Uint8Array.from(Buffer.from(text)) })),
    ...(pdf.bytes === undefined ? [] : [{ name: 'drawings.pdf', bytes: pdf.bytes }]),
  ]
  const sums = files.map(({ name, bytes }) => `${createHash('sha256').update(bytes).digest('hex')}  ${name}\n`).join('')
  const all = [...files, { name: 'checksums.sha256', bytes: Uint8Array.from(Buffer.from(sums)) }]
  const entries: Zippable = Object.fromEntries(all.map(({ name, bytes }) => [name, bytes]))
  return { files: all, zip: zipSync(entries, { mtime: NO_TIME }), left: [...left, ...(pdf.why === undefined ? [] : [pdf.why])] }
}

/** @returns the bytes, or why there are none */
async function typesetDrawings(
  work: () => ReturnType<Typesetter> | undefined,
): Promise<{ readonly bytes?: Uint8Array<ArrayBuffer>; readonly why?: string }> {
  try {
    const typeset = await work()
    if (typeset === undefined) return { why: 'the drawings are not set as a PDF here' }
    return { bytes: typeset[0] }
  } catch (error) {
    if (error instanceof TypesetFault) return { why: error.message }
    throw error
  }
}
