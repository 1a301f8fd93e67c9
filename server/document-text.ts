import { type Checked, limits, type Problem } from '../engine/index.ts'

/** Longest design file that is taken, in bytes. A longer file is not even decoded. */
export const documentLimit_bytes = limits.fileBytes

// Doors stop reading just past the limit, so how long the file really is remains unknown.
const tooLong: Problem = {
  code: 'file too long',
  place: '',
  found: `more than ${documentLimit_bytes} bytes`,
  needed: `at most ${documentLimit_bytes} bytes`,
  wayOut: 'check that this is a design file',
}

/**
 * The text of a design file.
 *
 * @returns the text, or the one problem: longer than the limit, or not UTF-8. Bytes that are no UTF-8 are never replaced,
 *          because the file would then be another one than the one that is saved.
 */
export function documentText(bytes: Uint8Array): Checked<string> {
  if (bytes.byteLength > documentLimit_bytes) return { problems: [tooLong] }
  try {
    return { value: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) }
  } catch (error) {
    if (!(error instanceof TypeError)) throw error
    return {
      problems: [
        {
          code: 'not utf-8',
          place: '',
          found: 'bytes that are not UTF-8 text',
          needed: 'a JSON text in UTF-8',
          wayOut: 'save the file as UTF-8 in your editor',
        },
      ],
    }
  }
}
