import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { ShopDesign } from '../engine/index.ts'
import { type DrawingsAsked, packName } from '../report/index.ts'
import { type PackStep, shopPack } from '../server/index.ts'
import { typesetterAt } from '../typesetting/index.ts'
import { asWrongUse } from './design-file.ts'
import { leftText } from './spread-progress.ts'
import type { Terminal } from './terminal.ts'

interface Packed {
  readonly folder: string
  readonly shop: ShopDesign
  /** Folder of the program, where its templates stand. */
  readonly home: string
  readonly drawings: DrawingsAsked
  readonly tellProgress: Terminal['tellProgress']
}

/**
 * Writes all that goes to the shop into a folder, and as one zip beside it.
 *
 * @returns what was written and what was not, a line each
 * @throws WrongUse when the folder cannot be written to
 */
export async function writeShopPack({ folder, shop, home, drawings, tellProgress }: Packed): Promise<string> {
  const onStep = ({ doing, done, remaining_s }: PackStep) => {
    const left = remaining_s === undefined ? '' : `, ${leftText(remaining_s)}`
    tellProgress?.(`${doing}: ${done} % of all is done${left}; Ctrl-C ends it, and nothing is written`)
  }
  const { files, zip, left } = await shopPack(shop, { typeset: typesetterAt(home), drawings, onStep })
  tellProgress?.('')
  const packed = packName(shop.variation.design.name, drawings.revision)
  try {
    await mkdir(folder, { recursive: true })
    for (const { name, bytes } of [...files, { name: packed, bytes: zip }]) await writeFile(join(folder, name), bytes)
  } catch (error) {
    throw asWrongUse(error, folder)
  }
  const written = `${files.length} files are written to ${folder}, and all of them in one as ${packed}.`
  return [written, ...left].map((line) => `${line}\n`).join('')
}
