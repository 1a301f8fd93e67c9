import { createReadStream } from 'node:fs'
import { basename, extname } from 'node:path'
import { asWrongUse, readBounded } from './design-file.ts'
import { WrongUse } from './terminal.ts'

const TYPES: Readonly<Record<string, 'image/jpeg' | 'image/png'>> = {
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
}
/** What the bench book takes of one photo. */
const PHOTO_most_bytes = 2_000_000

/** A photo for the bench book, with its name. Whether it is a picture the bench book looks itself. @throws WrongUse when it cannot be taken */
export async function readPhoto(path: string) {
  const { [extname(path).toLowerCase()]: type } = TYPES
  if (type === undefined) throw new WrongUse(`${path}: a photo is a JPEG or PNG (.jpg, .jpeg, .png)`)
  const bytes = await readBounded(createReadStream(path), PHOTO_most_bytes).catch((error: unknown) => {
    throw asWrongUse(error, path)
  })
  if (bytes.byteLength > PHOTO_most_bytes) throw new WrongUse(`${path}: a photo has at most 2 MB; make the picture smaller`)
  return { photo: basename(path), photoFile: { type, base64: Buffer.from(bytes).toString('base64') } }
}
